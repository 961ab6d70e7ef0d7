package sheathwright.sheathing.place;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a place is called in every document: {@code A-3-5} is plane A, course 3 from the eave, place
 * 5 from the left. It is read from the right, so that planes may be called anything.
 *
 * @param plane what the plane is called
 * @param course from the plane's lowest point, beginning with 1
 * @param number from the left within the course, beginning with 1
 * @param letter {@code a}, {@code b}, … where a measured joint splits the place; else empty
 */
public record PlaceKey(String plane, int course, int number, String letter) {

  private static final Pattern WRITTEN = Pattern.compile("(.+)-(\\d{1,4})-(\\d{1,4})([a-z]?)");

  /** The key that a text is, if it is one. */
  public static Optional<PlaceKey> read(String text) {
    Matcher parts = WRITTEN.matcher(text.strip());
    return parts.matches()
        ? Optional.of(
            new PlaceKey(
                parts.group(1),
                Integer.parseInt(parts.group(2)),
                Integer.parseInt(parts.group(3)),
                parts.group(4)))
        : Optional.empty();
  }

  /** The key without its plane, for a map of that plane alone. */
  public String onItsPlane() {
    return course + "-" + number + letter;
  }

  /** How far another place of the plane lies off, the parts of one place being nearest. */
  int distance(PlaceKey other) {
    return Math.abs(course - other.course) + Math.abs(number - other.number);
  }

  @Override
  public String toString() {
    return plane + "-" + onItsPlane();
  }
}
