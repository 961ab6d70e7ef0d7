/**
 * What the office keeps once for all its jobs: its letterhead, its words, the next number of its
 * quotes, and its price book.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.office;
