/**
 * Wind by ASCE 7-10, 7-16 and 7-22, through the pressures and factors that residential codes print:
 * velocity pressure, zones, and how hard a roof's covering is pulled.
 *
 * <p>A pressure at strength level is another quantity than one at ASD level, and only the code's
 * 0.6 leads from the one to the other. Does not cover overhangs, walls, the frame of the house,
 * tornadoes, or roofs steeper than 45 degrees.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.loads.wind;
