/**
 * Marks of bad wood made into patches that end on rafters, and the pieces that they take.
 *
 * <p>Sources: panel span tables and common practice. Does not cover why the wood went bad.
 */
package sheathwright.sheathing.patch;
