/**
 * What the prompt draws and how it fits the window: pictures in characters, text wrapped at words,
 * long answers by the screenful.
 *
 * <p>Not API: it may change with any version.
 */
package sheathwright.repl.show;
