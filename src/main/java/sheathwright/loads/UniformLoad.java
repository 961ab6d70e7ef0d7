package sheathwright.loads;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * An even load on each of many like rafters.
 *
 * @param passing what comes and goes
 * @param dead dead load on the horizontal projection
 */
public record UniformLoad(
    LiveLoad passing,
    @Column(
            value = "dead_psf",
            least = 0,
            most = 100,
            rule = "of horizontal projection; 10 and 20 are usual",
            symbol = "q_dead")
        Figure<Pressure> dead) {

  private static final Columns COLUMNS = Columns.of(UniformLoad.class);

  public UniformLoad {
    passing = Objects.requireNonNullElseGet(passing, () -> new LiveLoad(null, null));
    dead = COLUMNS.let("dead", dead);
  }

  /** On rafters so far apart; the loads are still to be said. */
  public static UniformLoad spacing(Figure<Length> centerToCenter) {
    return new UniformLoad(LiveLoad.spacing(centerToCenter), null);
  }

  public UniformLoad live(Figure<Pressure> load) {
    return new UniformLoad(passing.live(load), dead);
  }

  public UniformLoad dead(Figure<Pressure> load) {
    return new UniformLoad(passing, load);
  }

  /** Center to center of the rafters. */
  public Figure<Length> spacing() {
    return passing.spacing();
  }

  /** The roof live load, or the snow. */
  public Figure<Pressure> live() {
    return passing.live();
  }
}
