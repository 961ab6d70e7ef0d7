package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.roof.SupportSpacing;

/** How close nails must stand where the wind pulls. */
public final class UpliftSpacings {

  private static final Figure<Length> TWELVE = nailedAt(12);
  private static final Figure<Length> SIX = nailedAt(6);
  private static final Figure<Length> FOUR = nailedAt(4);
  private static final Figure<Length> THREE = nailedAt(3);

  private UpliftSpacings() {}

  /**
   * How far apart nails may stand on rafters so that each bears the wind's pull on its part of the
   * deck, exactly.
   *
   * <pre>
   * spacing = resistance ÷ (uplift × support spacing)
   * </pre>
   *
   * <p>Does not cover rounding to what is nailed (see {@code practical_nail_spacing}), the code's
   * own greatest spacing, the weight of the roof, which is left out of the balance, or rake
   * overhangs, whose edge nails bear wind from both faces. Screening only: local code and a
   * licensed engineer decide.
   *
   * <pre>{@code
   * nailSpacingForUplift(lb(68.2), psf(57.3), in(24)) // 7.1414 in
   * nailSpacingForUplift(lb(68.2), psf(57.3), in(16)) // 10.712 in
   * }</pre>
   *
   * @param resistance of one nail, the lesser of withdrawal and pull-through, allowable for wind, 1
   *     lb to 2000 lb
   * @param uplift of the zone at ASD level, 1 psf to 500 psf
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @return inches from nail to nail
   * @throws RefusedException if a number lies outside its range
   * @see "derived: load of the area that one nail holds"
   */
  @LibraryFunction(words = {"blow off", "hold down", "nail pattern"})
  @Column(value = "spacing_in", marked = Marked.DOWN)
  public static Figure<Length> nailSpacingForUplift(
      @Column("resistance_lb") Figure<Force> resistance,
      @Column("uplift_psf") Figure<Pressure> uplift,
      @Column("support_spacing_in") Figure<Length> supportSpacing) {
    return UpliftArguments.spacing(
        "spacing_in",
        UpliftArguments.resistance(resistance),
        UpliftArguments.uplift(uplift),
        SupportSpacing.within(supportSpacing));
  }

  /**
   * The spacing at which nails are driven in practice, from the greatest that the load allows.
   *
   * <pre>
   * nailed at 12, 6, 4 or 3 in, the next below the spacing and the greatest that the code allows
   * </pre>
   *
   * <p>Does not cover two rows of nails, and says nothing where less than 3 in would be needed:
   * there wood may split, and another nail is the answer. Screening only: local code and a licensed
   * engineer decide.
   *
   * <pre>{@code
   * practicalNailSpacing(AllowedSpacing.load(nailSpacingForUplift(lb(68.2), psf(57.3), in(24)))) // 6 in
   * practicalNailSpacing(AllowedSpacing.load(in(5)).code(in(6))) // 4 in
   * }</pre>
   *
   * @param spacing by the load and by the code
   * @return inches from nail to nail
   * @throws RefusedException if a number lies outside its range, or nails would stand closer than 3
   *     in
   * @see "common practice, no source: 12, 6, 4 and 3 in"
   */
  @LibraryFunction(words = {"nail pattern", "layout of nails"})
  @Column("nail_spacing_in")
  public static Figure<Length> practicalNailSpacing(AllowedSpacing spacing) {
    var allowed = spacing.load().min(spacing.code()).as("allowed_spacing_in", Units.INCH);
    var under6 = Figure.choose(allowed.isAtLeast(FOUR), FOUR, THREE).as("under_6_in", Units.INCH);
    var under12 = Figure.choose(allowed.isAtLeast(SIX), SIX, under6).as("under_12_in", Units.INCH);
    var nailed =
        Figure.choose(allowed.isAtLeast(TWELVE), TWELVE, under12).as("next_below_in", Units.INCH);
    return nailed
        .onlyIf(
            allowed.isAtLeast(THREE),
            "nails would stand closer than 3 in, where wood splits; take a nail that holds more,"
                + " such as a ring-shank nail")
        .as("nail_spacing_in", Units.INCH, Source.COMMON_PRACTICE);
  }

  /**
   * The part of a deck or covering that one nail or clip holds.
   *
   * <pre>
   * area = spacing × distance between lines
   * </pre>
   *
   * <p>Does not cover fasteners at edges, which hold about half as much. Screening only: local code
   * and a licensed engineer decide.
   *
   * <pre>{@code
   * tributaryArea(FastenerLines.spacing(in(12)).lines(in(24))) // 2 sq ft
   * }</pre>
   *
   * @param fasteners on their lines
   * @return square feet
   * @throws RefusedException if a number lies outside its range
   * @see "derived: rectangle"
   */
  @LibraryFunction
  @Column("tributary_sf")
  public static Figure<Area> tributaryArea(FastenerLines fasteners) {
    return fasteners
        .spacing()
        .times(fasteners.lines())
        .as("tributary_sf", Units.SQUARE_FOOT, Source.derived("rectangle"));
  }

  private static Figure<Length> nailedAt(int inches) {
    return Figure.constant(
            "nailed_at_%s_in".formatted(inches), inches, Units.INCH, Source.COMMON_PRACTICE)
        .symbol(inches + " in");
  }
}
