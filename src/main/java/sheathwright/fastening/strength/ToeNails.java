package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;

/** Nails driven aslant, as a rafter is nailed to its plate. */
public final class ToeNails {

  private static final Source SLANTED = Nds.COPIED.at("12.1.5.7");
  private static final Source FACTOR = Nds.COPIED.at("12.5.4");
  private static final Figure<Ratio> COSINE =
      Figure.constant(
              "cosine_of_30_degrees", Math.sqrt(3) / 2, Units.RATIO, Source.derived("30 degrees"))
          .symbol("cos 30°");
  private static final Figure<Ratio> THREE = Nds.number("toe_nail_start", 3, "3", SLANTED);
  private static final Figure<Ratio> LATERAL = Nds.number("toe_nail_lateral", 0.83, "0.83", FACTOR);
  private static final Figure<Ratio> WITHDRAWAL =
      Nds.number("toe_nail_withdrawal", 0.67, "0.67", FACTOR);

  private ToeNails() {}

  /**
   * How a nail driven at 30 degrees, a third of its length from the joint, lies in its two members.
   *
   * <pre>
   * l_s = the lesser of side thickness and L ÷ 3
   * l_m = L cos 30° − L ÷ 3          p = L − (L ÷ 3) ÷ cos 30°
   * C_tn = 0.83 on lateral, 0.67 on withdrawal values
   * </pre>
   *
   * <p>Does not cover a main member that is thinner than l_m, nails driven otherwise, splitting, or
   * uplift, for which ties are usual. The wet-service factor is not taken beside the withdrawal
   * factor. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * toeNail(SlantedNail.length(in(2.5))).mainBearing() // 1.3317 in
   * toeNail(SlantedNail.length(in(2.5))).penetration() // 1.5377 in
   * }</pre>
   *
   * @param slanted the nail, and what it is driven through
   * @return bearing lengths in both members and the penetration in inches; the two factors
   * @throws RefusedException if either number lies outside its range
   * @see "NDS 2018 sections 12.1.5.7 and 12.5.4 with commentary, secondary source"
   */
  @LibraryFunction
  public static ToeNail toeNail(SlantedNail slanted) {
    var nail = slanted.length();
    var third = nail.dividedBy(THREE).as("third_of_the_nail_in", Units.INCH, SLANTED);
    return new ToeNail(
        slanted.sideThickness().min(third).as("side_bearing_in", Units.INCH, SLANTED).symbol("l_s"),
        nail.times(COSINE).minus(third).as("main_bearing_in", Units.INCH, SLANTED).symbol("l_m"),
        nail.minus(third.dividedBy(COSINE)).as("penetration_in", Units.INCH, SLANTED).symbol("p"),
        LATERAL.as("lateral_factor", Units.RATIO, FACTOR),
        WITHDRAWAL.as("withdrawal_factor", Units.RATIO, FACTOR));
  }

  /**
   * How a toe-nail lies in its two members.
   *
   * @param sideBearing length that bears in the member it is driven through
   * @param mainBearing length that bears in the member that holds the point, along its face
   * @param penetration length in the member that holds the point, along the nail
   * @param lateralFactor what its lateral value is multiplied by
   * @param withdrawalFactor what its withdrawal value is multiplied by
   */
  public record ToeNail(
      @Column("side_bearing_in") Figure<Length> sideBearing,
      @Column("main_bearing_in") Figure<Length> mainBearing,
      @Column("penetration_in") Figure<Length> penetration,
      @Column("lateral_factor") Figure<Ratio> lateralFactor,
      @Column("withdrawal_factor") Figure<Ratio> withdrawalFactor) {}
}
