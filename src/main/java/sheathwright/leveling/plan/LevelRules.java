package sheathwright.leveling.plan;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.leveling.target.LevelThresholds;
import sheathwright.wood.LumberSize;

/**
 * What the user wants of a leveling plan.
 *
 * @param leave the most deviation left alone, low or high, 0 in to 1 in
 * @param shim the most that a shim strip makes up, 0 in to 1 in
 * @param truss whether they are trusses and no rafters
 * @param sisters how sisters are cut and nailed
 * @param shims how strips are cut and nailed through
 */
public record LevelRules(
    Figure<Length> leave,
    Figure<Length> shim,
    Choice<YesNo> truss,
    SisterRules sisters,
    ShimRules shims) {

  /** The trade's usual numbers, each an input that whoever holds the workbook may change. */
  public static LevelRules usual(LumberSize sisterSize, LumberSize rafterSize) {
    return new LevelRules(
        inches("leave_in", 0.125, LevelThresholds.limits("leave")),
        inches("shim_in", 0.375, LevelThresholds.limits("shim")),
        Choice.input("truss", YesNo.NO, Source.GIVEN),
        SisterRules.usual(sisterSize, rafterSize),
        ShimRules.usual());
  }

  static Figure<Length> inches(String name, double inches, Limits limits) {
    return Figure.input(name, inches, Units.INCH, limits, Source.COMMON_PRACTICE);
  }

  /** What a plan of strips and sisters is solved for, as plain values in inches. */
  record Plain(double leave, double shim, YesNo truss, SisterRules.Plain sisters) {}

  /** What says what is done to a rafter and where, read. */
  Plain plain(Reading reading) {
    return new Plain(
        reading.number("the most deviation that is left alone", leave, Units.INCH),
        reading.number("the most that a shim strip makes up", shim, Units.INCH),
        reading.word("truss", truss),
        sisters.plain(reading));
  }
}
