/**
 * What holds a deck and its covering down: clips, seams, the weakest link, and what the covering's
 * maker asks for.
 *
 * <p>Sources: statics on the wind's pressure and on one fastener's resistance. Does not cover the
 * clips and panels of any maker.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.fastening.uplift;
