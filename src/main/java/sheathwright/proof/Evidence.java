package sheathwright.proof;

import java.util.List;
import sheathwright.catalog.Card;

/**
 * Something that a test or a script found, and no certified case carries.
 *
 * @param about a function, or a chapter of the page
 * @param what it found, with its numbers
 * @param by the test or the script that finds it again
 * @param page where more stands of it; empty if nowhere
 */
public record Evidence(String about, String what, String by, String page) {

  private static final String FILE = "proof/evidence.csv";

  /** All of it, in the file's order. */
  public static List<Evidence> all() {
    return ShippedTable.lines(FILE).stream()
        .map(
            line ->
                new Evidence(line.get("about"), line.get("what"), line.get("by"), line.get("page")))
        .toList();
  }

  /** That about a function. */
  public static List<Evidence> of(Card card) {
    return about(card.name());
  }

  /** That about a function or a chapter. */
  public static List<Evidence> about(String name) {
    return all().stream().filter(each -> each.about.equals(name)).toList();
  }

  /** In a sentence, with what finds it again. */
  public String words() {
    return "%s (%s%s)".formatted(what, by, page.isEmpty() ? "" : "; " + page);
  }
}
