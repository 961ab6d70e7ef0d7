package sheathwright.leveling.plan;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.wood.LumberSize;

/**
 * How sisters are cut and nailed.
 *
 * @param tolerance a sister covers the part of a rafter that is lower than this, 0 in to 2 in
 * @param lap how far it runs on beyond that part at each end, to sound wood, 0 in to 120 in
 * @param fullBearing whether every sister runs from bearing to bearing instead
 * @param size of the sisters
 * @param rafterSize of the old rafters
 * @param leastLap the least height by which sister and old rafter must lie against each other
 * @param nailSpacing nail to nail in a row, 2 in to 48 in
 * @param nailRows rows of nails, 1 to 4
 */
public record SisterRules(
    Figure<Length> tolerance,
    Figure<Length> lap,
    Choice<YesNo> fullBearing,
    Choice<LumberSize> size,
    Choice<LumberSize> rafterSize,
    Figure<Length> leastLap,
    Figure<Length> nailSpacing,
    Figure<Ratio> nailRows) {

  static final Limits LEAST_LAP = Limits.between(1, 12, "2-1/2 leaves room for two rows of nails");

  /** The trade's usual numbers, each an input that whoever holds the workbook may change. */
  public static SisterRules usual(LumberSize size, LumberSize rafterSize) {
    return new SisterRules(
        LevelRules.inches("sister_tolerance_in", 0.375, SisterPlan.COLUMNS.limits("tolerance")),
        LevelRules.inches("sister_lap_in", 24, SisterPlan.COLUMNS.limits("lap")),
        Choice.input("full_bearing", YesNo.NO, Source.COMMON_PRACTICE),
        Choice.input("sister_size", size, Source.GIVEN),
        Choice.input("rafter_size", rafterSize, Source.GIVEN),
        LevelRules.inches("least_lap_in", 2.5, LEAST_LAP),
        LevelRules.inches("sister_nail_spacing_in", 12, SisterPlan.COLUMNS.limits("nailSpacing")),
        Figure.input(
            "sister_nail_rows",
            2,
            Units.RATIO,
            SisterPlan.COLUMNS.limits("nailRows"),
            Source.COMMON_PRACTICE));
  }

  /** Where a sister lies, as plain values in inches. */
  record Plain(double tolerance, double lap, boolean isFullBearing) {}

  /** What says where a sister lies, read. */
  Plain plain(Reading reading) {
    return new Plain(
        reading.number("the drop that needs no sister", tolerance, Units.INCH),
        reading.number("how far sisters run past the drop", lap, Units.INCH),
        reading.word("full bearing", fullBearing) == YesNo.YES);
  }
}
