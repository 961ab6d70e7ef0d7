/**
 * The documents: which pages they have and what stands on each.
 *
 * <p>Does not compute anything itself.
 */
package sheathwright.workbook.page;
