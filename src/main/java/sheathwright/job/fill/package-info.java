/**
 * One library function filled down a table, a line at a time.
 *
 * <p>Does not cover what the function computes.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.fill;
