/**
 * The JDK's own shell as a session uses it: snippets are loaded and run here, can be stopped, and
 * cannot end the program; each reaches the session that it belongs to.
 *
 * <p>Does not cover what a line means: that is the session's.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.shell;
