package sheathwright.sheathing.triage;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.OneOf;
import sheathwright.figure.YesNo;

/**
 * What is known of the framing under a sheet.
 *
 * @param framingStops whether a report stops the framing under it
 * @param overBuildUp whether it lies over a rafter that is shimmed or sistered from above
 */
public record SheetPlace(
    @Column(value = "framing_stops", preset = "no") OneOf<YesNo> framingStops,
    @Column(value = "over_build_up", preset = "no") OneOf<YesNo> overBuildUp) {

  private static final Columns COLUMNS = Columns.of(SheetPlace.class);

  /** Nothing stops the framing, and no rafter under the sheet is built up. */
  public static final SheetPlace FREE = new SheetPlace(null, null);

  public SheetPlace {
    framingStops = COLUMNS.let("framingStops", framingStops);
    overBuildUp = COLUMNS.let("overBuildUp", overBuildUp);
  }
}
