package sheathwright.life.firm;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * How much longer the same work takes on one kind of roof than on another: the average of hours
 * over the hours of the task's line, on either kind, as logarithms.
 *
 * @param name of the factor
 * @param than what the plain kind is
 * @param kind which number of the roof tells them apart
 * @param upTo the greatest of them on the plain kind
 */
record KindFactor(String name, String than, ToDoubleFunction<Done> kind, double upTo) {

  /** Rows that either kind needs. */
  private static final int FEWEST = 5;

  /** Above a rise of 6 in 12 a crew stands on jacks: common practice, no source. */
  static final KindFactor STEEP = new KindFactor("steep_factor", "6 in 12 or less", Done::rise, 6);

  static final KindFactor LAYERS = new KindFactor("layers_factor", "one layer", Done::layers, 1);

  Proposal proposal(Collection<TaskHours> tasks) {
    List<Double> plain = new ArrayList<>();
    List<Double> other = new ArrayList<>();
    for (TaskHours task : tasks) {
      task.line()
          .ifPresent(
              line ->
                  task.rows().stream()
                      .filter(row -> !Double.isNaN(kind.applyAsDouble(row)))
                      .filter(row -> row.hours() > 0 && line.at(row.quantity()) > 0)
                      .forEach(
                          row ->
                              (kind.applyAsDouble(row) <= upTo ? plain : other)
                                  .add(Math.log(row.hours() / line.at(row.quantity())))));
    }
    int rows = plain.size() + other.size();
    if (plain.size() < FEWEST || other.size() < FEWEST) {
      return Proposal.none(
          name,
          "",
          rows,
          "%s rows on roofs of %s and %s on others: at least %s needed of either"
              .formatted(plain.size(), than, other.size(), FEWEST));
    }
    double more = mean(other) - mean(plain);
    double off = Proposal.NINE_OF_TEN * Math.sqrt(spread(other) + spread(plain));
    return Proposal.of(
            name,
            "",
            Math.exp(more),
            rows,
            Proposal.range(Math.exp(more - off), Math.exp(more + off)))
        .known("hours beside those on roofs of %s; no rate holds it yet".formatted(than));
  }

  private static double mean(List<Double> logs) {
    return logs.stream().mapToDouble(each -> each).average().orElse(0);
  }

  /** The square of the standard error of their mean. */
  private static double spread(List<Double> logs) {
    double mean = mean(logs);
    double squares = logs.stream().mapToDouble(each -> (each - mean) * (each - mean)).sum();
    return squares / (logs.size() - 1) / logs.size();
  }
}
