package sheathwright.loads;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.wood.RepetitiveMember;

/**
 * An even load on each of many like rafters.
 *
 * @param spacing center to center; the repetitive factor is taken up to 24 in
 * @param live roof live load, or the snow, on the horizontal projection
 * @param dead dead load on the horizontal projection
 */
public record UniformLoad(
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
            rule = "of horizontal projection; 20 is the usual least",
            symbol = "q_live")
        Figure<Pressure> live,
    @Column(
            value = "dead_psf",
            least = 0,
            most = 100,
            rule = "of horizontal projection; 10 and 20 are the tables' own",
            symbol = "q_dead")
        Figure<Pressure> dead) {

  private static final Columns COLUMNS = Columns.of(UniformLoad.class);

  public UniformLoad {
    spacing = COLUMNS.let("spacing", spacing);
    live = COLUMNS.let("live", live);
    dead = COLUMNS.let("dead", dead);
  }

  /** On rafters so far apart; the loads are still to be said. */
  public static UniformLoad spacing(Figure<Length> centerToCenter) {
    return new UniformLoad(centerToCenter, null, null);
  }

  public UniformLoad live(Figure<Pressure> load) {
    return new UniformLoad(spacing, load, dead);
  }

  public UniformLoad dead(Figure<Pressure> load) {
    return new UniformLoad(spacing, live, load);
  }
}
