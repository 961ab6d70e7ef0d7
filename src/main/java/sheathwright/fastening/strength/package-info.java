/**
 * What one nail or screw holds: withdrawal, pull-through, sideways, and the factors on each.
 *
 * <p>Sources: NDS 2018, chapters 11 and 12, and the makers' equivalent gravities of panels; what is
 * from memory says so where it is used. Does not cover staples, or fasteners whose maker states
 * their values.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.fastening.strength;
