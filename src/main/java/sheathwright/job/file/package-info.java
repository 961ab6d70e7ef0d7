/**
 * Files written whole or not at all, several together, and what a dead run left behind put right.
 *
 * <p>Does not cover folders that other machines write to at the same time.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.file;
