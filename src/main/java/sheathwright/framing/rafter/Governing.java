package sheathwright.framing.rafter;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/**
 * Which of several checks uses up the most; of two alike, the first.
 *
 * @param limit the word for it
 * @param greatest its ratio
 */
record Governing(Choice<RafterLimit> limit, Figure<Ratio> greatest) {

  private static final Figure<Ratio> ALL_OF_IT = Figure.of(1, Units.RATIO);

  /** The ratio of a check with the word for it. */
  record Named(RafterLimit limit, Figure<Ratio> ratio) {}

  static Governing of(List<Named> checks) {
    var greatest = greatest(checks);
    int last = checks.size() - 1;
    List<Named> backwards = new ArrayList<>(checks.subList(0, last));
    Collections.reverse(backwards);
    Choice<RafterLimit> governs = Choice.literal(checks.get(last).limit());
    for (Named each : backwards) {
      governs =
          Choice.choose(each.ratio().isTheSameAs(greatest), each.limit(), governs)
              .as("limit_from_" + inANumbersName(each.limit()));
    }
    return new Governing(governs.as("governs"), greatest);
  }

  /** Whether none uses up more than there is. */
  Condition isWithin() {
    return greatest.isAtMost(ALL_OF_IT);
  }

  private static Figure<Ratio> greatest(List<Named> checks) {
    Figure<Ratio> greatest = checks.get(0).ratio();
    for (Named each : checks.subList(1, checks.size())) {
      greatest =
          greatest.max(each.ratio()).as("greatest_to_" + inANumbersName(each.limit()), Units.RATIO);
    }
    return greatest;
  }

  private static String inANumbersName(RafterLimit limit) {
    return limit.word().replace('-', '_');
  }
}
