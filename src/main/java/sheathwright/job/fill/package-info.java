/**
 * One library function filled down a table, a line at a time.
 *
 * <p>Does not cover what the function computes.
 */
package sheathwright.job.fill;
