package sheathwright.sheathing.place;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.sheathing.layout.SheetCounts;

/**
 * What some places come to, counted in each way that a bill may count them.
 *
 * @param places each counted one
 * @param halves those of up to 16 sq ft counted one half, others one
 * @param area of all of them
 */
public record SheetUnits(Figure<Sheets> places, Figure<Sheets> halves, Figure<Area> area) {

  /** Square inches of the largest piece that counts one half, and a hair. */
  private static final double HALF_SHEET = 16 * 144 + 0.05;

  private static final double SQUARE_INCHES = 32 * 144;

  private static final Source COUNTED = Source.derived("counted on the map of the old deck");
  private static final Figure<Sheets> QUARTER = Figure.of(0.25, Units.SHEET);

  /**
   * Places counted by their areas.
   *
   * @param counted what is counted, in snake case
   * @param squareInches of each
   */
  public static SheetUnits of(Solution solution, String counted, List<Double> squareInches) {
    double halves = squareInches.stream().mapToDouble(each -> counted(BillRule.HALF, each)).sum();
    double area = squareInches.stream().mapToDouble(each -> each / 144).sum();
    return new SheetUnits(
        solution.figure("places_" + counted, squareInches.size(), Units.SHEET, COUNTED),
        solution.figure("half_counted_" + counted, halves, Units.SHEET, COUNTED),
        solution.figure("area_" + counted + "_sf", area, Units.SQUARE_FOOT, COUNTED));
  }

  /** What one piece counts, by area to the last digit: only a sum goes up to the next quarter. */
  public static double counted(BillRule rule, double squareInches) {
    return switch (rule) {
      case PLACE -> 1;
      case HALF -> squareInches > HALF_SHEET ? 1 : 0.5;
      case AREA -> squareInches / SQUARE_INCHES;
    };
  }

  /** Several counts as one. */
  public static SheetUnits together(List<SheetUnits> counts) {
    return counts.stream()
        .reduce(
            (one, other) ->
                new SheetUnits(
                    one.places.plus(other.places),
                    one.halves.plus(other.halves),
                    one.area.plus(other.area)))
        .orElseThrow();
  }

  /** The same places with their area as it was worked out elsewhere. */
  public SheetUnits of(Figure<Area> known) {
    return new SheetUnits(places, halves, known);
  }

  /**
   * Sheets as the bill counts them.
   *
   * @param name of that number, in snake case
   */
  public Figure<Sheets> by(Choice<BillRule> rule, String name) {
    Figure<Sheets> quarters =
        area.dividedBy(SheetCounts.SHEET_AREA)
            .in(Units.SHEET)
            .roundedUpTo(QUARTER)
            .as(name + "_by_area", Units.SHEET);
    Figure<Sheets> bySize =
        Figure.choose(rule.is(BillRule.HALF), halves, quarters).as(name + "_by_size", Units.SHEET);
    return Figure.choose(rule.is(BillRule.PLACE), places, bySize).as(name, Units.SHEET);
  }
}
