/**
 * What material costs and what the office reckons with, as the job's tables tell it, and the prices
 * of what may be found besides.
 *
 * <p>Sources: the user's own price book; overhead on direct cost and margin on price are common
 * practice. Does not cover how much of it a job takes.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.price;
