package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.RefusedException;

/** What sticks really measure. */
public final class RafterSections {

  private RafterSections() {}

  /**
   * What a stick of a nominal size measures, and what its section is worth on edge.
   *
   * <pre>
   * A = b d      S = b d² ÷ 6      I = b d³ ÷ 12
   * </pre>
   *
   * <p>Does not cover notches, wane, decay, or sticks laid flat. Ripped stock is refused: sawing a
   * stick lengthwise voids its grade, and no design value may be given to it until it is graded
   * again. Old lumber differs from its name: measure it; what is measured beats what is named.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * sectionProperties(SIZE_2X8, ActualSize.of(DRESSED)).sectionModulus() // 13.141 in³
   * sectionProperties(SIZE_2X8, ActualSize.of(MEASURED).thickness(in("1-5/8")).depth(in("7-5/8"))).area() // 12.391 sq in
   * }</pre>
   *
   * @param size nominal size
   * @param actual what it really measures: dressed dry, dressed green, dressed before about 1970,
   *     sawn to its full size, or by rule
   * @return thickness and depth in inches, area, section modulus and moment of inertia
   * @throws RefusedException if a number lies outside its range, the stock is ripped, or measured
   *     without both measures given
   * @see "PS 20-20 for dressed sizes and the green thickness, secondary source; green widths, sizes
   *     before about 1970 and full-sawn ones from memory"
   */
  @LibraryFunction(words = {"lumber size", "actual size"})
  public static SectionProperties sectionProperties(
      @Column("size") OneOf<LumberSize> size, ActualSize actual) {
    var section = StockSection.of(size, actual);
    return new SectionProperties(
        section.thickness(),
        section.depth(),
        section.area(),
        section.sectionModulus(),
        section.secondMoment());
  }

  /**
   * What a stick measures where it is cut through, standing on edge.
   *
   * @param thickness across the load
   * @param depth along the load
   * @param area of the cut
   * @param sectionModulus against bending
   * @param secondMoment against sagging
   */
  public record SectionProperties(
      @Column("actual_thickness_in") Figure<Length> thickness,
      @Column("actual_depth_in") Figure<Length> depth,
      @Column("section_sq_in") Figure<Area> area,
      @Column("section_modulus_in3") Figure<SectionModulus> sectionModulus,
      @Column("second_moment_in4") Figure<SecondMoment> secondMoment) {}
}
