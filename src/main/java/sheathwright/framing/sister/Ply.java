package sheathwright.framing.sister;

import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.LumberSize;
import sheathwright.wood.RafterSection;

/** One of two pieces that stand side by side: its section, and what comes of it. */
final class Ply {

  private final String whose;
  private final RafterSection section;
  final Figure<Length> thickness;
  final Figure<Length> depth;

  private Ply(String whose, Figure<Length> thickness, Figure<Length> depth) {
    this.whose = whose;
    this.section = RafterSection.of(whose, thickness, depth);
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

  Figure<Stiffness> stiffness(Figure<Stress> modulus) {
    return modulus
        .times(section.secondMoment())
        .as(whose + "_stiffness_lb_in2", Units.POUND_SQUARE_INCH)
        .symbol("EI_" + whose);
  }

  /** The moment at which an adjusted bending value is used up. */
  Figure<Moment> capacity(Figure<Stress> bending) {
    return bending
        .times(section.sectionModulus())
        .as(whose + "_capacity_in_lb", Units.INCH_POUND)
        .symbol("M_cap_" + whose);
  }
}
