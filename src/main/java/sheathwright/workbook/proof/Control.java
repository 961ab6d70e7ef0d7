package sheathwright.workbook.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.proof.CertifiedCases;
import sheathwright.proof.PlantedCase;
import sheathwright.workbook.audit.Recomputed;

/**
 * A wrong value that was planted: what compares must find it, or nothing that it finds means
 * anything.
 *
 * @param what was planted where
 * @param isFound whether it was reported as wrong
 */
public record Control(String what, boolean isFound) {

  /**
   * An expected value of a certified case moved by twice what it may be off, and a value that a
   * formula of a workbook gives written as one more.
   */
  static List<Control> planted(Map<String, byte[]> books) {
    PlantedCase moved =
        Catalog.shipped().cards().stream()
            .map(Control::planted)
            .flatMap(Optional::stream)
            .findFirst()
            .orElseThrow();
    Map.Entry<String, byte[]> book = books.entrySet().iterator().next();
    Recomputed spoiled = Recomputed.ofSpoiled(book.getKey(), book.getValue());
    return List.of(
        new Control(moved.words(), moved.isFound()),
        new Control(
            "%s, one of its %,d values written as one more"
                .formatted(spoiled.name(), spoiled.formulas()),
            spoiled.differing().size() == 1));
  }

  private static Optional<PlantedCase> planted(Card card) {
    return CertifiedCases.of(card).flatMap(PlantedCase::in);
  }
}
