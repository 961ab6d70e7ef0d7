/**
 * The documents: which pages they have and what stands on each.
 *
 * <p>Does not compute anything itself.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.page;
