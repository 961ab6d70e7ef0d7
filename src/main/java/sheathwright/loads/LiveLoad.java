package sheathwright.loads;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.wood.RepetitiveMember;

/**
 * What comes and goes on each of many like rafters.
 *
 * @param spacing center to center; the repetitive factor is taken up to 24 in
 * @param live roof live load, or the snow, on the horizontal projection
 */
public record LiveLoad(
    @Column(
            value = "spacing_in",
            least = RepetitiveMember.LEAST_SPACING_IN,
            most = RepetitiveMember.MOST_SPACING_IN,
            rule = RepetitiveMember.SPACING_RULE,
            symbol = "s")
        Figure<Length> spacing,
    @Column(
            value = "live_psf",
            least = 1,
            most = 300,
            rule = "on the horizontal projection; 20 is the usual minimum",
            symbol = "q_live")
        Figure<Pressure> live) {

  private static final Columns COLUMNS = Columns.of(LiveLoad.class);

  public LiveLoad {
    spacing = COLUMNS.let("spacing", spacing);
    live = COLUMNS.let("live", live);
  }

  /** On rafters so far apart; the load is still to be said. */
  public static LiveLoad spacing(Figure<Length> centerToCenter) {
    return new LiveLoad(centerToCenter, null);
  }

  public LiveLoad live(Figure<Pressure> load) {
    return new LiveLoad(spacing, load);
  }
}
