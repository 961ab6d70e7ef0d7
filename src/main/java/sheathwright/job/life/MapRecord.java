package sheathwright.job.life;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.job.table.Field;
import sheathwright.roof.Box;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceMap;

/**
 * The map of an old deck as it was when a document first named a place: from then on a key means
 * one piece of panel, whatever is measured later.
 *
 * @param places the places, plane by plane, from the eave up and from the left
 */
public record MapRecord(List<Named> places) {

  private static final int DECIMALS = 3;

  /**
   * One place.
   *
   * @param key what it is called
   * @param plane on which it lies
   * @param box round it, in inches
   */
  public record Named(String key, String plane, Box box) {

    /** The cells of its line, in the order of the columns. */
    List<String> cells() {
      return List.of(
          key,
          plane,
          inches(box.left()),
          inches(box.bottom()),
          inches(box.width()),
          inches(box.height()));
    }
  }

  /** The record of the maps of all planes. */
  public static MapRecord of(List<PlaceMap> maps) {
    return new MapRecord(
        maps.stream()
            .flatMap(map -> map.places(Reading.aside()).stream().map(place -> named(map, place)))
            .toList());
  }

  private static Named named(PlaceMap map, Place place) {
    return new Named(place.key().toString(), map.plane().name(), place.bounds());
  }

  /** The headings of the table. */
  public static List<String> headings() {
    return ZoneFields.PLACES_NAMED.stream().map(Field::name).toList();
  }

  /** The lines of the table, a cell under each heading. */
  public List<List<String>> lines() {
    return places.stream().map(Named::cells).toList();
  }

  private static String inches(double inches) {
    return Shown.plain(
        BigDecimal.valueOf(inches).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue());
  }
}
