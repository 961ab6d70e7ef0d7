package sheathwright.wood;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How far a deep stick under an even load may be trusted not to roll over between the places that
 * hold its upper edge.
 */
public final class LateralStability {

  private static final Source COPIED = RepetitiveMember.NDS_2018;
  private static final Source EQUATION = Source.fromMemory("NDS 2018, equation 3.3-6");
  private static final Source LENGTHS = COPIED.at("Table 3.3.3");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);
  private static final Figure<Ratio> SEVEN = number("short_length_in_depths", 7, "7", LENGTHS);
  private static final Figure<Ratio> SHORT = number("short_length", 2.06, "2.06", LENGTHS);
  private static final Figure<Ratio> LONG = number("long_length", 1.63, "1.63", LENGTHS);
  private static final Figure<Ratio> DEPTHS = number("depths_added", 3, "3", LENGTHS);
  private static final Figure<Ratio> BUCKLING =
      number("buckling_coefficient", 1.2, "1.20", COPIED.at("3.3.3.8"));
  private static final Figure<Ratio> ROUND_OFF = number("stability_root", 1.9, "1.9", EQUATION);
  private static final Figure<Ratio> BEND = number("stability_bend", 0.95, "0.95", EQUATION);

  /** The greatest slenderness ratio that a bending member may have. */
  public static final Figure<Ratio> MOST_SLENDER =
      number("greatest_slenderness", 50, "50", COPIED.at("3.3.3.7"));

  /** l_e. */
  final Figure<Length> effectiveLength;

  /** R_B = √(l_e d ÷ b²). */
  public final Figure<Ratio> slenderness;

  /** F_bE = 1.20 E_min' ÷ R_B². */
  final Figure<Stress> buckling;

  /** C_L; 1 where the upper edge is held along its length. */
  public final Figure<Ratio> factor;

  /**
   * The stability of one stick.
   *
   * @param unbraced between the places that hold the upper edge; 0 if it is held along its length
   * @param bending F_b*, with every factor but stability and flat use
   */
  public LateralStability(
      Figure<Length> unbraced,
      Figure<Length> depth,
      Figure<Length> thickness,
      Figure<Stress> minModulus,
      Figure<Stress> bending) {
    Condition isHeld = unbraced.isAtMost(NOTHING);
    // Where it is held, the equations are fed its depth, so that none of them divides by nothing.
    var lu =
        Figure.choose(isHeld, depth, unbraced).as("counted_unbraced_in", Units.INCH).symbol("l_u");
    var shortOne = SHORT.times(lu).as("short_effective_length_in", Units.INCH, LENGTHS);
    var longOne =
        LONG.times(lu)
            .in(Units.INCH)
            .plus(DEPTHS.times(depth))
            .as("long_effective_length_in", Units.INCH, LENGTHS);
    effectiveLength =
        Figure.choose(lu.isLessThan(SEVEN.times(depth)), shortOne, longOne)
            .as("effective_length_in", Units.INCH, LENGTHS)
            .symbol("l_e");
    slenderness =
        effectiveLength
            .times(depth)
            .dividedBy(thickness.squared())
            .squareRoot()
            .as("slenderness", Units.RATIO, COPIED.at("equation 3.3-5"))
            .symbol("R_B");
    buckling =
        BUCKLING
            .times(minModulus)
            .dividedBy(slenderness.squared())
            .as("buckling_psi", Units.PSI, COPIED.at("3.3.3.8"))
            .symbol("F_bE");
    var f = buckling.dividedBy(bending).as("buckling_ratio", Units.RATIO).symbol("F");
    var half =
        ONE.plus(f)
            .dividedBy(ROUND_OFF)
            .as("half_sum", Units.RATIO, EQUATION)
            .symbol("((1 + F)/1.9)");
    var unheld =
        half.minus(half.squared().in(Units.RATIO).minus(f.dividedBy(BEND)).squareRoot())
            .as("unheld_factor", Units.RATIO, EQUATION);
    factor =
        Figure.choose(isHeld, ONE, unheld)
            .as("stability_factor", Units.RATIO, EQUATION)
            .symbol("C_L");
  }

  /** The factor, refused where the stick is too slender to be used at all. */
  Figure<Ratio> allowedFactor() {
    return factor
        .onlyIf(
            slenderness.isAtMost(MOST_SLENDER),
            "the slenderness ratio is over 50, and a stick so slender may not be used (%s); hold"
                    .formatted(COPIED.at("3.3.3.7"))
                + " its upper edge at shorter distances")
        .as("stability_factor", Units.RATIO, EQUATION)
        .symbol("C_L");
  }

  /**
   * The greatest distance between braces at which a stress is still allowed; nothing where the
   * stress is not allowed at any.
   *
   * <pre>
   * x = stress ÷ F_b*      F = x (1 − 0.95 x) ÷ (1 − x)
   * l_e = 1.20 E_min' b² ÷ (F F_b* d), R_B at most 50
   * </pre>
   */
  public static Figure<Length> longestUnbraced(
      RafterSection section,
      Figure<Stress> minModulus,
      Figure<Stress> bending,
      Figure<Stress> stress) {
    var d = section.depth();
    var x = stress.dividedBy(bending).as("needed_stability", Units.RATIO).symbol("x");
    Condition isPossible = x.isLessThan(ONE);
    var rest = Figure.choose(isPossible, ONE.minus(x), ONE).as("stability_rest", Units.RATIO);
    var curve = ONE.minus(BEND.times(x)).dividedBy(rest).as("stability_curve", Units.RATIO);
    var f = x.times(curve).as("needed_buckling_ratio", Units.RATIO, EQUATION);
    var square =
        BUCKLING
            .times(minModulus)
            .dividedBy(f.times(bending))
            .in(Units.RATIO)
            .min(MOST_SLENDER.squared().in(Units.RATIO))
            .as("allowed_slenderness_squared", Units.RATIO, COPIED.at("3.3.3.8"));
    var effective =
        square
            .times(section.thickness().squared())
            .dividedBy(d)
            .as("allowed_effective_length_in", Units.INCH, COPIED.at("equation 3.3-5"));
    var shortOne = effective.dividedBy(SHORT).as("allowed_short_in", Units.INCH, LENGTHS);
    var longOne =
        effective.minus(DEPTHS.times(d)).dividedBy(LONG).as("allowed_long_in", Units.INCH, LENGTHS);
    var open =
        Figure.choose(shortOne.isLessThan(SEVEN.times(d)), shortOne, longOne)
            .as("allowed_unbraced_in", Units.INCH, LENGTHS);
    return Figure.choose(isPossible, open, NOTHING);
  }

  private static Figure<Ratio> number(String name, double number, String print, Source source) {
    return Figure.constant(name, number, Units.RATIO, source).symbol(print);
  }
}
