package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Reading;
import sheathwright.job.Estimate;
import sheathwright.roof.Box;
import sheathwright.roof.Facing;
import sheathwright.roof.Plane;

/** A place on a roof as it is told to somebody who stands in the yard. */
final class WhereWords {

  /** What lies so near an opening is told by it, in inches. */
  private static final double BESIDE = 24;

  private WhereWords() {}

  /** The side, how far up, how far along as one looks up the slope, and what is near. */
  static String of(Estimate estimate, Plane plane, Box place) {
    Box all = plane.outline(Reading.aside()).bounds();
    List<String> words = new ArrayList<>(List.of(side(estimate, plane)));
    words.add(
        third(
            (place.middleY() - all.bottom()) / all.height(),
            "at the gutter",
            "half way up",
            "at the ridge"));
    words.add(third((place.middleX() - all.left()) / all.width(), "left", "middle", "right"));
    List<String> names = estimate.job().openingsOf(plane.name());
    List<Box> openings = plane.openings(Reading.aside());
    for (int i = 0; i < openings.size(); i++) {
      if (openings.get(i).grown(BESIDE).overlaps(place)) {
        String name = i < names.size() ? names.get(i) : "";
        words.add("beside the " + (name.isEmpty() ? "opening" : name));
      }
    }
    return String.join(", ", words);
  }

  /**
   * A plane as it is called from the yard: by where it looks, and by its name where two look there.
   */
  static String side(Estimate estimate, Plane plane) {
    Optional<Facing> faces = faces(estimate, plane);
    String name = "plane " + plane.name();
    if (faces.isEmpty()) {
      return name;
    }
    long alike =
        estimate.deck().parts().stream()
            .filter(part -> faces(estimate, part.plane()).equals(faces))
            .count();
    return faces.get().side() + (alike > 1 ? ", " + name : "");
  }

  /** The same, as short as fits into a picture. */
  static String inPicture(Estimate estimate, Plane plane) {
    return faces(estimate, plane)
        .map(faces -> "%s (%s)".formatted(faces.spoken(), plane.name()))
        .orElse("plane " + plane.name());
  }

  private static Optional<Facing> faces(Estimate estimate, Plane plane) {
    return estimate.job().onTheGround(plane.name()).faces();
  }

  private static String third(double share, String first, String second, String last) {
    if (share < 1.0 / 3) {
      return first;
    }
    return share < 2.0 / 3 ? second : last;
  }
}
