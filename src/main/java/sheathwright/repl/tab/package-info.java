/** What could come next on a line, and what a function wants: Tab, and the form of a function. */
package sheathwright.repl.tab;
