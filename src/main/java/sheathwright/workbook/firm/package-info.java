/**
 * The workbook of a season, for the office: a row a job with live totals, and whether forecasts of
 * bad sheets have held.
 *
 * <p>Does not cover a job's own pages: those stand in its estimate.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.workbook.firm;
