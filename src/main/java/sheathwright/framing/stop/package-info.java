/**
 * What stops a repair until somebody licensed has looked, and how a decision reads.
 *
 * <p>Sources: the checks of the other corners and what was seen on the roof. Does not cover what
 * the engineer then asks for.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.framing.stop;
