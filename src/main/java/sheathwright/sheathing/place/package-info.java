/**
 * The map of an old deck: which pieces lie on each plane, what each is called, and what each counts
 * on a bill.
 *
 * <p>Sources: arithmetic on the nominal 4 ft by 8 ft sheet; until joints are measured it is a guess
 * by common practice. Does not cover decks of boards, which have no places.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.place;
