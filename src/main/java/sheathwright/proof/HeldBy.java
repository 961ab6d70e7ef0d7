package sheathwright.proof;

import java.util.Optional;
import sheathwright.catalog.Card;

/**
 * The test that calls a function most often, for functions that have no certified case: written
 * from the tests themselves.
 */
public final class HeldBy {

  private static final String FILE = "proof/held.csv";

  private HeldBy() {}

  /** That of a function; none where no test of its room calls it. */
  public static Optional<String> of(Card card) {
    return ShippedTable.lines(FILE).stream()
        .filter(line -> line.get("function").equals(card.name()))
        .map(line -> line.get("test"))
        .findFirst();
  }
}
