/**
 * What a session remembers: what is defined and from what it was made, what each variable holds and
 * whether that is an old value, how it was before each line, and which lines a change runs again.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.memory;
