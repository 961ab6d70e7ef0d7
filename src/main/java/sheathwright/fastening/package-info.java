/**
 * Nails and screws: how many a sheet, a piece or an old deck takes, what each holds, and the codes'
 * schedules. Wind: how hard it pulls at a roof, and what holds against it.
 *
 * <p>Sources: NDS 2018, chapters 11 and 12; IRC, IBC and FBC-Residential roof nailing by edition,
 * read on code pages; panel makers' tests. What is from memory says so where it is used: ring-shank
 * and stainless withdrawal, head pull-through, most moisture and temperature factors, most heads.
 * Counts are arithmetic on the spacing. Does not cover staples' strength, or fasteners whose maker
 * states their values. Local code and a licensed engineer decide.
 *
 * <p>Wind by ASCE 7-10, 7-16 and 7-22, through the pressures and factors that residential codes
 * print. A pressure at strength level is another quantity than one at allowable level, and only the
 * code's 0.6 leads from the one to the other. Does not cover overhangs, walls, the frame of the
 * house, tornadoes, or roofs steeper than 45 degrees.
 */
package sheathwright.fastening;
