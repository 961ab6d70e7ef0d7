package sheathwright.job;

import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.place.PlaceMap;

/** Whether what a job's tables put on a plane lies on it, and the marks that do. */
final class DeckPlaces {

  /** A tape is read to an inch at the ends. */
  private static final double SLACK = 1;

  private final Plane plane;
  private final PlaceMap map;
  private final Box bounds;

  DeckPlaces(PlaceMap map) {
    this.map = map;
    this.plane = map.plane();
    this.bounds = plane.outline(Reading.aside()).bounds();
  }

  /**
   * Refuses a rafter that stands beside its plane.
   *
   * @throws RefusedException with its place
   */
  void checkRafter(Row row) {
    double center = row.of(PlaceFields.CENTER).value();
    if (center < bounds.left() - SLACK || center > bounds.right() + SLACK) {
      throw refused(row, PlaceFields.CENTER, "%s is given".formatted(plain(center)), true);
    }
  }

  /**
   * A mark of this plane: a place by its key, or what was measured.
   *
   * @throws RefusedException with its place in the table, if it is not on the map, reaches off the
   *     plane, lies in an opening, or in another place than it says
   */
  Mark mark(Row row) {
    String key = row.of(PlaceFields.MARK).plain();
    if (!row.has(PlaceFields.WIDTH)) {
      return Mark.of(key, row.of(PlaceFields.FINDING), map, row.of(PlaceFields.SHEET));
    }
    checkMark(row);
    Mark measured =
        Mark.of(
            key,
            row.of(PlaceFields.FINDING),
            row.of(PlaceFields.ALONG),
            row.of(PlaceFields.UP),
            row.of(PlaceFields.WIDTH),
            row.of(PlaceFields.HEIGHT));
    return row.has(PlaceFields.SHEET) ? measured.in(map, row.of(PlaceFields.SHEET)) : measured;
  }

  private void checkMark(Row row) {
    Box mark =
        Box.at(
            row.of(PlaceFields.ALONG).value(),
            row.of(PlaceFields.UP).value(),
            row.of(PlaceFields.WIDTH).value(),
            row.of(PlaceFields.HEIGHT).value());
    String reach = "the mark reaches from %s to %s in";
    if (mark.left() < bounds.left() - SLACK || mark.right() > bounds.right() + SLACK) {
      String given = reach.formatted(plain(mark.left()), plain(mark.right()));
      throw refused(row, PlaceFields.ALONG, given, true);
    }
    if (mark.bottom() < bounds.bottom() - SLACK || mark.top() > bounds.top() + SLACK) {
      String given = reach.formatted(plain(mark.bottom()), plain(mark.top()));
      throw refused(row, PlaceFields.UP, given, false);
    }
    if (plane.outline(Reading.aside()).within(mark).isEmpty()) {
      String what =
          plane.openings(Reading.aside()).stream().anyMatch(opening -> opening.overlaps(mark))
              ? "no wood is there: the mark lies in an opening of plane %s ("
                  + JobTable.OPENINGS.file()
                  + ")"
              : "no wood is there: the mark lies outside the sides of plane %s";
      throw new RefusedException(
          what.formatted(plane.name()) + "; measure it from the plane's lower left corner",
          List.of(row.of(PlaceFields.ALONG)));
    }
  }

  private RefusedException refused(Row row, Field<?> field, String given, boolean isAlong) {
    return new RefusedException(
        "%s, but plane %s goes from %s to %s in %s; measure from its lower left corner"
            .formatted(
                given,
                plane.name(),
                plain(isAlong ? bounds.left() : bounds.bottom()),
                plain(isAlong ? bounds.right() : bounds.top()),
                isAlong ? "along the eave" : "up the slope"),
        List.of(row.of(field)));
  }

  private static String plain(double inches) {
    return Shown.plain(inches);
  }
}
