/**
 * The calculators: a workbook in which each library function is a page that works.
 *
 * <p>Does not cover a function filled down a table.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.calculator;
