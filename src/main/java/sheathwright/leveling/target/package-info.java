/**
 * The plane, or the line over each rafter, that lies on or above every reading and needs the least
 * build-up.
 *
 * <p>A linear program of few rows, solved by a library and checked again by other code. Does not
 * cover targets that are not straight.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.leveling.target;
