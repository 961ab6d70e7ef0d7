package sheathwright.workbook.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.proof.Difference;
import sheathwright.proof.OfficeCases;
import sheathwright.proof.ProgramPrint;
import sheathwright.proof.Tested;
import sheathwright.workbook.audit.Recomputed;

/**
 * All that was verified in one run.
 *
 * @param prints fingerprints of the program, its tables and its cases
 * @param tested every function with its cases
 * @param books the workbooks that were worked out anew
 * @param controls wrong values that were planted
 * @param own the office's own cases, a table each
 */
public record Verification(
    List<ProgramPrint> prints,
    List<Tested> tested,
    List<Recomputed> books,
    List<Control> controls,
    List<OfficeCases> own) {

  /**
   * Verifies everything.
   *
   * @param own the office's own cases, run already
   * @param watch is told what is looked at
   */
  public static Verification of(List<OfficeCases> own, Consumer<String> watch) {
    watch.accept("fingerprints");
    List<ProgramPrint> prints =
        List.of(ProgramPrint.ofProgram(), ProgramPrint.ofTables(), ProgramPrint.ofCases());
    List<Tested> tested = new ArrayList<>();
    List<Card> cards = Catalog.shipped().cards();
    for (Card card : cards) {
      watch.accept("%d of %d: %s".formatted(tested.size() + 1, cards.size(), card.name()));
      tested.add(Tested.of(card));
    }
    watch.accept("workbooks");
    Map<String, byte[]> made = WrittenBooks.made();
    List<Recomputed> books = new ArrayList<>();
    made.forEach((name, bytes) -> books.add(Recomputed.of(name, bytes)));
    return new Verification(prints, tested, books, Control.planted(made), List.copyOf(own));
  }

  /** Whether everything holds, and what was planted was found. */
  public boolean holds() {
    return tested.stream().allMatch(Tested::holds)
        && books.stream().allMatch(book -> book.differing().isEmpty())
        && controls.stream().allMatch(Control::isFound)
        && own.stream().allMatch(OfficeCases::holds);
  }

  /** How many certified cases there are. */
  public int cases() {
    return tested.stream().mapToInt(each -> each.outcomes().size()).sum();
  }

  /** How many functions have any. */
  public int functionsWithCases() {
    return (int) tested.stream().filter(Tested::hasCases).count();
  }

  /** The function that uses most of what it may be off. */
  public Optional<Tested> worst() {
    return tested.stream()
        .filter(each -> each.worst().isPresent())
        .max(Comparator.comparingDouble(each -> each.worst().map(Difference::share).orElse(0.0)));
  }
}
