package sheathwright.framing;

import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.published.DressedSizes;
import sheathwright.published.LumberSize;

/** One of two pieces that stand side by side: its section, and what comes of it. */
final class Ply {

  private static final Figure<Ratio> SIX =
      Figure.constant("section_modulus_divisor", 6, Units.RATIO, Source.derived("rectangle"))
          .symbol("6");
  private static final Figure<Ratio> TWELVE = Figure.of(12, Units.RATIO);

  private final String whose;
  final Figure<Length> thickness;
  final Figure<Length> depth;

  private Ply(String whose, Figure<Length> thickness, Figure<Length> depth) {
    this.whose = whose;
    this.thickness = thickness;
    this.depth = depth;
  }

  /** The old rafter, as measured. */
  static Ply rafter(Figure<Length> thickness, Figure<Length> depth) {
    return new Ply(
        "rafter", SisterArguments.rafterThickness(thickness), SisterArguments.rafterDepth(depth));
  }

  /** A piece of a nominal size, at its dry dressed size. */
  static Ply dressed(String whose, OneOf<LumberSize> size) {
    return new Ply(
        whose,
        DressedSizes.thickness(size).as(whose + "_thickness_in", Units.INCH).symbol("b_" + whose),
        DressedSizes.width(size).as(whose + "_depth_in", Units.INCH).symbol("d_" + whose));
  }

  Figure<Area> area() {
    return thickness
        .times(depth)
        .as(whose + "_section_sq_in", Units.SQUARE_INCH)
        .symbol("A_" + whose);
  }

  Figure<SectionModulus> sectionModulus() {
    return thickness
        .times(depth.squared())
        .dividedBy(SIX)
        .as(whose + "_section_modulus_in3", Units.CUBIC_INCH)
        .symbol("S_" + whose);
  }

  Figure<SecondMoment> secondMoment() {
    return thickness
        .times(depth.cubed())
        .dividedBy(TWELVE)
        .as(whose + "_second_moment_in4", Units.INCH_TO_THE_FOURTH)
        .symbol("I_" + whose);
  }

  Figure<Stiffness> stiffness(Figure<Stress> modulus) {
    return modulus
        .times(secondMoment())
        .as(whose + "_stiffness_lb_in2", Units.POUND_SQUARE_INCH)
        .symbol("EI_" + whose);
  }

  /** The moment at which an adjusted bending value is used up. */
  Figure<Moment> capacity(Figure<Stress> bending) {
    return bending
        .times(sectionModulus())
        .as(whose + "_capacity_in_lb", Units.INCH_POUND)
        .symbol("M_cap_" + whose);
  }
}
