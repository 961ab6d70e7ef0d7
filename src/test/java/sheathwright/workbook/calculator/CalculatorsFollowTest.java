package sheathwright.workbook.calculator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Catalog;
import sheathwright.workbook.book.Cells;

/**
 * Inputs of every page changed by chance: POI's evaluator says what Java says, a refusal for a
 * refusal. {@code -DcalculatorTrials} tries each page oftener than the gate does.
 */
class CalculatorsFollowTest {

  private static final long SEED = 20261128;
  private static final int TRIALS = Integer.getInteger("calculatorTrials", 6);

  /** A few inputs, half of them, all. */
  private static final double[] SHARES = {0.2, 0.5, 1};

  @Test
  void everyPage_saysWhatJavaSaysToInputsByChance() throws IOException {
    Random chance = new Random(SEED);
    List<String> differences = new ArrayList<>();
    List<String> neverAnswered = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(CalculatorBook.ofAll())) {
      for (OpenPage page : pages(workbook)) {
        int answered = 0;
        List<Trial> trials = trials(page, chance);
        for (Trial trial : trials) {
          trial.typeInto(page);
          XSSFFormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
          List<Object> said =
              page.results().stream().map(cell -> Trial.said(evaluator.evaluate(cell))).toList();
          differences.addAll(trial.differences(said));
          answered += trial.isAnswered() ? 1 : 0;
        }
        if (answered == 0) {
          neverAnswered.add(page.card().name());
        }
      }
    }
    assertThat(differences).isEmpty();
    assertThat(neverAnswered).isEmpty();
  }

  private static List<Trial> trials(OpenPage page, Random chance) {
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < TRIALS; i++) {
      trials.add(Trial.of(page, SHARES[i % SHARES.length], chance));
    }
    return trials;
  }

  /** The page of each function that has one. */
  static List<OpenPage> pages(XSSFWorkbook workbook) {
    return Catalog.shipped().cards().stream()
        .map(Calculator::of)
        .filter(Calculator::isLive)
        .map(each -> new OpenPage(each.card(), workbook.getSheet(each.title())))
        .toList();
  }
}
