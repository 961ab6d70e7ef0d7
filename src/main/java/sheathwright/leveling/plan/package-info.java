/**
 * What is done to each rafter: left, shimmed, sistered; strips, sisters, marks, sticks and what it
 * takes.
 *
 * <p>Sources: geometry and common practice. Does not cover whether a sister is strong enough: a
 * licensed engineer decides that first.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.leveling.plan;
