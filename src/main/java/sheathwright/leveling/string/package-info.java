/**
 * What a string and a straightedge tell: readings, profiles of rafters, doubted readings, sags and
 * flatness.
 *
 * <p>Sources: geometry; a sag that was read at one place is taken as a parabola, common practice.
 * Does not cover why a rafter sagged.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.leveling.string;
