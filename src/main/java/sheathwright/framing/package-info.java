/**
 * What sawn rafters and their sisters can carry, how far they may span, the loads that a roof puts
 * on them, and what stops their repair. What sawn rafters can carry and how far they may span, and
 * what a sister does for one.
 *
 * <p>Sources: NDS 2018 and its supplements through the published tables; the method of the IRC and
 * IBC rafter tables, which the tests reproduce cell by cell; ASCE 7-10, 7-16 and 7-22 and IRC 2018
 * for loads; plain statics for sisters; notches, creep, incising, heat and the stability equation
 * from memory. Loads stand on the horizontal projection. Does not cover trusses, damaged members or
 * ridge beams. Everything here is screening: local code and a licensed engineer decide.
 */
package sheathwright.framing;
