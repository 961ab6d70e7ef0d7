/**
 * What nobody has seen of a job's deck: how many places are likely bad, and what follows for its
 * price.
 *
 * <p>Sources: the user's own tables; the room {@code forecast}. Does not cover what marks say of
 * places that somebody has looked at, which the corner {@code life.found} works out.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.unseen;
