package sheathwright.job;

import java.util.List;
import java.util.Map;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;

/** Whether what a job's tables put on a plane lies on it. */
final class DeckPlaces {

  /** A tape is read to an inch at the ends. */
  private static final double SLACK = 1;

  private final Plane plane;
  private final Box bounds;

  DeckPlaces(Plane plane) {
    this.plane = plane;
    this.bounds = plane.outline(Reading.aside()).bounds();
  }

  /**
   * Refuses a rafter that stands beside its plane.
   *
   * @throws RefusedException with its place
   */
  void checkRafter(Map<String, Traced> row) {
    double center = inches(row, "center_in");
    if (center < bounds.left() - SLACK || center > bounds.right() + SLACK) {
      throw refused(row, "center_in", "%s is given".formatted(plain(center)), true);
    }
  }

  /**
   * Refuses a mark that reaches off its plane, or lies in an opening.
   *
   * @throws RefusedException with its place
   */
  void checkMark(Map<String, Traced> row) {
    Box mark =
        Box.at(
            inches(row, "along_in"),
            inches(row, "up_in"),
            inches(row, "width_in"),
            inches(row, "height_in"));
    String reach = "the mark reaches from %s to %s in";
    if (mark.left() < bounds.left() - SLACK || mark.right() > bounds.right() + SLACK) {
      String given = reach.formatted(plain(mark.left()), plain(mark.right()));
      throw refused(row, "along_in", given, true);
    }
    if (mark.bottom() < bounds.bottom() - SLACK || mark.top() > bounds.top() + SLACK) {
      String given = reach.formatted(plain(mark.bottom()), plain(mark.top()));
      throw refused(row, "up_in", given, false);
    }
    if (plane.outline(Reading.aside()).within(mark).isEmpty()) {
      String what =
          plane.openings(Reading.aside()).stream().anyMatch(opening -> opening.overlaps(mark))
              ? "no wood is there: the mark lies in an opening of plane %s (openings.csv)"
              : "no wood is there: the mark lies outside the sides of plane %s";
      throw new RefusedException(
          what.formatted(plane.name()) + "; measure it from the plane's lower left corner",
          List.of(row.get("along_in")));
    }
  }

  private RefusedException refused(
      Map<String, Traced> row, String column, String given, boolean isAlong) {
    return new RefusedException(
        "%s, but plane %s goes from %s to %s in %s; measure from its lower left corner"
            .formatted(
                given,
                plane.name(),
                plain(isAlong ? bounds.left() : bounds.bottom()),
                plain(isAlong ? bounds.right() : bounds.top()),
                isAlong ? "along the eave" : "up the slope"),
        List.of(row.get(column)));
  }

  private static double inches(Map<String, Traced> row, String column) {
    return Job.figure(row, column, Units.INCH).value();
  }

  private static String plain(double inches) {
    return Shown.plain(inches);
  }
}
