/**
 * Library functions as a cell of somebody's own spreadsheet calls them.
 *
 * <p>Does not know any spreadsheet program.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.cell;
