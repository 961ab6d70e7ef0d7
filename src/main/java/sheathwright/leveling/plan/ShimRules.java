package sheathwright.leveling.plan;

import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How strips are cut and nailed through.
 *
 * @param step of thickness, 0.01 in to 1 in
 * @param leastThickness under which a strip is hard to rip, 0 in to 1 in
 * @param mostTaper by which it should grow thicker, as inches in 12
 * @param sheetNail length of the nail that the schedule asks for, 0.5 in to 8 in
 */
public record ShimRules(
    Figure<Length> step,
    Figure<Length> leastThickness,
    Figure<Ratio> mostTaper,
    Figure<Length> sheetNail) {

  static final Limits STEP = Columns.of(Shims.Ripped.class).limits("step");
  static final Limits LEAST_THICKNESS = Limits.between(0, 1, "1/4 is usual");
  static final Limits TAPER = Limits.between(0.01, 3, "1/4 is usual");
  static final Limits NAIL = Limits.between(0.5, 8, "8d common has 2-1/2");

  /** The trade's usual numbers, each an input that whoever holds the workbook may change. */
  public static ShimRules usual() {
    return new ShimRules(
        LevelRules.inches("shim_step_in", 0.0625, STEP),
        LevelRules.inches("least_shim_in", 0.25, LEAST_THICKNESS),
        Figure.input("most_taper_in_12", 0.25, Units.RISE_IN_12, TAPER, Source.COMMON_PRACTICE),
        LevelRules.inches("sheet_nail_in", 2.5, NAIL));
  }
}
