package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** What a nail of a sister carries across its length, adjusted. */
public final class AdjustedLaterals {

  private static final Source NDS = Source.secondHand("NDS 2018");
  private static final Source PENETRATION = NDS.at("12.1.6 and Table 12N");
  private static final Source WET = NDS.at("Table 11.3.3");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> SIX =
      Figure.constant("least_penetration_in_diameters", 6, Units.RATIO, PENETRATION).symbol("6");
  private static final Figure<Ratio> TEN =
      Figure.constant("full_penetration_in_diameters", 10, Units.RATIO, PENETRATION).symbol("10");
  private static final Figure<Ratio> WET_FACTOR =
      Figure.constant("wet_lateral_factor", 0.7, Units.RATIO, WET).symbol("0.7");

  private AdjustedLaterals() {}

  /**
   * What one nail of a sister may carry across its length, out of its listed value.
   *
   * <pre>
   * Z' = Z C_D C_M × the lesser of 1 and p ÷ 10 D
   * C_M = 0.7 if the wood is wet now or later, else 1
   * </pre>
   *
   * <p>Does not cover temperature, end grain, toe-nails, nails of 1/4 in and more, or nails pulled
   * along their length, which are of no use in a sister. The short cut p ÷ 10 D belongs to a value
   * out of the printed table; where Z comes from {@code nail_lateral}, which has reckoned with the
   * penetration, say so and it is left out. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * adjustedLateral(lb(141), in(1.25), in(0.162), number(1.6), NO, NO) // 174.1 lb
   * adjustedLateral(lb(118), in(1.5), in(0.148), number(1.15), NO, NO) // 135.7 lb
   * }</pre>
   *
   * @param lateral Z of one nail, as listed, 1 lb to 5000 lb
   * @param penetration p into the piece that holds the point, 0.25 in to 6 in
   * @param diameter D of the shank, 0.05 in to 0.24 in
   * @param loadDuration C_D of the shortest load, 0.9 to 1.6; more is not allowed for nails
   * @param wet whether the wood is above 19 % moisture when it is nailed or later
   * @param penetrationCounted whether Z has reckoned with the penetration already
   * @return pounds for one nail
   * @throws RefusedException if a number lies outside its range, or the nail reaches less than 6
   *     diameters
   * @see "NDS 2018 section 12.1.6 and Tables 2.3.2, 11.3.1, 11.3.3 and 12N, secondary source"
   */
  @LibraryFunction
  @Column("adjusted_lb")
  public static Figure<Force> adjustedLateral(
      @Column("lateral_lb") Figure<Force> lateral,
      @Column("penetration_in") Figure<Length> penetration,
      @Column("diameter_in") Figure<Length> diameter,
      @Column(value = "load_duration", preset = "1.15") Figure<Ratio> loadDuration,
      @Column(value = "wet", preset = "no") OneOf<YesNo> wet,
      @Column(value = "penetration_counted", preset = "no") OneOf<YesNo> penetrationCounted) {
    var z =
        lateral
            .within("lateral_lb", Units.POUND, Limits.between(1, 5000, "of one nail, as listed"))
            .symbol("Z");
    var p =
        penetration
            .within(
                "penetration_in",
                Units.INCH,
                Limits.between(0.25, 6, "1-1/2 at most in a sister of 2x lumber"))
            .symbol("p");
    var d =
        diameter
            .within("diameter_in", Units.INCH, Limits.between(0.05, 0.24, "0.148 is a 10d common"))
            .symbol("D");
    var cd =
        loadDuration
            .within(
                "load_duration",
                Units.RATIO,
                Limits.between(0.9, 1.6, "1.15 for snow, 1.25 for roof live load"))
            .symbol("C_D");

    var reached = p.dividedBy(TEN.times(d)).as("part_of_ten_diameters", Units.RATIO, PENETRATION);
    var enough =
        reached
            .onlyIf(
                p.isAtLeast(SIX.times(d)),
                "the nail reaches less than 6 diameters into the far piece, and then no lateral"
                    + " value may be counted (%s); take a longer or a thinner nail"
                        .formatted(PENETRATION))
            .as("part_reached", Units.RATIO, PENETRATION);
    var counted =
        Figure.choose(
                penetrationCounted.choice().argument("penetration_counted").is(YesNo.YES),
                enough.max(ONE),
                enough)
            .as("part_to_count", Units.RATIO, PENETRATION);
    var factor = counted.min(ONE).as("penetration_factor", Units.RATIO, PENETRATION);
    var cm =
        Figure.choose(wet.choice().argument("wet").is(YesNo.YES), WET_FACTOR, ONE)
            .as("wet_service_factor", Units.RATIO, WET)
            .symbol("C_M");
    return z.times(cd)
        .times(cm)
        .times(factor)
        .as("adjusted_lb", Units.POUND, NDS.at("Table 11.3.1"));
  }
}
