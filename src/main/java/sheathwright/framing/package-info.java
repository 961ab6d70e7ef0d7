/**
 * What sawn rafters can carry and how far they may span, and what a sister does for one.
 *
 * <p>Sources: NDS 2018 and its supplements through the published tables; the method of the IRC and
 * IBC rafter tables, which the tests reproduce cell by cell. Loads stand on the horizontal
 * projection. Does not cover trusses, damaged or notched members, ridge beams, thrust, or stability
 * while the deck is off. Everything here is screening: local code and a licensed engineer decide.
 */
package sheathwright.framing;
