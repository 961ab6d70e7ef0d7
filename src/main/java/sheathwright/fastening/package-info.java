/**
 * Nails and screws: how many a sheet, a piece or an old deck takes, what each holds, and the codes'
 * schedules.
 *
 * <p>Sources: NDS 2018, chapters 11 and 12; IRC, IBC and FBC-Residential roof nailing by edition,
 * read on code pages; panel makers' tests. What is from memory says so where it is used: ring-shank
 * and stainless withdrawal, head pull-through, most moisture and temperature factors, most heads.
 * Counts are arithmetic on the spacing. Does not cover what a nail has to hold, staples' strength,
 * or fasteners whose maker states their values. Local code and a licensed engineer decide.
 */
package sheathwright.fastening;
