/**
 * Library functions as a cell of somebody's own spreadsheet calls them.
 *
 * <p>Does not know any spreadsheet program.
 */
package sheathwright.job.cell;
