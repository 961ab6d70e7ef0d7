/**
 * Figures and jobs laid out as workbooks: every input a named cell, every derived number a live
 * formula with the library's own value beside it, every published table that a look-up needs, and a
 * page that checks the rest.
 *
 * <p>The only room that knows Apache POI. Does not cover reading a workbook back, templates, or
 * change orders.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook;
