package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How many sheets a deck takes. */
public final class SheetCounts {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  /** Of one whole sheet. */
  public static final Figure<Per<Area, Sheets>> SHEET_AREA =
      Figure.constant(
          "sheet_area_sf", 32, Units.SQUARE_FEET_PER_SHEET, Source.derived("4 ft by 8 ft"));

  private SheetCounts() {}

  /**
   * How many 4 by 8 sheets to order for a deck of a given area, with something for waste.
   *
   * <pre>
   * sheets = ⌈deck area × (1 + waste) ÷ 32 sq ft⌉
   * </pre>
   *
   * <p>Does not cover how the sheets lie: courses, strips at the ridge, hips and valleys can take
   * more. It is the quick answer for an order, not a layout.
   *
   * <pre>{@code
   * sheetsByArea(sqft(704.36), pct(0)) // 23 sheets
   * sheetsByArea(sqft(1973.26), pct(12)) // 70 sheets
   * }</pre>
   *
   * @param deckArea area on the slope, 1 sq ft to 200000 sq ft
   * @param waste share lost to cuts and breakage, 0 % to 100 %
   * @return whole sheets
   * @throws RefusedException if either number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction(words = {"plywood", "OSB", "how many sheets", "waste"})
  @Column(value = "sheets", unit = "sheet")
  public static Figure<Sheets> sheetsByArea(
      @Column("deck_area_sf") Figure<Area> deckArea, @Column("waste_pct") Figure<Ratio> waste) {
    var area =
        deckArea.within(
            "deck_area_sf",
            Units.SQUARE_FOOT,
            Limits.between(1, 200_000, "measured on the slope; a house has 500 to 5000"));
    var share =
        waste.within(
            "waste_pct",
            Units.PERCENT,
            Limits.between(0, 100, "0 for a count, 5 to 15 for an order"));
    return area.times(ONE.plus(share))
        .dividedBy(SHEET_AREA)
        .in(Units.SHEET)
        .roundedUp()
        .as("sheets", Units.SHEET, Source.COMMON_PRACTICE);
  }
}
