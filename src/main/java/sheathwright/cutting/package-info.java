/**
 * Cutting stock: sticks out of priced lengths, pieces out of sheets by guillotine cuts. Whole
 * numbers of one small unit in and out; every plan comes with a lower bound, and has been checked
 * again by other code than that which made it.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.cutting;
