/**
 * What is done about each mark of a deck: the firm's rules, what was measured, and the action that
 * follows, with its reason.
 *
 * <p>Sources: {@code sheathing.triage}. Does not cover how much of it is billed.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.triage;
