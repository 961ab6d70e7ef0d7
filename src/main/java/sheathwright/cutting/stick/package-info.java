/**
 * Sticks cut out of priced lengths with the least money, and a bound that no plan can beat.
 *
 * <p>Whole numbers in and out. Does not cover defects in the stick.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.cutting.stick;
