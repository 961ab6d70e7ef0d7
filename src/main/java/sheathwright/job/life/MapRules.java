package sheathwright.job.life;

import static java.util.stream.Collectors.groupingBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.YesNo;
import sheathwright.job.life.MarkFields.Decided;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.zone.ToldZone;
import sheathwright.job.zone.ZoneFields;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;

/**
 * What the tables of a job's life say of places is held against the map of the old deck.
 *
 * @param maps by the name of their plane
 */
public record MapRules(
    Map<String, PlaceMap> maps,
    ReadTable marks,
    ReadTable photos,
    ReadTable pullTests,
    ReadTable zones,
    ReadTable places,
    ReadTable planes) {

  /**
   * A mark on the map.
   *
   * @param places that it lies in
   */
  public record OnMap(List<String> places) {}

  /** A mark about which somebody decided, and the one place that it lies in. */
  private record Settled(Row mark, String place, Choice<Decided> action) {}

  /**
   * Everything that does not hold.
   *
   * @param onMap the marks that lie on the map
   */
  public List<Problem> problems(Map<Row, OnMap> onMap) {
    List<Problem> problems = new ArrayList<>();
    problems.addAll(twoActions(onMap));
    for (Row photo : photos.rows()) {
      isOnTheMap(photos, photo).or(() -> isWhereItsMarkIs(photo, onMap)).ifPresent(problems::add);
    }
    pullTests.rows().forEach(test -> isOnTheMap(pullTests, test).ifPresent(problems::add));
    zones.rows().forEach(zone -> problems.addAll(offThePlane(zone)));
    if (problems.isEmpty()) {
      countedTwice().ifPresent(problems::add);
    }
    for (Row plane : planes.rows()) {
      String name = plane.of(ZoneFields.ITS_PLANE).value();
      Optional.ofNullable(maps.get(name))
          .flatMap(map -> MapRecord.read(places.rows()).renumbered(map))
          .map(message -> planes.said(plane, ZoneFields.ITS_PLANE, message))
          .ifPresent(problems::add);
    }
    return problems;
  }

  /** A place is dealt with in one way; a joint beside it is another matter. */
  private List<Problem> twoActions(Map<Row, OnMap> onMap) {
    Map<String, List<Settled>> byPlace =
        marks.rows().stream()
            .filter(onMap::containsKey)
            .flatMap(mark -> settled(mark, onMap.get(mark).places()).stream())
            .collect(
                groupingBy(
                    Settled::place, LinkedHashMap::new, java.util.stream.Collectors.toList()));
    List<Problem> problems = new ArrayList<>();
    for (List<Settled> here : byPlace.values()) {
      Settled first = here.get(0);
      for (Settled other : here) {
        if (other.action().value() != first.action().value()) {
          problems.add(
              marks.said(
                  other.mark(),
                  MarkFields.ACTION,
                  "%s is given, but mark %s (line %s) of the same place %s says %s; a place is dealt with in one way: give both the same, leave one blank for the rules, or give yes in void"
                      .formatted(
                          other.action().plain(),
                          first.mark().of(OrderFields.OF_MARK).value(),
                          first.mark().line().number(),
                          first.place(),
                          first.action().plain())));
        }
      }
    }
    return problems;
  }

  private static Optional<Settled> settled(Row mark, List<String> places) {
    boolean isVoid =
        mark.read(MarkFields.VOID).filter(taken -> taken.value() == YesNo.YES).isPresent();
    return isVoid || mark.has(MarkFields.JOINT_LENGTH) || places.size() != 1
        ? Optional.empty()
        : mark.read(MarkFields.ACTION).map(action -> new Settled(mark, places.get(0), action));
  }

  private Optional<Problem> isOnTheMap(ReadTable table, Row row) {
    Optional<Choice<String>> sheet = row.read(OrderFields.OF_SHEET);
    if (sheet.isEmpty()) {
      return Optional.empty();
    }
    String given = sheet.get().value().strip();
    String plane = PlaceKey.read(given).map(PlaceKey::plane).orElse("");
    if (maps.isEmpty()) {
      return Optional.empty();
    }
    if (!maps.containsKey(plane)) {
      return Optional.of(
          table.said(
              row,
              OrderFields.OF_SHEET,
              "\"%s\" is not a place of the map; the planes are %s; give plane, course from the eave and place from the left, such as %s"
                  .formatted(given, String.join(", ", maps.keySet()), anyPlace())));
    }
    try {
      maps.get(plane).place(Reading.aside(), OrderFields.OF_SHEET.name(), sheet.get());
      return Optional.empty();
    } catch (RefusedException missing) {
      return Optional.of(table.said(row, OrderFields.OF_SHEET, missing.getMessage()));
    }
  }

  /** A picture of a mark that names a place as well shows one that the mark lies in. */
  private Optional<Problem> isWhereItsMarkIs(Row photo, Map<Row, OnMap> onMap) {
    Optional<String> sheet = photo.read(OrderFields.OF_SHEET).map(it -> it.value().strip());
    Optional<String> mark = photo.read(OrderFields.OF_MARK).map(Choice::value);
    if (sheet.isEmpty() || mark.isEmpty()) {
      return Optional.empty();
    }
    return MarkNames.of(marks.rows())
        .row(mark.get())
        .filter(onMap::containsKey)
        .map(row -> onMap.get(row).places())
        .filter(places -> !places.contains(sheet.get()))
        .map(
            places ->
                photos.said(
                    photo,
                    OrderFields.OF_SHEET,
                    "%s is given, but mark %s lies in %s; give that, or leave it blank"
                        .formatted(sheet.get(), mark.get(), String.join(" and ", places))));
  }

  private PlaceKey anyPlace() {
    return maps.values().stream()
        .flatMap(map -> map.places(Reading.aside()).stream())
        .map(Place::key)
        .findFirst()
        .orElseGet(() -> new PlaceKey("A", 1, 1, ""));
  }

  /** A zone has no courses and no places that its plane has not. */
  private List<Problem> offThePlane(Row zone) {
    Optional<Choice<String>> plane = zone.read(ZoneFields.PLANE);
    List<Place> all = placesOf(plane.map(Choice::value));
    if (all.isEmpty()) {
      return List.of();
    }
    String where = plane.map(name -> "plane " + name.value()).orElse("the roof");
    int top = all.stream().map(place -> place.key().course()).max(Comparator.naturalOrder()).get();
    List<Problem> problems = new ArrayList<>();
    for (Field<Figure<Ratio>> field : List.of(ZoneFields.FROM_COURSE, ZoneFields.TO_COURSE)) {
      zone.read(field)
          .filter(course -> course.value() > top)
          .map(
              course ->
                  "%s is given, but %s has %s courses, counted from the lowest point; give at most that"
                      .formatted(course.plain(), where, top))
          .map(message -> zones.said(zone, field, message))
          .ifPresent(problems::add);
    }
    ToldZone.Reach reach = new ToldZone(zone).reach(Reading.aside());
    long most = all.stream().filter(place -> reach.holds(place.key())).count();
    if (problems.isEmpty() && reach.from() <= reach.to()) {
      Field<Figure<Ratio>> counted =
          zone.has(ZoneFields.PLACES) ? ZoneFields.PLACES : ZoneFields.SEEN;
      zone.read(counted)
          .filter(places -> places.value() > most)
          .map(
              places ->
                  "%s is given, but the map of %s has %s places in these courses; give at most that"
                      .formatted(places.plain(), where, most))
          .map(message -> zones.said(zone, counted, message))
          .ifPresent(problems::add);
    }
    return problems;
  }

  /** The places of a plane, or of all of them. */
  private List<Place> placesOf(Optional<String> plane) {
    List<PlaceMap> its =
        plane
            .map(name -> Optional.ofNullable(maps.get(name)).stream().toList())
            .orElse(List.copyOf(maps.values()));
    return its.stream().flatMap(map -> map.places(Reading.aside()).stream()).toList();
  }

  /** Zones that lie on each other count places twice: no share of the roof adds up then. */
  private Optional<Problem> countedTwice() {
    int all = placesOf(Optional.empty()).size();
    double sum = 0;
    for (Row zone : zones.rows()) {
      ToldZone.Reach reach = new ToldZone(zone).reach(Reading.aside());
      sum +=
          zone.read(ZoneFields.PLACES)
              .map(Figure::value)
              .orElseGet(
                  () ->
                      (double)
                          placesOf(reach.plane()).stream()
                              .filter(place -> reach.holds(place.key()))
                              .count());
      if (all > 0 && sum > all) {
        return Optional.of(
            zones.said(
                zone,
                ZoneFields.PLACES,
                Shown.text(
                    "with this zone there are %.0f places, but the map has %s; a place is in one zone: give each zone the places that no other has",
                    sum, all)));
      }
    }
    return Optional.empty();
  }
}
