/**
 * Parts of the old deck told apart, and how much of each was seen.
 *
 * <p>Sources: the user's own tables. Does not cover what is likely of the rest, which {@code
 * life.unseen} works out.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.zone;
