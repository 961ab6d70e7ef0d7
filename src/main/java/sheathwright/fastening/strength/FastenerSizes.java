package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** Nails and screws by name. */
public final class FastenerSizes {

  private static final Table NAILS =
      Published.table("nds/2018/nail-dimensions.csv", "nail_dimensions", "nail dimensions", 1);
  private static final Table SCREWS =
      Published.table("nds/2018/screw-dimensions.csv", "screw_dimensions", "screw dimensions", 1);
  private static final Source YIELD =
      Source.read("IRC 2015 to 2024, Table R602.3(1), footnote on nails");
  private static final Figure<Length> THIN =
      Figure.constant("thin_shank_in", 0.142, Units.INCH, YIELD).symbol("0.142 in");
  private static final Figure<Stress> THIN_YIELD =
      Figure.constant("thin_shank_yield_psi", 100_000, Units.PSI, YIELD).symbol("100000 psi");
  private static final Figure<Stress> THICK_YIELD =
      Figure.constant("thick_shank_yield_psi", 90_000, Units.PSI, YIELD).symbol("90000 psi");

  private FastenerSizes() {}

  /**
   * The sizes of a nail by the name that it is sold under.
   *
   * <pre>
   * listed for the nail; bending yield 100000 psi up to 0.142 in, 90000 psi from there to 0.177 in
   * </pre>
   *
   * <p>Does not cover what lies in the box: gun nails of the same name are often thinner, so
   * measure one. Nails thicker than 0.177 in are not listed.
   *
   * <pre>{@code
   * nailDimensions(NAIL_8D_COMMON).diameter() // 0.131 in
   * nailDimensions(NAIL_RSRS_01).rings() // 1-1/2 in
   * }</pre>
   *
   * @param nail as it is called
   * @return diameter, length, head diameter and length of the rings in inches; bending yield in psi
   * @throws RefusedException if the list does not hold the nail
   * @see "NDS 2018 Appendix L and ASTM F1667, from memory but for what was read on code pages; IRC
   *     2015 to 2024 Table R602.3(1), read"
   */
  @LibraryFunction(words = {"8d", "10d", "penny", "nail size"})
  public static NailSize nailDimensions(@Column("nail") OneOf<NailType> nail) {
    Choice<NailType> name = nail.choice().argument("nail");
    var diameter = nailColumn("diameter_in", name).as("diameter_in", Units.INCH, NAILS.source());
    return new NailSize(
        diameter,
        nailColumn("length_in", name).as("length_in", Units.INCH, NAILS.source()),
        nailColumn("head_in", name).as("head_diameter_in", Units.INCH, NAILS.source()),
        nailColumn("rings_in", name).as("rings_in", Units.INCH, NAILS.source()),
        Figure.choose(diameter.isAtMost(THIN), THIN_YIELD, THICK_YIELD)
            .as("bending_yield_psi", Units.PSI, YIELD));
  }

  private static Figure<Length> nailColumn(String column, Choice<NailType> nail) {
    return NAILS.number(Units.INCH, column, nail);
  }

  /**
   * The sizes of a wood screw by its number.
   *
   * <pre>
   * listed for the screw, a cut-thread wood screw
   * </pre>
   *
   * <p>Does not cover self-drilling, structural and other makers' screws, whose maker states their
   * sizes and values. About two thirds of a cut-thread screw's length is threaded.
   *
   * <pre>{@code
   * screwDimensions(SCREW_10).diameter() // 0.19 in
   * }</pre>
   *
   * @param screw by its number
   * @return diameter over the thread, root diameter and head diameter, in inches
   * @throws RefusedException if the list does not hold the screw
   * @see "NDS 2018 Appendix L, from memory; the diameters of #8, #10 and #12 from a secondary
   *     source"
   */
  @LibraryFunction(words = {"screw size", "gauge"})
  public static ScrewDimensions screwDimensions(@Column("screw") OneOf<ScrewSize> screw) {
    Choice<ScrewSize> size = screw.choice().argument("screw");
    return new ScrewDimensions(
        SCREWS
            .number(Units.INCH, "diameter_in", size)
            .as("diameter_in", Units.INCH, SCREWS.source()),
        SCREWS
            .number(Units.INCH, "root_in", size)
            .as("root_diameter_in", Units.INCH, SCREWS.source()),
        SCREWS
            .number(Units.INCH, "head_in", size)
            .as("head_diameter_in", Units.INCH, SCREWS.source()));
  }

  /**
   * A nail in numbers.
   *
   * @param diameter of the shank
   * @param length from head to point
   * @param head diameter of the round head
   * @param rings length of the ringed part; 0 for a smooth shank
   * @param bendingYield least average bending yield strength that the code asks of it
   */
  public record NailSize(
      @Column("diameter_in") Figure<Length> diameter,
      @Column("length_in") Figure<Length> length,
      @Column("head_diameter_in") Figure<Length> head,
      @Column("rings_in") Figure<Length> rings,
      @Column("bending_yield_psi") Figure<Stress> bendingYield) {}

  /**
   * A wood screw in numbers.
   *
   * @param diameter over the thread
   * @param root diameter under the thread
   * @param head diameter of the head
   */
  public record ScrewDimensions(
      @Column("diameter_in") Figure<Length> diameter,
      @Column("root_diameter_in") Figure<Length> root,
      @Column("head_diameter_in") Figure<Length> head) {}
}
