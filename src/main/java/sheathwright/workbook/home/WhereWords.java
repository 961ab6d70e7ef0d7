package sheathwright.workbook.home;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.roof.Box;
import sheathwright.roof.Plane;

/** A place on a roof as it is told to somebody who stands in the yard. */
final class WhereWords {

  /** What lies so near an opening is told by it, in inches. */
  private static final double BESIDE = 24;

  private WhereWords() {}

  /** The plane, how far up, how far along as one looks up the slope, and what is near. */
  static String of(Plane plane, Box place) {
    Box all = plane.outline(Reading.aside()).bounds();
    List<String> words = new ArrayList<>(List.of("plane " + plane.name()));
    words.add(
        third(
            (place.middleY() - all.bottom()) / all.height(),
            "at the gutter",
            "half way up",
            "at the ridge"));
    words.add(third((place.middleX() - all.left()) / all.width(), "left", "middle", "right"));
    boolean isBeside =
        plane.openings(Reading.aside()).stream()
            .anyMatch(opening -> opening.grown(BESIDE).overlaps(place));
    if (isBeside) {
      words.add("beside the opening");
    }
    return String.join(", ", words);
  }

  private static String third(double share, String first, String second, String last) {
    if (share < 1.0 / 3) {
      return first;
    }
    return share < 2.0 / 3 ? second : last;
  }
}
