package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A strip between two stations.
 *
 * @param firstThickness at the first station
 * @param lastThickness at the last station
 * @param length from the one to the other
 */
public record TaperedShim(
    @Column(value = "first_thickness_in", least = 0, most = 24, rule = TaperedShim.THICKNESS_RULE)
        Figure<Length> firstThickness,
    @Column(value = "last_thickness_in", least = 0, most = 24, rule = TaperedShim.THICKNESS_RULE)
        Figure<Length> lastThickness,
    @Column(value = "length_ft", least = 0.1, most = 40, rule = "station to station")
        Figure<Length> length) {

  private static final String THICKNESS_RULE = "0 where nothing is missing";
  private static final Columns COLUMNS = Columns.of(TaperedShim.class);

  public TaperedShim {
    firstThickness = COLUMNS.let("firstThickness", firstThickness);
    lastThickness = COLUMNS.let("lastThickness", lastThickness);
    length = COLUMNS.let("length", length);
  }

  /** A strip of this length; how thick it is at both ends is still to be said. */
  public static TaperedShim length(Figure<Length> betweenStations) {
    return new TaperedShim(null, null, betweenStations);
  }

  public TaperedShim firstThickness(Figure<Length> there) {
    return new TaperedShim(there, lastThickness, length);
  }

  public TaperedShim lastThickness(Figure<Length> there) {
    return new TaperedShim(firstThickness, there, length);
  }
}
