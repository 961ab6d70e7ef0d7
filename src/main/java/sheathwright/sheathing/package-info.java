/**
 * The deck itself: sheets, pieces of sheets and boards, how many a roof takes, how far they span,
 * and what their ends and edges need.
 *
 * <p>Sources: arithmetic on the nominal 4 ft by 8 ft sheet; IRC 2021 Tables R503.2.1.1(1) and
 * R803.1; panel makers' advice. Does not cover where each sheet lies, or which old sheets may stay.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing;
