package sheathwright.framing;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;

/** Arguments that several functions about sisters take, each with the range that it may have. */
final class SisterArguments {

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
}
