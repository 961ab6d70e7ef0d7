/**
 * One old rafter as it is checked: bending, shear, deflection, bearing, its seat, its thrust, and
 * the time while the deck is off.
 *
 * <p>Sources: NDS 2018; the method of the IRC and IBC rafter tables, which the tests reproduce cell
 * by cell. Does not cover trusses or ridge beams. Screening: local code and a licensed engineer
 * decide.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.framing.rafter;
