package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * The rectangle that a stick shows where it is cut through, standing on edge.
 *
 * @param thickness b, across the load
 * @param depth d, along the load
 * @param area A = b d
 * @param sectionModulus S = b d² ÷ 6
 * @param secondMoment I = b d³ ÷ 12
 */
public record RafterSection(
    Figure<Length> thickness,
    Figure<Length> depth,
    Figure<Area> area,
    Figure<SectionModulus> sectionModulus,
    Figure<SecondMoment> secondMoment) {

  private static final Figure<Ratio> SIX =
      Figure.constant("section_modulus_divisor", 6, Units.RATIO, Source.derived("rectangle"))
          .symbol("6");
  private static final Figure<Ratio> TWELVE = Figure.of(12, Units.RATIO);

  /** The rectangle of this thickness and depth. */
  public static RafterSection of(Figure<Length> thickness, Figure<Length> depth) {
    return of(
        "",
        "",
        thickness.as("actual_thickness_in", Units.INCH).symbol("b"),
        depth.as("actual_depth_in", Units.INCH).symbol("d"));
  }

  /**
   * The rectangle of one of several pieces, its names begun and its letters ended by whose it is.
   */
  public static RafterSection of(String whose, Figure<Length> thickness, Figure<Length> depth) {
    return of(whose + "_", "_" + whose, thickness, depth);
  }

  private static RafterSection of(String before, String after, Figure<Length> b, Figure<Length> d) {
    return new RafterSection(
        b,
        d,
        b.times(d).as(before + "section_sq_in", Units.SQUARE_INCH).symbol("A" + after),
        b.times(d.squared())
            .dividedBy(SIX)
            .as(before + "section_modulus_in3", Units.CUBIC_INCH)
            .symbol("S" + after),
        b.times(d.cubed())
            .dividedBy(TWELVE)
            .as(before + "second_moment_in4", Units.INCH_TO_THE_FOURTH)
            .symbol("I" + after));
  }
}
