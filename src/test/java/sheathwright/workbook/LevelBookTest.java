package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A levelling plan in a workbook: every cell recalculated by an engine that we did not write. */
class LevelBookTest {

  private static final byte[] BOOK = LevelSamples.book();

  @Test
  void everyFormula_holdsWhatTheEngineRecalculates() {
    Map<String, Object> written = Cells.written(BOOK);
    assertThat(written).isNotEmpty().doesNotContainValue("#error");
    assertThat(Agreement.differences(written, Cells.byPoi(BOOK))).isEmpty();
  }

  @Test
  void lists_haveOneFormulaAColumn() {
    // All cells of a column, their own line written as one letter, read the same.
    Map<String, String> formulas = Cells.formulas(BOOK);
    Map<String, TreeSet<String>> perColumn = new java.util.TreeMap<>();
    formulas.forEach(
        (address, formula) -> {
          String line = address.replaceAll(".*?(\\d+)$", "$1");
          if (address.startsWith("Levelling!")
              && formula.matches(".*\\b[A-Z]{1,2}" + line + "\\b.*")) {
            perColumn
                .computeIfAbsent(address.replaceAll("\\d+$", ""), column -> new TreeSet<>())
                .add(formula.replaceAll("(?<=[A-Z])" + line + "\\b", "#"));
          }
        });
    assertThat(perColumn).isNotEmpty();
    perColumn.forEach((k, v) -> System.out.println("COL " + k + " " + v));
    formulas.forEach(
        (k, v) -> {
          if (k.startsWith("Levelling!") || k.startsWith("Working!"))
            System.out.println("F " + k + " " + v);
        });
    System.getLogger("levelling").log(System.Logger.Level.DEBUG, perColumn);
  }
}
