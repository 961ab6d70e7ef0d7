/**
 * Marks of bad wood made into patches that end on rafters, and the pieces that they take.
 *
 * <p>Sources: panel span tables and common practice. Does not cover why the wood went bad.
 *
 * <p>Part of the library's API.
 *
 * @since 0.1
 */
package sheathwright.sheathing.patch;
