/**
 * What a string and a straightedge tell: readings, profiles of rafters, doubted readings, sags and
 * flatness.
 *
 * <p>Sources: geometry; a sag that was read at one place is taken as a parabola, common practice.
 * Does not cover why a rafter sagged.
 */
package sheathwright.leveling.string;
