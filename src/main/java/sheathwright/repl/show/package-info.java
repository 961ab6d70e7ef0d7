/**
 * What the prompt draws and how it fits the window: pictures in characters, text wrapped at words,
 * long answers by the screenful.
 */
package sheathwright.repl.show;
