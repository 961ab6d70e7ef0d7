/**
 * What sawn rafters can carry and how far they may span.
 *
 * <p>Sources: NDS 2018 and its supplements through the published tables; the method of the IRC and
 * IBC rafter tables, which the tests reproduce cell by cell; notches, creep, incising, heat and the
 * stability equation from memory. Loads stand on the horizontal projection. Does not cover trusses,
 * damaged members or ridge beams. Everything here is screening: local code and a licensed engineer
 * decide.
 */
package sheathwright.framing;
