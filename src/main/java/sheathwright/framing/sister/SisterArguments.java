package sheathwright.framing.sister;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;

/** Arguments that several functions about sisters take, each with the range that it may have. */
final class SisterArguments {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private SisterArguments() {}

  static Figure<Length> rafterThickness(Figure<Length> thickness) {
    return thickness
        .within(
            "rafter_thickness_in",
            Units.INCH,
            Limits.between(0.5, 6, "1-1/2 if dressed; old stock is thicker: measure it"))
        .symbol("b_rafter");
  }

  static Figure<Length> rafterDepth(Figure<Length> depth) {
    return depth
        .within(
            "rafter_depth_in",
            Units.INCH,
            Limits.between(2, 16, "3-1/2 is a dressed 2x4, 5-1/2 a 2x6: measure it"))
        .symbol("d_rafter");
  }

  /** Adjusted bending value F_b' of the {@code rafter} or the {@code sister}. */
  static Figure<Stress> bending(String whose, Figure<Stress> stress) {
    return stress
        .within(
            whose + "_bending_psi",
            Units.PSI,
            Limits.between(50, 10_000, "with every adjustment factor in it"))
        .symbol("F_b'_" + whose);
  }

  static Figure<Stress> modulus(String whose, Figure<Stress> modulus) {
    return modulus
        .within(
            whose + "_modulus_psi",
            Units.PSI,
            Limits.between(100_000, 5_000_000, "1400000 is spruce-pine-fir no. 2"))
        .symbol("E_" + whose);
  }

  /** What one nail may carry across its length, every adjustment made. */
  static Figure<Force> lateral(Figure<Force> lateral) {
    return lateral
        .within(
            "lateral_lb",
            Units.POUND,
            Limits.between(1, 5000, "of one nail, adjusted; a 10d common carries about 100"))
        .symbol("Z'");
  }

  /** How hard one nail holds against slip. */
  static Figure<LineForce> slip(Figure<LineForce> stiffness) {
    return stiffness
        .within(
            "nail_stiffness_lb_per_in",
            Units.POUND_PER_INCH,
            Limits.between(100, 1_000_000, "6000 is a 10d common in Douglas fir-larch"))
        .symbol("k");
  }

  static Figure<Length> sisterLength(Figure<Length> length) {
    return length
        .within(
            "sister_length_ft",
            Units.FOOT,
            Limits.between(1, 40, "measured as the span is, on the projection"))
        .as("sister_length_in", Units.INCH)
        .symbol("l");
  }

  /** Between the middles of two neighboring groups of nails. */
  static Figure<Length> arm(Figure<Length> arm) {
    return arm.within(
            "arm_in",
            Units.INCH,
            Limits.between(3, 120, "the longer, the fewer nails; 24 is usual"))
        .symbol("s");
  }

  /** From the middle of the outer group to the end of the sister. */
  static Figure<Length> endDistance(Figure<Length> distance) {
    return distance
        .within("end_distance_in", Units.INCH, Limits.between(0, 24, "3 keeps nails from the end"))
        .symbol("end distance");
  }

  /** A length that stands only where the old rafter is strong enough at its supports. */
  static Figure<Length> support(Figure<Ratio> supportRatio, Figure<Length> length) {
    var ratio =
        supportRatio
            .within(
                "support_ratio",
                Units.RATIO,
                Limits.between(0, 20, "the greater of shear and bearing, from rafter_check"))
            .symbol("support ratio");
    return length
        .onlyIf(
            ratio.isAtMost(ONE),
            "the old rafter fails in shear or bearing at its supports, and a sister that ends short of"
                + " them takes nothing off there: a licensed engineer decides; a sister would have to"
                + " stand on both plates")
        .as("length_between_supports_in", Units.INCH)
        .symbol(length.symbol());
  }
}
