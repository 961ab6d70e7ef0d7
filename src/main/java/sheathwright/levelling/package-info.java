/**
 * Bringing sagged rafters to a string line: the plane or lines that need the least build-up, how
 * long a sister must be, and what it takes.
 *
 * <p>Sources: the shape of a sag is taken as a parabola, common practice; the rest is geometry.
 * Does not cover whether a sister is strong enough, cracked or rotten rafters, or trusses: a
 * licensed engineer decides those first.
 */
package sheathwright.levelling;
