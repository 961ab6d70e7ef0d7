/**
 * The command that says what was checked: everything, one function, or an office's own cases.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.cli.proof;
