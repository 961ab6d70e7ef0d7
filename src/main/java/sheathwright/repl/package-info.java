/**
 * The prompt: a Java shell that behaves like a spreadsheet. A line is Java; a variable given a new
 * value carries everything computed from it along; a session becomes a live workbook.
 *
 * <p>Built on the JDK's own shell interface with its local engine, in this process, and JLine for
 * the line. Does not cover debugging, remote engines, or other languages.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl;
