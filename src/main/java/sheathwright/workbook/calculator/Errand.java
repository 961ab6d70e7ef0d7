package sheathwright.workbook.calculator;

import java.util.Arrays;
import java.util.List;
import sheathwright.catalog.Card;

/** What somebody wants done who opens the calculators, in the order of the work. */
enum Errand {
  MEASURE("Measure the roof", "roof"),
  DEAD_AND_LIVE("Reckon what lies on it", "loads"),
  WIND("Reckon the wind", "loads.wind"),
  SNOW("Reckon the snow", "loads.snow"),
  DECIDE("Decide sheet by sheet", "sheathing.triage"),
  PANELS("Choose panels and their edges", "sheathing.panel"),
  SHEETS("Lay out and count sheets", "sheathing.layout"),
  BOARDS("Mend a deck of boards", "sheathing.board"),
  SCHEDULES("See how the code nails it", "fastening.schedule"),
  NAILS("Count nails", "fastening.count"),
  HOLDING("See what a nail or screw holds", "fastening.strength"),
  UPLIFT("Hold the deck and its covering down", "fastening.uplift"),
  LUMBER("Look up what lumber carries", "wood"),
  RAFTERS("Screen the old rafters", "framing.rafter"),
  STOPS("See what stops a repair", "framing.stop"),
  SISTERS("Sister, splice and nail rafters", "framing.sister", "framing.nailed"),
  STRINGS("Read a string line", "leveling.string"),
  STRAIGHTEN("Straighten the rafters", "leveling.plan"),
  UNSEEN("Price what nobody has seen", "forecast"),
  COST("Price it and haul it away", "pricing");

  private final String title;
  private final List<String> corners;

  Errand(String title, String... corners) {
    this.title = title;
    this.corners = List.of(corners);
  }

  /** As the contents say it. */
  String title() {
    return title;
  }

  /** What a function is for. */
  static Errand of(Card card) {
    return Arrays.stream(values())
        .filter(errand -> errand.corners.contains(card.corner()))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no errand leads to " + card.corner()));
  }
}
