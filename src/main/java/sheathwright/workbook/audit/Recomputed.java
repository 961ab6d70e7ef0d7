package sheathwright.workbook.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A workbook of ours whose every formula was worked out anew by the engine that the program
 * carries, and held against the value that was written beside it.
 *
 * @param name what it is called
 * @param formulas how many cells have one
 * @param differing the cells whose formula comes to something else: address, what was written, what
 *     it comes to
 */
public record Recomputed(String name, int formulas, List<String> differing) {

  /** Works out every formula of a workbook. */
  public static Recomputed of(String name, byte[] file) {
    return of(name, BookReading.of(name, file));
  }

  /**
   * The same with one written value spoiled, the last number that a formula gives: if that is not
   * found, nothing that is not found means anything.
   */
  public static Recomputed ofSpoiled(String name, byte[] file) {
    Reading reading = BookReading.of(name, file);
    spoil(reading);
    return of(name, reading);
  }

  private static void spoil(Reading reading) {
    for (Pane pane : reading.panes().values()) {
      for (var row : pane.rows().descendingMap().values()) {
        for (var cell : row.descendingMap().entrySet()) {
          Held held = cell.getValue();
          if (held.isFormula() && held.isNumber()) {
            String spoiled = Double.toString(held.number() + 1);
            cell.setValue(
                new Held(held.type(), held.formula(), spoiled, held.isOpen(), held.isSolved()));
            return;
          }
        }
      }
    }
    throw new IllegalStateException("no formula gives a number");
  }

  private static Recomputed of(String name, Reading reading) {
    List<String> differing = new ArrayList<>();
    int formulas = 0;
    try (Recalculation engine = new Recalculation(reading)) {
      for (Spot spot : engine.formulas()) {
        formulas++;
        Held written = reading.panes().get(spot.sheet()).at(spot.row(), spot.column());
        Optional<Held> anew = engine.value(spot);
        boolean isError = written.type() == Held.Type.ERROR;
        if (!anew.map(written::saysTheSameAs).orElse(isError)) {
          differing.add(
              "%s!%s: %s was written, %s is what its formula comes to"
                  .formatted(
                      spot.sheet(),
                      Spot.address(spot.row(), spot.column()),
                      written.said(),
                      anew.map(Held::said).orElse("nothing")));
        }
      }
    }
    return new Recomputed(name, formulas, List.copyOf(differing));
  }
}
