package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;

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
   * sectionProperties(SIZE_2X8, DRESSED, in(0), in(0)).sectionModulus() // 13.141 in³
   * sectionProperties(SIZE_2X8, MEASURED, in("1-5/8"), in("7-5/8")).area() // 12.391 sq in
   * }</pre>
   *
   * @param size nominal size
   * @param stock how it came to its size: dressed dry, dressed green, dressed before about 1970,
   *     sawn to its full size, measured, or ripped, which is refused
   * @param thickness as measured, 0 in to 6 in; 0 takes what the stock says
   * @param depth as measured, 0 in to 24 in; 0 takes what the stock says
   * @return thickness and depth in inches, area, section modulus and moment of inertia
   * @throws RefusedException if a number lies outside its range, the stock is ripped, or measured
   *     without both measures given
   * @see "PS 20-20 for dressed sizes and the green thickness, secondary source; green widths, sizes
   *     before about 1970 and full-sawn ones from memory"
   */
  @LibraryFunction
  public static SectionProperties sectionProperties(
      @Column("size") OneOf<LumberSize> size,
      @Column(value = "stock", preset = "dressed") OneOf<Stock> stock,
      @Column(value = "thickness_in", preset = "0") Figure<Length> thickness,
      @Column(value = "depth_in", preset = "0") Figure<Length> depth) {
    var section = StockSection.of(size, stock, thickness, depth);
    return new SectionProperties(
        section.thickness(),
        section.depth(),
        section.area(),
        section.sectionModulus(),
        section.secondMoment());
  }
}
