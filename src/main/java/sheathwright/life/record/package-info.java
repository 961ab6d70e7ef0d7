/**
 * A job's life, one step at a time: what may be done at which stage, and the tables and files that
 * a step writes, all of them or none.
 *
 * <p>Sources: the user's own tables. Does not cover what the documents show, nor the arithmetic of
 * bills.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.record;
