package sheathwright.proof;

import java.util.List;
import sheathwright.catalog.Card;

/**
 * Where print says something else than its own method gives.
 *
 * @param function whose
 * @param source which print
 * @param cells how many cells of it
 * @param side which side of safety print is on, as against the method
 * @param why what is taken for the reason
 * @param page where each cell is listed
 */
public record Disagreement(
    String function, String source, String cells, String side, String why, String page) {

  private static final String FILE = "proof/disagreements.csv";

  /** All that are known. */
  public static List<Disagreement> all() {
    return ShippedTable.lines(FILE).stream()
        .map(
            line ->
                new Disagreement(
                    line.get("function"),
                    line.get("source"),
                    line.get("cells"),
                    line.get("side"),
                    line.get("why"),
                    line.get("page")))
        .toList();
  }

  /** Those of a function. */
  public static List<Disagreement> of(Card card) {
    return all().stream().filter(each -> each.function.equals(card.name())).toList();
  }

  /** In a sentence. */
  public String words() {
    return "known disagreement: %s, %s: %s, %s (%s)".formatted(source, cells, side, why, page);
  }
}
