package sheathwright.repl;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Nearest;

/**
 * What an estimator sets out to do, in the order of the work; a function belongs to its corner's.
 */
enum Task {
  NEEDS("What the roof needs", "area", "roof"),
  LAY("Lay sheets", "sheet", "sheathing.layout", "sheathing.panel", "sheathing.board"),
  NAIL(
      "Nail, and hold it down in the wind",
      "nail",
      "fastening.count",
      "fastening.schedule",
      "fastening.strength",
      "fastening.uplift",
      "loads.wind"),
  CHECK(
      "Check a rafter", "rafter", "framing.rafter", "framing.stop", "loads", "loads.snow", "wood"),
  SISTER(
      "Sister and level",
      "sister",
      "framing.sister",
      "framing.nailed",
      "leveling.string",
      "leveling.target",
      "leveling.plan"),
  PATCH("Patches", "patch"),
  CUT("Cut lists", "cut list"),
  FORECAST("Forecast bad sheets", "bad sheets", "forecast"),
  PRICE("Price", "price", "pricing");

  private final String title;
  private final String word;
  private final List<String> corners;

  Task(String title, String word, String... corners) {
    this.title = title;
    this.word = word;
    this.corners = List.of(corners);
  }

  String title() {
    return title;
  }

  /** What to ask help for, to be told of this task. */
  String asked() {
    return title.replaceAll(",.*", "").toLowerCase(Locale.ROOT);
  }

  /** Whether a function is for this: it stands in one of its corners, or is called by its word. */
  boolean isServedBy(Card card) {
    return corners.contains(card.corner()) || corners.isEmpty() && card.words().contains(word);
  }

  /** The task that is asked for by its own words or its beginning. */
  static Optional<Task> asked(String words) {
    String wanted = singular(words);
    return Arrays.stream(values())
        .filter(each -> singular(each.asked()).equals(wanted))
        .findFirst();
  }

  private static String singular(String words) {
    return Nearest.singular(words.strip().replaceAll("\\s+", " "));
  }
}
