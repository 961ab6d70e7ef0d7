package sheathwright.year;

import static java.util.stream.Collectors.joining;

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

  /** The same without what is asked: a price may have run out by another clock. */
  Answer withoutQuestions() {
    String rest = err.lines().filter(line -> !line.startsWith("question: ")).collect(joining("\n"));
    return new Answer(status, out, rest);
  }

  /** Whether somebody was asked whether this is meant. */
  boolean asks() {
    return err.contains("question: ");
  }
}
