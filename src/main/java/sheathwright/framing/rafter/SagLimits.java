package sheathwright.framing.rafter;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** What a span is divided by for the sag that is allowed, by the ceiling that hangs on a roof. */
final class SagLimits {

  private enum Ceiling implements Option<Ceiling> {
    NONE,
    NOT_PLASTER,
    PLASTER
  }

  private static final Table PAIRS =
      Published.table(
          "ibc/2015-2024/deflection-limits.csv", "sag_limits", "limits of sag under a roof", 1);
  private static final Figure<Ratio> NO_CEILING = passing(Ceiling.NONE);
  private static final Figure<Ratio> NOT_PLASTER = passing(Ceiling.NOT_PLASTER);
  private static final Figure<Ratio> PLASTER = passing(Ceiling.PLASTER);
  private static final Figure<Ratio> FOLLOWS = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> LEAST_TOTAL =
      Figure.constant("least_total_limit", 60, Units.RATIO, Source.COMMON_PRACTICE).symbol("60");

  /** The table of both limits. */
  static final Source SOURCE = PAIRS.source();

  private SagLimits() {}

  private static Figure<Ratio> passing(Ceiling ceiling) {
    return PAIRS
        .number(Units.RATIO, "live", ceiling)
        .as(ceiling.word().replace('-', '_') + "_live_limit", Units.RATIO);
  }

  /** For the sag allowed under live load: 180, 240 or 360. */
  static Figure<Ratio> passing(Figure<Ratio> limit) {
    var given =
        limit.within(
            "deflection_limit",
            Units.RATIO,
            Limits.between(
                180, 360, "180 without a ceiling below, 240 with one, 360 with a plaster one"));
    return given
        .onlyIf(
            Condition.any(
                given.isTheSameAs(NO_CEILING),
                given.isTheSameAs(NOT_PLASTER),
                given.isTheSameAs(PLASTER)),
            "deflection_limit is %s; it must be 180 without a ceiling below, 240 with one or 360 with a"
                    .formatted(given)
                + " plaster one, by %s".formatted(SOURCE))
        .as("live_limit", Units.RATIO)
        .symbol("n");
  }

  /** For the sag allowed under all load with creep; 0 takes the one printed beside the other. */
  static Figure<Ratio> total(Figure<Ratio> limit, Figure<Ratio> passing) {
    var given =
        limit.within(
            "total_deflection_limit",
            Units.RATIO,
            Limits.between(0, 360, "0 takes 120, 180 or 240 by the limit under live load"));
    var stated =
        given.onlyIf(
            Condition.any(given.isTheSameAs(FOLLOWS), given.isAtLeast(LEAST_TOTAL)),
            "total_deflection_limit is %s; it must be 0, which follows deflection_limit, or from 60 to"
                    .formatted(given)
                + " 360");
    var underCeiling =
        Choice.choose(passing.isTheSameAs(NOT_PLASTER), Ceiling.NOT_PLASTER, Ceiling.PLASTER)
            .as("ceiling_below");
    var ceiling =
        Choice.choose(passing.isTheSameAs(NO_CEILING), Ceiling.NONE, underCeiling).as("ceiling");
    var printed = PAIRS.number(Units.RATIO, "total", ceiling).as("paired_limit", Units.RATIO);
    return Figure.choose(stated.isTheSameAs(FOLLOWS), printed, stated)
        .as("total_limit", Units.RATIO, SOURCE)
        .symbol("n_total");
  }
}
