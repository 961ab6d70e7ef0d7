/**
 * What a sister does for a rafter: its share, the two together, the groups of nails, part-length
 * sisters and splices.
 *
 * <p>Sources: plain statics; NDS 2018 for the nails. Does not cover cracked or rotten rafters.
 * Screening: local code and a licensed engineer decide.
 */
package sheathwright.framing.sister;
