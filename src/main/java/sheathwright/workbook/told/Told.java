package sheathwright.workbook.told;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Source;

/** A number as the homeowner is told it: the number itself, and nothing of how it was made. */
public final class Told {

  private static final Source QUOTED = Source.given("as quoted");

  private Told() {}

  /**
   * The number.
   *
   * @param name its name in the file; empty, if it needs none
   */
  public static <Q extends Quantity> Figure<Q> of(String name, Figure<Q> figure) {
    return Figure.constant(name, figure.value(), figure.unit(), QUOTED);
  }
}
