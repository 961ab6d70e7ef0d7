/**
 * What a full-length sister does for a rafter: its share, the two together, which size will do, and
 * what both bring to their supports.
 *
 * <p>Sources: plain statics; NDS 2018. Does not cover cracked or rotten rafters. Screening: local
 * code and a licensed engineer decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.framing.sister;
