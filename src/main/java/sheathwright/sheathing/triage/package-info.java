/**
 * What is to be done where something was found on a deck, by what was measured there, and why.
 *
 * <p>Sources: common practice, panel tables and dry-lumber moisture, each said at its test. Does
 * not cover framing, which others decide about, or what made the wood go bad.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.triage;
