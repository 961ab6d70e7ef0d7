/**
 * What the nails of a sister bring over: evenly along a full-length one, in groups near the ends of
 * one that ends short, and over a break.
 *
 * <p>Sources: plain statics; NDS 2018 for the nails. Does not cover cracked or rotten rafters but
 * where a sister bridges them. Screening: local code and a licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.framing.nailed;
