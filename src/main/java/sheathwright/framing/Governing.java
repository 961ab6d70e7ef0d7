package sheathwright.framing;

import java.util.List;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;

/** Which of several checks uses up the most; of two alike, the first. */
final class Governing {

  /** A check with the word for it. */
  record Named(RafterLimit limit, Check check) {}

  private Governing() {}

  static Choice<RafterLimit> of(List<Named> checks) {
    var greatest = greatest(checks);
    int last = checks.size() - 1;
    Choice<RafterLimit> governs = Choice.literal(checks.get(last).limit());
    for (Named each : reversed(checks.subList(0, last))) {
      governs =
          Choice.choose(each.check().ratio().isTheSameAs(greatest), each.limit(), governs)
              .as("limit_from_" + each.limit().word().replace('-', '_'));
    }
    return governs.as("governs");
  }

  private static Figure<Ratio> greatest(List<Named> checks) {
    Figure<Ratio> greatest = checks.get(0).check().ratio();
    for (Named each : checks.subList(1, checks.size())) {
      greatest =
          greatest
              .orIfMore(each.check().ratio())
              .as("greatest_to_" + each.limit().word().replace('-', '_'), Units.RATIO);
    }
    return greatest;
  }

  private static List<Named> reversed(List<Named> checks) {
    List<Named> reversed = new java.util.ArrayList<>(checks);
    java.util.Collections.reverse(reversed);
    return reversed;
  }
}
