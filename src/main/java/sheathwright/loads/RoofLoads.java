package sheathwright.loads;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;

/**
 * What lies on a roof, each on the horizontal projection; roof live load and snow are alternatives
 * and never added.
 *
 * @param dead dead load
 * @param roofLive roof live load
 * @param snow snow on the roof
 */
public record RoofLoads(
    @Column(value = "dead_psf", least = 0, most = 200, rule = "10 to 20 is usual", symbol = "D")
        Figure<Pressure> dead,
    @Column(
            value = "roof_live_psf",
            least = 0,
            most = 300,
            rule = "20, or less by its rules",
            symbol = "L_r")
        Figure<Pressure> roofLive,
    @Column(
            value = "snow_psf",
            least = 0,
            most = 300,
            rule = "on the roof, 0 where none falls",
            symbol = "S")
        Figure<Pressure> snow) {

  private static final Columns COLUMNS = Columns.of(RoofLoads.class);

  public RoofLoads {
    dead = COLUMNS.let("dead", dead);
    roofLive = COLUMNS.let("roofLive", roofLive);
    snow = COLUMNS.let("snow", snow);
  }

  /** A dead load; roof live load and snow are still to be said. */
  public static RoofLoads dead(Figure<Pressure> load) {
    return new RoofLoads(load, null, null);
  }

  public RoofLoads roofLive(Figure<Pressure> load) {
    return new RoofLoads(dead, load, snow);
  }

  public RoofLoads snow(Figure<Pressure> load) {
    return new RoofLoads(dead, roofLive, load);
  }
}
