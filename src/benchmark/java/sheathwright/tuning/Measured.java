package sheathwright.tuning;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToIntBiFunction;
import java.util.stream.IntStream;

/**
 * What one value of a constant came to: of each list the plan's cost, its bound, and the work in
 * turns; behind these whatever else is worth a sum.
 */
record Measured(List<long[]> lists) {

  private static final int COST = 0;
  private static final int BOUND = 1;
  private static final int WORK = 2;

  private long sum(int what) {
    return lists.stream().mapToLong(list -> list[what]).sum();
  }

  private long proven() {
    return lists.stream().filter(list -> list[COST] == list[BOUND]).count();
  }

  /** One line, beside what the constant's own value came to. */
  String line(String name, Measured own) {
    return String.format(
        Locale.ROOT,
        "%-44s proven %3d, cost %d (%s), bound %d (%s), work %.3f million (%.3f), on lists proven by"
            + " both %.3f%s",
        name,
        proven(),
        sum(COST),
        beside(own, COST),
        sum(BOUND),
        beside(own, BOUND),
        sum(WORK) / 1e6,
        (double) sum(WORK) / own.sum(WORK),
        ofProven(own),
        IntStream.range(WORK + 1, lists.get(0).length)
            .mapToObj(what -> ", " + sum(what) + " (" + beside(own, what) + ")")
            .collect(joining()));
  }

  private String beside(Measured own, int what) {
    return count(own, (one, other) -> one[what] < other[what] ? 1 : 0)
        + " lower, "
        + count(own, (one, other) -> one[what] > other[what] ? 1 : 0)
        + " higher";
  }

  private double ofProven(Measured own) {
    List<long[]> both = new ArrayList<>();
    for (int at = 0; at < lists.size(); at++) {
      long[] one = lists.get(at);
      long[] other = own.lists.get(at);
      if (one[COST] == one[BOUND] && other[COST] == other[BOUND]) {
        both.add(new long[] {one[WORK], other[WORK]});
      }
    }
    return (double) both.stream().mapToLong(pair -> pair[0]).sum()
        / both.stream().mapToLong(pair -> pair[1]).sum();
  }

  private int count(Measured own, ToIntBiFunction<long[], long[]> which) {
    int sum = 0;
    for (int at = 0; at < lists.size(); at++) {
      sum += which.applyAsInt(lists.get(at), own.lists.get(at));
    }
    return sum;
  }
}
