/**
 * Nails: how many a sheet takes. Wind: how hard it pulls at a roof, and what holds against it.
 *
 * <p>Sources: the spacings are the user's, from the adopted code or the approved plan; the count is
 * arithmetic on them. Does not cover which schedule applies, nor what a nail holds.
 *
 * <p>Wind by ASCE 7-10, 7-16 and 7-22, through the pressures and factors that residential codes
 * print. A pressure at strength level is another quantity than one at allowable level, and only the
 * code's 0.6 leads from the one to the other. Does not cover overhangs, walls, the frame of the
 * house, tornadoes, or roofs steeper than 45 degrees.
 */
package sheathwright.fastening;
