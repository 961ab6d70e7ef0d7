/**
 * Bringing sagged rafters to a line: what a string tells, how flat a plane is, the plane or lines
 * that need the least build-up, what is done to each rafter, how long a sister must be, and what it
 * takes.
 *
 * <p>Sources: the shape of a sag that was read at one place is taken as a parabola, common
 * practice; one that was read at several is taken as straight between them; the rest is geometry.
 * Does not cover whether a sister is strong enough, cracked or rotten rafters, or trusses: a
 * licensed engineer decides those first.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.leveling;
