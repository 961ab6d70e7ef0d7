package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.wood.WoodMoisture;

/**
 * How long a fastener bears its load, and how damp the wood is meanwhile.
 *
 * @param loadDuration C_D of the shortest load
 * @param moisture of the wood when fastened and afterwards
 */
public record Service(
    @Column(
            value = "load_duration",
            preset = "1.6",
            least = 0.9,
            most = 1.6,
            rule = "1.6 for wind, 1.15 for snow, 1 for ten years",
            symbol = "C_D")
        Figure<Ratio> loadDuration,
    @Column(value = "moisture", preset = "stays-dry") OneOf<WoodMoisture> moisture) {

  private static final Columns COLUMNS = Columns.of(Service.class);

  /** Wind, in wood that stays dry. */
  public static final Service DRY_IN_WIND = new Service(null, null);

  public Service {
    loadDuration = COLUMNS.let("loadDuration", loadDuration);
    moisture = COLUMNS.let("moisture", moisture);
  }

  /** A load of this duration on wood that stays dry. */
  public static Service loadDuration(Figure<Ratio> factor) {
    return new Service(factor, null);
  }

  public Service moisture(OneOf<WoodMoisture> damp) {
    return new Service(loadDuration, damp);
  }
}
