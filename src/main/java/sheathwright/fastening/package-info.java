/**
 * Nails: how many a sheet takes.
 *
 * <p>Sources: the spacings are the user's, from the adopted code or the approved plan; the count is
 * arithmetic on them. Does not cover which schedule applies, nor what a nail holds.
 */
package sheathwright.fastening;
