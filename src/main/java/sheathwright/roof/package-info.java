/**
 * The roof as geometry: how much longer a slope, a hip or a valley is than its shadow on the
 * ground.
 *
 * <p>Sources: the theorem of Pythagoras; carpenters' framing tables print the same factors. Equal
 * slopes and square corners only. Does not cover outlines, openings, or roofs whose slopes differ.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.roof;
