/**
 * What could come next on a line, and what a function wants: Tab, and the form of a function.
 *
 * <p>Does not cover what a line means.
 */
package sheathwright.repl.tab;
