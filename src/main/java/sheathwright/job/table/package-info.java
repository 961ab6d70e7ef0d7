/**
 * A table read: lines, columns, keys and cells, each held against what it may be, and everything
 * wrong said at once.
 *
 * <p>Does not know what a job is made of.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.table;
