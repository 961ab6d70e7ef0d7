/**
 * What could come next on a line, and what a function wants: Tab, and the form of a function.
 *
 * <p>Does not cover what a line means.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.tab;
