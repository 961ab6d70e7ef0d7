package sheathwright.workbook.draw;

import java.util.Arrays;
import java.util.Optional;

/**
 * What can be drawn of a job: the name that a drawing has in its file, and the word that a
 * letterhead asks for it by.
 */
public enum Drawing {
  ROOF("map", "Plan of the ", "roof"),
  MAP("map", "Map of plane ", ""),
  BUILD_UP("build-up", "Build-up over plane ", ""),
  SAG("sag", "Sag of plane ", "");

  private final String word;
  private final String named;
  private final String only;

  Drawing(String word, String named, String only) {
    this.word = word;
    this.named = named;
    this.only = only;
  }

  /** The word for it, without what it is of. */
  public String word() {
    return word;
  }

  /** What one of the whole job is called in its file. */
  String named() {
    return named + only;
  }

  /** What that of a plane is called in its file. */
  String named(String plane) {
    return named + plane;
  }

  /** The word, and what of, that a letterhead asks for a drawing by; none for other names. */
  public static Optional<String> asked(String name) {
    return Arrays.stream(values())
        .filter(each -> name.startsWith(each.named()))
        .findFirst()
        .map(each -> each.word + " " + name.substring(each.named.length()));
  }
}
