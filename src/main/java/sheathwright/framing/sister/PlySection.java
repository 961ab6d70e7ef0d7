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

/** What one of two pieces that stand side by side shows where it is cut through. */
public final class PlySection {

  public static final String RAFTER = "rafter";
  public static final String SISTER = "sister";

  private final String whose;
  private final RafterSection section;
  final Figure<Length> thickness;
  final Figure<Length> depth;

  PlySection(String whose, Figure<Length> thickness, Figure<Length> depth) {
    this.whose = whose;
    this.section = RafterSection.of(whose, thickness, depth);
    this.thickness = thickness;
    this.depth = depth;
  }

  /** A piece of a nominal size, at its dry dressed size. */
  public static PlySection dressed(String whose, OneOf<LumberSize> size) {
    return new PlySection(
        whose,
        DressedSizes.thickness(size).as(whose + "_thickness_in", Units.INCH).symbol("b_" + whose),
        DressedSizes.width(size).as(whose + "_depth_in", Units.INCH).symbol("d_" + whose));
  }

  public Figure<Stiffness> stiffness(Elasticity elasticity) {
    return stiffness(elasticity.of(whose));
  }

  Figure<Stiffness> stiffness(Figure<Stress> modulus) {
    return modulus
        .times(section.secondMoment())
        .as(whose + "_stiffness_lb_in2", Units.POUND_SQUARE_INCH)
        .symbol("EI_" + whose);
  }

  public Figure<Moment> capacity(BendingValue value) {
    return capacity(value.of(whose));
  }

  /** The moment at which an adjusted bending value is used up. */
  Figure<Moment> capacity(Figure<Stress> bending) {
    return bending
        .times(section.sectionModulus())
        .as(whose + "_capacity_in_lb", Units.INCH_POUND)
        .symbol("M_cap_" + whose);
  }
}
