/**
 * What a job's tables tell of its life: its stage, what was agreed, ordered, photographed and sent.
 *
 * <p>Sources: the user's own tables. Does not cover what follows from them, which the room {@code
 * life} works out.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.life;
