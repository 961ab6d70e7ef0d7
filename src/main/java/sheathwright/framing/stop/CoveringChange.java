package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;

/**
 * What comes off a roof and what goes on in its place.
 *
 * @param old weight of what comes off, on the slope
 * @param renewed weight of what goes on, on the slope
 */
public record CoveringChange(
    @Column(
            value = "old_psf",
            least = 0,
            most = CoveringChange.MOST_PSF,
            rule = "what comes off; 0 where the new lies over the old")
        Figure<Pressure> old,
    @Column(
            value = "new_psf",
            least = 0,
            most = CoveringChange.MOST_PSF,
            rule = "what goes on, the battens and mortar too")
        Figure<Pressure> renewed) {

  static final double MOST_PSF = 200;

  private static final Columns COLUMNS = Columns.of(CoveringChange.class);

  public CoveringChange {
    old = COLUMNS.let("old", old);
    renewed = COLUMNS.let("renewed", renewed);
  }

  /** What comes off; what goes on is still to be said. */
  public static CoveringChange from(Figure<Pressure> old) {
    return new CoveringChange(old, null);
  }

  public CoveringChange to(Figure<Pressure> renewed) {
    return new CoveringChange(old, renewed);
  }
}
