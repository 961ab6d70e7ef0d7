package sheathwright.year;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import sheathwright.year.disk.Disk;

/**
 * A word that the program knows, and how somebody typed it.
 *
 * @param file where it stands
 * @param row counted from 0, -1 for the headings
 */
record Misspelling(String file, int row, int column, String word, String typed) {

  /** Columns whose cells are words of a list. */
  private static final Set<String> WORDS =
      Set.of(
          "finding",
          "stage_found",
          "cause",
          "action",
          "bill",
          "void",
          "seen",
          "deck",
          "status",
          "approved_how",
          "chosen");

  /** Keys behind which such a word stands. */
  private static final Set<String> WORD_KEYS =
      Set.of(
          "code",
          "exposure",
          "bill_rule",
          "stage",
          "blocked_edges",
          "panel_kind",
          "nail",
          "roof_shape",
          "ring_shank",
          "enclosed_known");

  private static final Set<String> KEYED = Set.of("key", "rate", "item");

  /** One of those in a job's own tables. */
  static Optional<Misspelling> of(Scene scene) {
    Disk disk = scene.disk();
    List<Misspelling> all = new ArrayList<>();
    for (String file : disk.files().keySet()) {
      if (file.startsWith(scene.life().folder + "/") && file.endsWith(".csv")) {
        Typed table = Typed.of(disk.text(file));
        boolean isKeyed =
            KEYED.contains(table.header().get(0)) && table.header().get(1).matches("value|usd");
        for (int column = 0; column < table.header().size(); column++) {
          add(all, scene.random(), file, -1, column, table.header().get(column));
        }
        for (int row = 0; row < table.rows().size(); row++) {
          List<String> cells = table.rows().get(row);
          for (int column = 0; column < cells.size(); column++) {
            boolean isKnown =
                isKeyed
                    ? column == 0
                        || column == 1
                            && table.header().get(0).equals("key")
                            && WORD_KEYS.contains(cells.get(0))
                    : column < table.header().size() && WORDS.contains(table.header().get(column));
            if (isKnown) {
              add(all, scene.random(), file, row, column, cells.get(column));
            }
          }
        }
      }
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(House.any(scene.random(), all));
  }

  private static void add(
      List<Misspelling> all, Random random, String file, int row, int column, String word) {
    String typed = typed(random, word);
    if (!word.startsWith("note") && !typed.startsWith("note") && !typed.equals(word)) {
      all.add(new Misspelling(file, row, column, word, typed));
    }
  }

  /** The word with a letter lost, doubled or in its neighbor's place. */
  private static String typed(Random random, String word) {
    if (word.length() < 2) {
      return word;
    }
    int at = random.nextInt(word.length() - 1);
    String before = word.substring(0, at);
    String after = word.substring(at + 1);
    return switch (random.nextInt(3)) {
      case 0 -> before + after;
      case 1 -> before + word.charAt(at) + word.charAt(at) + after;
      default -> before + after.charAt(0) + word.charAt(at) + after.substring(1);
    };
  }

  /** Types it; the program refuses the table or asks about it, and changes nothing. */
  void mustBeSaid(Scene scene) {
    Typed table = Typed.of(scene.disk().text(file));
    if (row < 0) {
      table.header().set(column, typed);
    } else {
      table.rows().get(row).set(column, typed);
    }
    scene.disk().type(file, table.text());
    var before = Scene.files(scene.disk());
    Answer checked = scene.run("check", scene.life().folder);
    scene.refused(checked, before, Scene.files(scene.disk()));
    String name = file.substring(file.lastIndexOf('/') + 1);
    boolean isSaid = checked.err().contains(name) && (checked.isRefused() || checked.asks());
    if (!isSaid) {
      throw scene.broken("%s for %s passes: %s", this, word, checked);
    }
    if (checked.isRefused()) {
      Answer answer = scene.run();
      scene.refused(answer, before, Scene.files(scene.disk()));
      if (answer.isDone()) {
        throw scene.broken("%s is refused by check only", this);
      }
    }
  }
}
