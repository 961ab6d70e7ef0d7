/**
 * What workbooks that come back from the roof and the attic say, taken into a job's tables: each
 * cell is held against what the table says, and nothing that somebody else said is written over.
 *
 * <p>Sources: the user's own tables. Does not cover estimates that come back, which are quoted.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.back;
