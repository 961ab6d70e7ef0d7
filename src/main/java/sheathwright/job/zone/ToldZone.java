package sheathwright.job.zone;

import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;
import sheathwright.forecast.Zone;
import sheathwright.job.table.Row;
import sheathwright.sheathing.place.PlaceKey;

/**
 * What a line of the table of zones says of how bad its places are and how well they were seen;
 * what it leaves blank is as of a plain place that nobody has seen.
 *
 * @param row the line
 */
public record ToldZone(Row row) {

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> EVEN = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> ALL = Figure.of(100, Units.PERCENT);

  /** Where it lies. */
  public Reach reach(Reading reading) {
    return Reach.of(reading, row);
  }

  private static String name(Reading reading, Choice<String> name) {
    return reading.word("name of a zone", name);
  }

  /** How many places of it somebody has seen. */
  public Figure<Ratio> seen() {
    return row.or(ZoneFields.SEEN, NONE);
  }

  /** How many of those were bad. */
  public Figure<Ratio> bad() {
    return row.or(ZoneFields.SEEN_BAD, NONE);
  }

  /** The odds of a place being bad, as a multiple of a plain place's. */
  public Figure<Ratio> odds() {
    return row.or(ZoneFields.ODDS, EVEN);
  }

  /** The share of bad places that show as bad to whoever looks. */
  public Figure<Ratio> recognized() {
    return row.or(ZoneFields.SEEN_SHARE, ALL);
  }

  /**
   * The same as plain numbers.
   *
   * @param onTheMap places that the map has of it, for a zone that gives none
   */
  public Zone plain(Reading reading, int onTheMap) {
    String name = name(reading, row.of(ZoneFields.ZONE));
    String label = "zone " + name + ", ";
    return new Zone(
        name,
        row.has(ZoneFields.PLACES)
            ? (int) reading.number(label + "places", row.of(ZoneFields.PLACES), Units.RATIO)
            : onTheMap,
        (int) reading.number(label + "seen", seen(), Units.RATIO),
        (int) reading.number(label + "seen bad", bad(), Units.RATIO),
        reading.number(label + "odds", odds(), Units.RATIO),
        reading.number(label + "share that shows", recognized(), Units.PERCENT) / 100);
  }

  /**
   * Where a zone lies on the map of an old deck.
   *
   * @param plane of it; all planes where a zone names none
   * @param from its lowest course
   * @param to its highest
   */
  public record Reach(Optional<String> plane, double from, double to) {

    /** Where a line of the table lies, as far as it could be read. */
    private static Reach of(Reading reading, Row zone) {
      String label =
          zone.read(ZoneFields.ZONE).map(name -> "zone " + name(reading, name)).orElse("zone");
      return new Reach(
          zone.read(ZoneFields.PLANE).map(plane -> reading.word(label + ", plane", plane)),
          zone.read(ZoneFields.FROM_COURSE)
              .map(course -> reading.number(label + ", lowest course", course, Units.RATIO))
              .orElse(1.0),
          zone.read(ZoneFields.TO_COURSE)
              .map(course -> reading.number(label + ", highest course", course, Units.RATIO))
              .orElse(Double.POSITIVE_INFINITY));
    }

    /** Whether a place lies in it. */
    public boolean holds(PlaceKey place) {
      return plane.map(place.plane()::equals).orElse(true)
          && place.course() >= from
          && place.course() <= to;
    }
  }
}
