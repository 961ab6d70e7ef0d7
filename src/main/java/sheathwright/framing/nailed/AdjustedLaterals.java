package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.wood.ConnectionFactors;
import sheathwright.wood.LoadDuration;
import sheathwright.wood.Nds;
import sheathwright.wood.ServiceConditions;

/** What a nail of a sister carries across its length, adjusted. */
public final class AdjustedLaterals {

  private static final Source NDS = Source.secondHand("NDS 2018");
  private static final Source PENETRATION = NDS.at("12.1.6 and Table 12N");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> SIX =
      Figure.constant("least_penetration_in_diameters", 6, Units.RATIO, PENETRATION).symbol("6");
  private static final Figure<Ratio> TEN =
      Figure.constant("full_penetration_in_diameters", 10, Units.RATIO, PENETRATION).symbol("10");

  private AdjustedLaterals() {}

  /**
   * What one nail of a sister may carry across its length, out of its listed value.
   *
   * <pre>
   * Z' = Z C_D C_M C_t × the lesser of 1 and p ÷ 10 D
   * C_M = 0.7 if the wood is wet now or later, else 1
   * C_t = 1, 0.8 and 0.7 to 100, 125 and 150 degrees; in wood that is wet in service 1, 0.7 and 0.5
   * </pre>
   *
   * <p>Does not cover end grain, toe-nails, nails of 1/4 in and more, or nails pulled along their
   * length, which are of no use in a sister. The short cut p ÷ 10 D belongs to a value out of the
   * printed table; where Z comes from {@code nail_lateral}, which has reckoned with the
   * penetration, say so and it is left out. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * adjustedLateral(ListedNail.lateral(lb(141)).penetration(in(1.25)).diameter(in(0.162)), DURATION_TEN_MINUTES, DRY) // 174.1 lb
   * adjustedLateral(ListedNail.lateral(lb(118)).penetration(in(1.5)).diameter(in(0.148)), DURATION_SNOW, DRY) // 135.7 lb
   * }</pre>
   *
   * @param nail and its listed value
   * @param loadDuration the shortest load
   * @param service moisture and temperature of the wood
   * @return pounds for one nail
   * @throws RefusedException if a number lies outside its range, or the nail reaches less than 6
   *     diameters
   * @see "NDS 2018 section 12.1.6 and Tables 2.3.2, 11.3.1, 11.3.3 and 12N, secondary source;
   *     temperature factors from memory"
   */
  @LibraryFunction
  @Column("adjusted_lb")
  public static Figure<Force> adjustedLateral(
      ListedNail nail,
      @Column(value = "load_duration", preset = "snow") OneOf<LoadDuration> loadDuration,
      ServiceConditions service) {
    var p = nail.penetration();
    var d = nail.diameter();
    var cd =
        Nds.loadDuration("load_duration_factor", loadDuration.choice().argument("load_duration"));

    var reached = p.dividedBy(TEN.times(d)).as("part_of_ten_diameters", Units.RATIO, PENETRATION);
    var enough =
        reached
            .onlyIf(
                p.isAtLeast(SIX.times(d)),
                "the nail goes less than 6 diameters into the far piece, and then no lateral"
                    + " value may be counted (%s); use a longer or a thinner nail"
                        .formatted(PENETRATION))
            .as("part_reached", Units.RATIO, PENETRATION);
    var counted =
        Figure.choose(nail.penetrationCounted().choice().is(YesNo.YES), enough.max(ONE), enough)
            .as("part_to_count", Units.RATIO, PENETRATION);
    var factor = counted.min(ONE).as("penetration_factor", Units.RATIO, PENETRATION);
    var cm = ConnectionFactors.lateralMoisture(service.moisture().choice());
    var ct = ConnectionFactors.temperature(service);
    return nail.lateral()
        .times(cd)
        .times(cm)
        .times(ct)
        .times(factor)
        .as("adjusted_lb", Units.POUND, NDS.at("Table 11.3.1"));
  }
}
