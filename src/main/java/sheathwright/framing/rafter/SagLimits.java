package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/**
 * What a span is divided by for the sag that is allowed, by the ceiling that hangs on a roof.
 *
 * @param live for the sag under live load: 180 without a ceiling below, 240 with one, 360 with a
 *     plaster one
 * @param total for the sag under all load with creep; 0 takes 120 with 180, 180 with 240 and 240
 *     with 360, else it is 60 at least
 */
public record SagLimits(
    @Column(
            value = "deflection_limit",
            least = 180,
            most = 360,
            rule = "180 with no ceiling below, 240 with one, 360 with a plaster ceiling")
        Figure<Ratio> live,
    @Column(
            value = "total_deflection_limit",
            preset = "0",
            least = 0,
            most = 360,
            rule = "0 takes 120, 180 or 240, whichever goes with the live-load limit")
        Figure<Ratio> total) {

  private static final Table PAIRS =
      Published.table(
          "ibc/2015-2024/deflection-limits.csv", "sag_limits", "deflection limits under a roof", 1);
  private static final Figure<Ratio> NO_CEILING = passing(Ceiling.NONE);
  private static final Figure<Ratio> GYPSUM = passing(Ceiling.GYPSUM);
  private static final Figure<Ratio> PLASTER = passing(Ceiling.PLASTER);
  private static final Source BY_SLOPE =
      Source.secondHand("IRC Table R301.7: 180 for rafters of more than 3 in 12 alone");
  private static final Figure<Ratio> RAFTERS_ABOVE =
      Figure.constant("greatest_low_rise", 3, Units.RISE_IN_12, BY_SLOPE).symbol("3 in 12");
  private static final Figure<Ratio> FOLLOWS = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> LEAST_TOTAL =
      Figure.constant("least_total_limit", 60, Units.RATIO, Source.COMMON_PRACTICE).symbol("60");

  /** The table of both limits. */
  static final Source SOURCE = PAIRS.source();

  private static final Columns COLUMNS = Columns.of(SagLimits.class);

  public SagLimits {
    live = COLUMNS.let("live", live);
    total = COLUMNS.let("total", total);
  }

  /** A limit under live load, and under all load the one that is printed beside it. */
  public static SagLimits live(Figure<Ratio> limit) {
    return new SagLimits(limit, null);
  }

  /** The limits that go with what hangs on the roof. */
  public static SagLimits under(OneOf<Ceiling> ceiling) {
    Choice<Ceiling> hung = ceiling.choice().argument("ceiling");
    Figure<Ratio> hanging =
        Figure.choose(hung.is(Ceiling.PLASTER), PLASTER, GYPSUM)
            .as("limit_below_a_ceiling", Units.RATIO);
    return live(
        Figure.choose(hung.is(Ceiling.NONE), NO_CEILING, hanging)
            .as("limit_of_the_ceiling", Units.RATIO, SOURCE));
  }

  public SagLimits total(Figure<Ratio> limit) {
    return new SagLimits(live, limit);
  }

  private static Figure<Ratio> passing(Ceiling ceiling) {
    return PAIRS
        .number(Units.RATIO, "live", ceiling)
        .as(ceiling.word().replace('-', '_') + "_live_limit", Units.RATIO);
  }

  /** For the sag allowed under live load: 180, 240 or 360. */
  Figure<Ratio> passing() {
    return live.onlyIf(
            Condition.any(
                live.isTheSameAs(NO_CEILING), live.isTheSameAs(GYPSUM), live.isTheSameAs(PLASTER)),
            "deflection_limit is %s; it must be 180 with no ceiling below, 240 with one or 360 with a"
                    .formatted(live)
                + " plaster ceiling, by %s".formatted(SOURCE))
        .as("live_limit", Units.RATIO)
        .symbol("n");
  }

  /**
   * The same on a slope: where it is not more than 3 in 12, as for any other member, 240 at least.
   */
  public Figure<Ratio> passing(Figure<Ratio> rise) {
    var level = passing();
    return Figure.choose(rise.isMoreThan(RAFTERS_ABOVE), level, level.max(GYPSUM))
        .as("live_limit_on_the_slope", Units.RATIO, BY_SLOPE)
        .symbol("n");
  }

  /** For the sag allowed under all load with creep; 0 takes the one printed beside the other. */
  Figure<Ratio> withCreep(Figure<Ratio> passing) {
    var stated =
        total.onlyIf(
            Condition.any(total.isTheSameAs(FOLLOWS), total.isAtLeast(LEAST_TOTAL)),
            "total_deflection_limit is %s; it must be 0, which follows deflection_limit, or from 60 to"
                    .formatted(total)
                + " 360");
    var underCeiling =
        Choice.choose(passing.isTheSameAs(GYPSUM), Ceiling.GYPSUM, Ceiling.PLASTER)
            .as("ceiling_below");
    var ceiling =
        Choice.choose(passing.isTheSameAs(NO_CEILING), Ceiling.NONE, underCeiling).as("ceiling");
    var printed = PAIRS.number(Units.RATIO, "total", ceiling).as("paired_limit", Units.RATIO);
    return Figure.choose(stated.isTheSameAs(FOLLOWS), printed, stated)
        .as("total_limit", Units.RATIO, SOURCE)
        .symbol("n_total");
  }
}
