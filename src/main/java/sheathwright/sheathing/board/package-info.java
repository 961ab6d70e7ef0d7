/**
 * Old board decks: whether boards span, what a new covering can lie on, and how many to replace.
 *
 * <p>Sources: IRC 2021 Table R803.1; common practice. Does not cover diagonal boards.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.board;
