/**
 * What each mark on the deck leads to: an action with its reason, and how much of what is billed.
 *
 * <p>Sources: {@code sheathing.triage} for the actions; common practice for the quantities. Does
 * not cover prices.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.life.found;
