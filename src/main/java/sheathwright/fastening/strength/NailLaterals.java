package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;

/** What a nail carries across its length. */
public final class NailLaterals {

  private static final Source BEARING = Nds.COPIED.at("Table 12.3.3");
  private static final Source REDUCTION = Nds.COPIED.at("Table 12.3.1B");
  private static final Source PENETRATION = Nds.COPIED.at("12.1.6");
  private static final Figure<Stress> BEARING_STRENGTH =
      Figure.constant("bearing_strength_psi", 16_600, Units.PSI, BEARING).symbol("16600 psi");
  private static final Figure<Ratio> BEARING_EXPONENT =
      Nds.number("bearing_exponent", 1.84, "1.84", BEARING);
  private static final Figure<Stress> PRINTED_STEP =
      Figure.constant("bearing_step_psi", 50, Units.PSI, BEARING).symbol("50 psi");
  private static final Figure<Length> THIN_NAIL =
      Figure.constant("thin_nail_in", 0.17, Units.INCH, REDUCTION).symbol("0.17 in");
  private static final Figure<Ratio> THIN_REDUCTION =
      Nds.number("thin_nail_reduction", 2.2, "2.2", REDUCTION);
  private static final Figure<Length> TENTH =
      Figure.constant("tenth_of_an_inch_in", 0.1, Units.INCH, REDUCTION).symbol("0.1 in");
  private static final Figure<Ratio> HALF = Nds.number("reduction_offset", 0.5, "0.5", REDUCTION);
  private static final Figure<Ratio> LEAST_DIAMETERS =
      Nds.number("least_penetration_in_diameters", 6, "6", PENETRATION);

  private NailLaterals() {}

  /**
   * What one nail through a side member into a rafter carries across its length, in single shear.
   *
   * <pre>
   * Z  = the least of the six yield modes Im, Is, II, IIIm, IIIs and IV, each divided by R_d
   * F_e = 16600 psi × G^1.84, to the nearest 50 psi as printed
   * R_d = 2.2 where D ≤ 0.17 in, else D ÷ 0.1 in + 0.5
   * p  = length − side thickness; l_m = p − D, for the tip of 2 D bears by half
   * </pre>
   *
   * <p>Does not cover adjustment factors, nails whose tip comes out at the back, toe-nails, double
   * shear, end grain, steel side members, spacing and splitting, or nails of 1/4 in and more. The
   * equations are used at every penetration from 6 diameters; the table's shortcut p ÷ 10 D, which
   * gives less, is not. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * nailLateral(ShearNail.diameter(in(0.148)).length(in(3)).bendingYield(psi(90000)), SideMember.of(in(1.5), number(0.5)), number(0.5)).lateral() // 117.6 lb
   * nailLateral(ShearNail.diameter(in(0.148)).length(in(3)).bendingYield(psi(90000)), SideMember.of(in(1.5), number(0.5)), number(0.5)).mode() // IV
   * }</pre>
   *
   * @param nail in numbers
   * @param side the member under the head
   * @param mainGravity G of the member that holds the point, 0.2 to 0.8
   * @return reference value in pounds for one nail, and the yield mode that governs
   * @throws RefusedException if a number lies outside its range, or the point reaches less than 6
   *     diameters into the main member
   * @see "NDS 2018 sections 12.1.6 and 12.3 with Tables 12.3.1A, 12.3.1B and 12.3.3, secondary
   *     source"
   */
  @LibraryFunction
  public static LateralValue nailLateral(
      ShearNail nail, SideMember side, @Column("main_gravity") Figure<Ratio> mainGravity) {
    var d = nail.diameter();
    var fes = bearing("side", side.gravity()).symbol("F_es");
    var fem = bearing("main", Nds.gravity("main_gravity", mainGravity)).symbol("F_em");

    var penetration =
        nail.length()
            .minus(side.thickness())
            .as("penetration_in", Units.INCH, PENETRATION)
            .symbol("p");
    var least = LEAST_DIAMETERS.times(d).as("least_penetration_in", Units.INCH, PENETRATION);
    var enough =
        penetration
            .onlyIf(
                penetration.isAtLeast(least),
                "the nail reaches less than 6 diameters into the main member, and then no lateral"
                    + " value may be counted (%s); take a longer nail".formatted(PENETRATION))
            .as("counted_penetration_in", Units.INCH, PENETRATION);
    var bearingLength =
        enough.minus(d).as("main_bearing_in", Units.INCH, Nds.COPIED.at("12.3.5")).symbol("l_m");
    var thick = d.dividedBy(TENTH).in(Units.RATIO).plus(HALF).as("thick_reduction", Units.RATIO);
    var rd =
        Figure.choose(d.isAtMost(THIN_NAIL), THIN_REDUCTION, thick)
            .as("reduction_term", Units.RATIO, REDUCTION)
            .symbol("R_d");

    var shear =
        new SingleShear(d, bearingLength, side.thickness(), fem, fes, nail.bendingYield(), rd);
    var z = shear.least.as("lateral_lb", Units.POUND, Nds.COPIED.at("12.3.1"));
    return new LateralValue(z, shear.modeOf(z).as("mode"));
  }

  private static Figure<Stress> bearing(String member, Figure<Ratio> gravity) {
    return BEARING_STRENGTH
        .times(gravity.power(BEARING_EXPONENT))
        .dividedBy(PRINTED_STEP)
        .in(Units.RATIO)
        .rounded()
        .times(PRINTED_STEP)
        .as(member + "_bearing_psi", Units.PSI, BEARING);
  }

  /**
   * What a nail carries across its length.
   *
   * @param lateral reference value Z of one nail in single shear
   * @param mode the yield mode that gives it
   */
  public record LateralValue(
      @Column("lateral_lb") Figure<Force> lateral, @Column("mode") Choice<YieldMode> mode) {}
}
