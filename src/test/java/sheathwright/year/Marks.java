package sheathwright.year;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** What is found on an open roof. */
final class Marks {

  private final Random random;
  private final Life life;
  private final String today;

  Marks(Random random, Life life, String today) {
    this.random = random;
    this.life = life;
    this.today = today;
  }

  /** One mark, by column; nothing where the deck has no place for it. */
  Map<String, String> mark(String name) {
    Map<String, String> mark = new LinkedHashMap<>();
    mark.put("mark", name);
    mark.put("on", today);
    mark.put("by", "I. Corvane");
    mark.put("stage_found", "opened");
    if (life.house.hasBoards()) {
      onBoards(mark);
    } else if (life.places().isEmpty()) {
      return Map.of();
    } else {
      onSheets(mark);
    }
    if (random.nextInt(12) == 0) {
      mark.put("bill", "none");
    }
    return mark;
  }

  private void onSheets(Map<String, String> mark) {
    Map<String, String> place = House.any(random, life.places());
    mark.put("plane", place.get("plane"));
    mark.put("sheet", place.get("key"));
    switch (random.nextInt(10)) {
      case 0, 1, 2, 3, 4 -> {
        mark.put("finding", "rot");
        mark.put("probe_in", House.any(random, List.of("1/2", "3/8", "5/8")));
        mark.put("cause", House.any(random, List.of("leak", "eave-ice", "age", "storm")));
      }
      case 5, 6 -> {
        mark.put("finding", "loose");
        mark.put("sound_nails", "24");
      }
      case 7 -> {
        mark.put("finding", "tight");
        mark.put("hump_in", "3/16");
        mark.put("joint_gap_in", "0");
        mark.put("joint_ft", "" + 4 * (1 + random.nextInt(5)));
      }
      case 8 -> mark.put("finding", "stain");
      default -> {
        mark.put("finding", "rot");
        mark.put("probe_in", "1/2");
        mark.put("action", "stop");
      }
    }
  }

  private void onBoards(Map<String, String> mark) {
    mark.put("plane", "A");
    mark.put("finding", House.any(random, List.of("rot", "loose", "stain")));
    mark.put("along_in", "" + 8 * random.nextInt(8));
    mark.put("up_in", "" + 6 * random.nextInt(8));
    mark.put("width_in", "" + 16 * (1 + random.nextInt(4)));
    mark.put("height_in", "" + (6 + random.nextInt(20)));
  }
}
