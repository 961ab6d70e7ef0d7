/**
 * Pieces cut out of sheets by guillotine cuts with the fewest sheets, and a bound that no plan can
 * beat.
 *
 * <p>Whole numbers in and out. Does not cover cuts that stop inside a sheet.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.cutting.sheet;
