/**
 * The way of a roof's loads down to the walls, joint by joint: what holds a rafter to its ceiling
 * joist, to the wall and to the ridge, and the sheets to the eave. Each is checked once somebody
 * has looked, and until then is said not to have been looked at.
 *
 * <p>Sources: those of the functions that it asks. Does not cover the way from the wall's plate
 * down to the footing, nor anything that only an engineer may say.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.job.path;
