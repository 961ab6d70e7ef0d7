/**
 * What sawn rafters can carry and how far they may span, and the loads that a roof puts on them.
 *
 * <p>Sources: NDS 2018 and its supplements through the published tables; the method of the IRC and
 * IBC rafter tables, which the tests reproduce cell by cell; ASCE 7-10, 7-16 and 7-22 and IRC 2018
 * for loads. Loads stand on the horizontal projection. Does not cover trusses, damaged or notched
 * members, ridge beams, thrust, or stability while the deck is off. Everything here is screening:
 * local code and a licensed engineer decide.
 * IBC rafter tables, which the tests reproduce cell by cell; notches, creep, incising, heat and the
 * stability equation from memory. Loads stand on the horizontal projection. Does not cover trusses,
 * damaged members or ridge beams. Everything here is screening: local code and a licensed engineer
 * decide.
 */
package sheathwright.framing;
