package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * The body of a house's roof in plan, eave edge to eave edge, with its one slope.
 *
 * @param length along the ridge
 * @param width across the ridge
 * @param rise rise in 12 of run, everywhere the same
 * @param ends whether the short sides are hipped or gabled
 */
public record HouseBody(
    @Column(
            value = "length_ft",
            least = 4,
            most = 500,
            rule = "in plan, overhangs included; the longer side of a hip roof")
        Figure<Length> length,
    @Column(value = "width_ft", least = 4, most = 200, rule = "in plan, overhangs included")
        Figure<Length> width,
    @Column(value = "rise_in_12", least = 1, most = 24, rule = "6 is a middling roof")
        Figure<Ratio> rise,
    @Column(value = "ends", preset = "hipped") OneOf<RoofEnds> ends) {

  private static final Columns COLUMNS = Columns.of(HouseBody.class);

  public HouseBody {
    length = COLUMNS.let("length", length);
    width = COLUMNS.let("width", width);
    rise = COLUMNS.let("rise", rise);
    ends = COLUMNS.let("ends", ends);
  }

  /** A hipped body of this length; its width and rise are still to be said. */
  public static HouseBody length(Figure<Length> alongTheRidge) {
    return new HouseBody(alongTheRidge, null, null, null);
  }

  public HouseBody width(Figure<Length> acrossTheRidge) {
    return new HouseBody(length, acrossTheRidge, rise, ends);
  }

  public HouseBody rise(Figure<Ratio> in12) {
    return new HouseBody(length, width, in12, ends);
  }

  public HouseBody ends(OneOf<RoofEnds> kind) {
    return new HouseBody(length, width, rise, kind);
  }
}
