/**
 * The engine: figures given their places in a workbook, formulas, names, inputs, styles, and who
 * may see what.
 *
 * <p>Knows no trade. Does not cover reading a workbook back.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.book;
