package sheathwright.figure;

import java.util.function.DoubleBinaryOperator;

/** How a column of a list is brought down to one number. */
public enum Gather {
  SUM("the sum of", "SUM", Double::sum),
  GREATEST("the greatest", "MAX", Math::max),
  LEAST("the least", "MIN", Math::min);

  private final String words;
  private final String function;
  private final DoubleBinaryOperator both;

  Gather(String words, String function, DoubleBinaryOperator both) {
    this.words = words;
    this.function = function;
    this.both = both;
  }

  String words() {
    return words;
  }

  String function() {
    return function;
  }

  double both(double left, double right) {
    return both.applyAsDouble(left, right);
  }
}
