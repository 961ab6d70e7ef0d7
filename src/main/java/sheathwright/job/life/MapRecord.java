package sheathwright.job.life;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sheathwright.figure.Reading;
import sheathwright.figure.Shown;
import sheathwright.job.table.Row;
import sheathwright.job.zone.ZoneFields;
import sheathwright.roof.Box;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;

/**
 * The map of an old deck as it was when a document first named a place: from then on a key means
 * one piece of panel, whatever is measured later.
 *
 * @param places the places, plane by plane, from the eave up and from the left
 */
public record MapRecord(List<Named> places) {

  private static final int DECIMALS = 3;
  private static final int MOST_SAID = 3;

  /** A measured joint moves the side of a place by so many inches, and the place is the same. */
  private static final double SAME_SIDE = 24;

  /**
   * One place.
   *
   * @param key what it is called
   * @param plane on which it lies
   * @param box round it, in inches, without slivers beside it that are no places
   */
  public record Named(String key, String plane, Box box) {

    private static Named of(Place place) {
      return new Named(place.key().toString(), place.key().plane(), place.piece().bounds());
    }

    private static Optional<Named> read(Row row) {
      boolean isRead = ZoneFields.PLACES_NAMED.stream().allMatch(f -> row.read(f).isPresent());
      return isRead
          ? Optional.of(
              new Named(
                  row.of(ZoneFields.KEY).value(),
                  row.of(ZoneFields.ITS_PLANE).value(),
                  Box.at(
                      row.of(ZoneFields.ALONG).value(),
                      row.of(ZoneFields.UP).value(),
                      row.of(ZoneFields.WIDTH).value(),
                      row.of(ZoneFields.HEIGHT).value())))
          : Optional.empty();
    }

    private Map<String, String> row() {
      Map<String, String> row = new LinkedHashMap<>();
      row.put(ZoneFields.KEY.name(), key);
      row.put(ZoneFields.ITS_PLANE.name(), plane);
      row.put(ZoneFields.ALONG.name(), inches(box.left()));
      row.put(ZoneFields.UP.name(), inches(box.bottom()));
      row.put(ZoneFields.WIDTH.name(), inches(box.width()));
      row.put(ZoneFields.HEIGHT.name(), inches(box.height()));
      return row;
    }

    private double shared(Box other) {
      return box.overlaps(other) ? box.and(other).area() : 0;
    }

    /** Whether another piece is this one, measured anew. */
    private boolean isStill(Box other) {
      boolean isBeside =
          Math.abs(box.left() - other.left()) <= SAME_SIDE
              && Math.abs(box.right() - other.right()) <= SAME_SIDE
              && Math.abs(box.bottom() - other.bottom()) <= SAME_SIDE
              && Math.abs(box.top() - other.top()) <= SAME_SIDE;
      return isBeside && shared(other) > 0 || shared(other) > box.area() / 2;
    }
  }

  /** The record of the maps of all planes. */
  public static MapRecord of(List<PlaceMap> maps) {
    return new MapRecord(
        maps.stream().flatMap(map -> map.places(Reading.aside()).stream()).map(Named::of).toList());
  }

  /** The record that the table holds; none, where nothing was written yet. */
  public static MapRecord read(List<Row> rows) {
    return new MapRecord(rows.stream().flatMap(row -> Named.read(row).stream()).toList());
  }

  /** The rows of the table, what stands in each by its column. */
  public List<Map<String, String>> rows() {
    return places.stream().map(Named::row).toList();
  }

  /**
   * That the map of a plane calls places otherwise than this record; nothing where it does not. A
   * joint found later may split a place: A-3-5 is then A-3-5a and A-3-5b.
   */
  public Optional<String> renumbered(PlaceMap map) {
    Map<String, Box> now = boxes(map);
    List<String> moved = new ArrayList<>();
    for (Named place : places) {
      if (place.plane().equals(map.plane().name()) && !isStillThere(place, now)) {
        moved.add(
            "what was %s would be %s"
                .formatted(place.key(), newKey(place, now).orElse("no place")));
      }
    }
    return moved.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "the map is not the one by which documents name its places (places.csv): %s%s; put the measures of the plane, its openings and its joints back, or give what was found as a line of joints.csv, which moves no key"
                .formatted(
                    moved.stream().limit(MOST_SAID).collect(joining(", ")),
                    moved.size() > MOST_SAID
                        ? ", and %s more".formatted(moved.size() - MOST_SAID)
                        : ""));
  }

  /**
   * Every key with the box round it, and every key whose place is split with the box round both.
   */
  private static Map<String, Box> boxes(PlaceMap map) {
    List<Place> places = map.places(Reading.aside());
    Map<String, Box> boxes = new TreeMap<>();
    for (Place place : places) {
      boxes.put(place.key().toString(), place.piece().bounds());
      boxes.merge(whole(place.key()), place.piece().bounds(), Box::with);
    }
    return boxes;
  }

  private static String whole(PlaceKey key) {
    return new PlaceKey(key.plane(), key.course(), key.number(), "").toString();
  }

  private static boolean isStillThere(Named place, Map<String, Box> now) {
    return now.containsKey(place.key()) && place.isStill(now.get(place.key()));
  }

  /** The key under which the map has most of a place that was called otherwise. */
  private static Optional<String> newKey(Named place, Map<String, Box> now) {
    return now.entrySet().stream()
        .filter(other -> !other.getKey().equals(place.key()) && place.shared(other.getValue()) > 0)
        .max(Comparator.comparingDouble(other -> place.shared(other.getValue())))
        .map(Map.Entry::getKey);
  }

  private static String inches(double inches) {
    return Shown.plain(
        BigDecimal.valueOf(inches).setScale(DECIMALS, RoundingMode.HALF_UP).doubleValue());
  }
}
