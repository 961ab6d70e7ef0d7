package sheathwright.year;

/**
 * What a command answered.
 *
 * @param status its exit status
 * @param out what it said
 * @param err what it complained of or asked
 */
record Answer(int status, String out, String err) {

  static final int DONE = 0;
  static final int REFUSED = 3;

  boolean isDone() {
    return status == DONE;
  }

  boolean isRefused() {
    return status == REFUSED;
  }

  /** Whether somebody was asked whether this is meant. */
  boolean asks() {
    return err.contains("question: ");
  }
}
