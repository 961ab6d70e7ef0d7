/**
 * The commands. Results go to standard output, messages to standard error; the exit status says
 * whether it was done (0), called wrongly (2), refused (3), or is a fault of the program's own (1).
 *
 * <p>The only room that knows picocli. Does not compute anything itself.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.cli;
