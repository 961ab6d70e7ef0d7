package sheathwright.figure;

/**
 * A piece of a formula in print or in a cell, and how tightly it holds together, so that whoever
 * puts it into a larger formula knows when to bracket it.
 */
public record Written(String text, int binding) {

  static final int ALTERNATIVE = 0;
  static final int COMPARISON = 1;
  static final int SUM = 2;
  static final int PRODUCT = 3;
  static final int POWER = 4;
  static final int WHOLE = 5;

  /** Something that never needs brackets: a name, a number, a function call. */
  public static Written whole(String text) {
    return new Written(text, WHOLE);
  }

  String atLeast(int wanted) {
    return binding >= wanted ? text : "(" + text + ")";
  }
}
