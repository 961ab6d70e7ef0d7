/**
 * What flows in and out of a command: standard input and output where a file could stand, answers
 * as JSON, what is said along the way, and how far it is.
 *
 * <p>Knows no command.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.cli.pipe;
