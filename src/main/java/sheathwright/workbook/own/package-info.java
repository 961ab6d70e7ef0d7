/**
 * A workbook of somebody's own figures, for programs that call the library: a title, sections,
 * named figures, notes and tables, every number live.
 *
 * <p>Does not cover the documents of a job: those are made from its tables.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.workbook.own;
