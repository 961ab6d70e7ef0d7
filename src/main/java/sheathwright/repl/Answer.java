package sheathwright.repl;

/**
 * What the prompt says to one snippet.
 *
 * @param kind what became of the snippet
 * @param text what is shown; may be empty or many lines
 * @param line on which line of the snippet it failed, counted from 0
 */
record Answer(Kind kind, String text, int line) {

  Answer(Kind kind, String text) {
    this(kind, text, 0);
  }

  /** What became of a snippet. */
  enum Kind {
    /** It had a value, which is shown. */
    SHOWN,
    /** It defined something, which a script need not show. */
    DEFINED,
    /** It was computed, and the library refused to give it a value. */
    REFUSED,
    /** It could not be run. */
    FAILED
  }

  boolean isError() {
    return kind == Kind.REFUSED || kind == Kind.FAILED;
  }
}
