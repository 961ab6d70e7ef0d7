/**
 * What a job takes: what is bought for it, and how long its tasks last.
 *
 * <p>Sources: the counts of {@code job} and {@code life.found}; the office's own rates. Does not
 * cover the covering itself.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.supply;
