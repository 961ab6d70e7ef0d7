package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;

/** Small orders, invented from the seeds 0 to 299, against the trial of every cut. */
class SheetBruteForceTest {

  private static final int ORDERS = 300;

  @Test
  void plan_buysAsFewSheetsAsTheTrialOfEveryCut() {
    int proven = 0;
    for (int seed = 0; seed < ORDERS; seed++) {
      SheetOrder order = SheetOrders.tiny(seed);
      int fewest = GuillotineBruteForce.fewestSheets(order);
      SheetPlan plan = SheetCutting.plan(order, Patience.ENDLESS);
      assertThat(SheetAreaBound.of(new SheetTask(order))).isLessThanOrEqualTo(fewest);
      assertThat(plan.atLeast()).as("bound, seed %d", seed).isLessThanOrEqualTo(fewest);
      assertThat(plan.newSheets()).as("sheets, seed %d", seed).isEqualTo(fewest);
      proven += plan.isProven() ? 1 : 0;
    }
    assertThat(proven).isEqualTo(ORDERS);
  }

  @Test
  void patternSearch_findsWhatThereIsAndRefusesWhatThereIsNot() {
    for (int seed = 0; seed < ORDERS; seed++) {
      SheetTask task = new SheetTask(SheetOrders.tiny(seed));
      int fewest = GuillotineBruteForce.fewestSheets(SheetOrders.tiny(seed));
      GuillotineBound bound = GuillotineBound.of(task, Integer.MAX_VALUE, Patience.ENDLESS);
      assertThat(bound.atLeast()).as("seed %d", seed).isLessThanOrEqualTo(fewest);
      assertThat(searched(task, bound, fewest)).isEqualTo(PatternSearch.Outcome.FOUND);
      if (fewest > 0) {
        assertThat(searched(task, bound, fewest - 1))
            .as("seed %d", seed)
            .isEqualTo(PatternSearch.Outcome.IMPOSSIBLE);
      }
    }
  }

  private static PatternSearch.Outcome searched(SheetTask task, GuillotineBound bound, int sheets) {
    return new SheetCovering(Patience.ENDLESS).search(task, bound, sheets);
  }

  @Test
  void check_refusesAPlanWithAPieceMoved() {
    SheetOrder order = SheetOrders.patches(1);
    SheetPlan plan = SheetCutting.plan(order, Patience.ENDLESS);
    CutSheet sheet = plan.sheets().get(0);
    PlacedPiece piece = sheet.pieces().get(0);
    var pieces = new ArrayList<>(sheet.pieces());
    pieces.set(
        0, new PlacedPiece(piece.piece(), piece.x() + 1, piece.y(), piece.width(), piece.height()));
    var sheets = new ArrayList<>(plan.sheets());
    sheets.set(0, new CutSheet(sheet.offcut(), pieces, sheet.cuts(), sheet.rest()));
    SheetPlan wrong = new SheetPlan(sheets, plan.newSheets(), plan.atLeast());
    assertThatThrownBy(() -> SheetPlanCheck.check(order, wrong))
        .isInstanceOf(IllegalStateException.class);
  }
}
