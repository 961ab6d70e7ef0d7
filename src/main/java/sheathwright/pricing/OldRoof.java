package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * What comes off a roof and goes to the dump.
 *
 * @param area of the roof, measured on the slope
 * @param layers of old covering
 * @param covering what one layer weighs
 * @param sheets of old deck that go too
 * @param sheet what one of those weighs
 */
public record OldRoof(
    @Column(
            value = "roof_squares",
            unit = "square",
            least = 0,
            most = 5_000,
            rule = "100 sq ft on the slope each")
        Figure<Area> area,
    @Column(
            value = "layers",
            allowed = Limits.Kind.WHOLE_ONLY,
            least = 0,
            most = 5,
            rule = "old coverings, one above the other; 0 for a bare deck")
        Figure<Ratio> layers,
    @Column(
            value = "covering_psf",
            least = 0,
            most = 30,
            rule = "one layer; 2.4 for shingles of 240 lb a square, 1 for sheet metal")
        Figure<Pressure> covering,
    @Column(
            value = "sheets",
            unit = "sheet",
            preset = "0",
            least = 0,
            most = 20_000,
            rule = "sheets of the old deck that go too")
        Figure<Sheets> sheets,
    @Column(
            value = "sheet_lb",
            unit = "lb/sheet",
            preset = "45",
            least = 0,
            most = 500,
            rule = "about 45 for a half-inch sheet")
        Figure<Per<Force, Sheets>> sheet) {

  private static final Columns COLUMNS = Columns.of(OldRoof.class);

  public OldRoof {
    area = COLUMNS.let("area", area);
    layers = COLUMNS.let("layers", layers);
    covering = COLUMNS.let("covering", covering);
    sheets = COLUMNS.let("sheets", sheets);
    sheet = COLUMNS.let("sheet", sheet);
  }

  /** So much roof; layers and weights are still to be said. */
  public static OldRoof area(Figure<Area> slope) {
    return new OldRoof(slope, null, null, null, null);
  }

  public OldRoof layers(Figure<Ratio> many) {
    return new OldRoof(area, many, covering, sheets, sheet);
  }

  public OldRoof covering(Figure<Pressure> one) {
    return new OldRoof(area, layers, one, sheets, sheet);
  }

  public OldRoof sheets(Figure<Sheets> many, Figure<Per<Force, Sheets>> each) {
    return new OldRoof(area, layers, covering, many, each);
  }
}
