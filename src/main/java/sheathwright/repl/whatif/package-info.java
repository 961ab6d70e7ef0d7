/**
 * Questions of what would be: the one value of an input that gives an answer, and named sets of
 * changes side by side. Nothing here changes what a session holds.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.whatif;
