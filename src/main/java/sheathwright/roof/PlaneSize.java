package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How large a roof plane is, along the eave and up the slope.
 *
 * @param eave length of the plane along the eave
 * @param slope from eave to ridge along the slope
 */
public record PlaneSize(
    @Column(value = "eave_ft", least = 0.5, most = 500, rule = "along the eave")
        Figure<Length> eave,
    @Column(value = "slope_length_ft", least = 0.5, most = 200, rule = "from eave to ridge")
        Figure<Length> slope) {

  private static final Columns COLUMNS = Columns.of(PlaneSize.class);

  public PlaneSize {
    eave = COLUMNS.let("eave", eave);
    slope = COLUMNS.let("slope", slope);
  }

  /** A plane with this much eave; its length up the slope is still to be said. */
  public static PlaneSize eave(Figure<Length> along) {
    return new PlaneSize(along, null);
  }

  public PlaneSize slope(Figure<Length> up) {
    return new PlaneSize(eave, up);
  }
}
