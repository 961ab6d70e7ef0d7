package sheathwright.life.supply;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Units;
import sheathwright.job.Deck;
import sheathwright.job.Estimate;
import sheathwright.job.life.Stage;
import sheathwright.life.found.SoldSheets;
import sheathwright.sheathing.patch.PatchPlan;

/**
 * How many new sheets a job takes: as many as the price holds while the covering lies on the deck,
 * or more where more are marked already; once it is opened, those that the patches are cut from.
 */
public final class SheetsTaken {

  private final Figure<Sheets> planned;
  private final Figure<Sheets> patched;
  private final Figure<Sheets> toBuy;
  private final Condition isOpened;

  SheetsTaken(Estimate estimate) {
    List<PatchPlan> plans =
        estimate.deck().parts().stream().map(Deck.Part::patches).flatMap(Optional::stream).toList();
    Figure<Sheets> all = Figure.of(0, Units.SHEET);
    for (PatchPlan plan : plans) {
      all = all.plus(plan.sheets());
    }
    patched = all.as("sheets_of_all_patches", Units.SHEET);
    isOpened =
        Condition.any(
            estimate.job().stage().is(Stage.OPENED), estimate.job().stage().is(Stage.CLOSED));
    planned = new SoldSheets(estimate).included();
    toBuy =
        plans.isEmpty()
            ? planned
            : Figure.choose(isOpened, patched, planned.max(patched))
                .as("order_sheets", Units.SHEET);
  }

  /** In the price. */
  public Figure<Sheets> planned() {
    return planned;
  }

  /** That the patches are cut from; 0 where nothing is marked. */
  public Figure<Sheets> patched() {
    return patched;
  }

  /** Those that are bought. */
  public Figure<Sheets> toBuy() {
    return toBuy;
  }

  Condition isOpened() {
    return isOpened;
  }
}
