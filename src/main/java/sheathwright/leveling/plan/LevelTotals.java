package sheathwright.leveling.plan;

import sheathwright.figure.Figure;
import sheathwright.figure.Gather;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * What a leveling plan adds up to.
 *
 * @param sisters rafters that are sistered
 * @param shimmed rafters that are shimmed and not sistered
 * @param shims strips to cut, those beyond the ends of sisters among them
 * @param left rafters that are left
 * @param planed rafters with a part that is planed down, also those that get a strip elsewhere
 * @param trussStops places where a truss would have to be sistered or planed
 * @param nails in all sisters
 * @param stock length of all sticks to buy for sisters
 * @param shimLength of all strips
 * @param smallestLap by which any sister lies against its rafter
 */
public record LevelTotals(
    Figure<Pieces> sisters,
    Figure<Pieces> shimmed,
    Figure<Pieces> shims,
    Figure<Pieces> left,
    Figure<Pieces> planed,
    Figure<Pieces> trussStops,
    Figure<Nails> nails,
    Figure<Length> stock,
    Figure<Length> shimLength,
    Figure<Length> smallestLap) {

  static LevelTotals of(String plane, Roll rafters) {
    return new LevelTotals(
        total(rafters, "sisters", "sisters_of_" + plane, Units.PIECE),
        total(rafters, "shimmed", "shimmed_rafters_of_" + plane, Units.PIECE),
        total(rafters, "shims", "shims_of_" + plane, Units.PIECE),
        total(rafters, "leaves", "left_rafters_of_" + plane, Units.PIECE),
        total(rafters, "planed", "planed_rafters_of_" + plane, Units.PIECE),
        rafters
            .sum("stops", Units.PIECE)
            .plus(rafters.sum("high_stops", Units.PIECE))
            .as("truss_stops_of_" + plane, Units.PIECE),
        total(rafters, "nails", "sister_nails_of_" + plane, Units.NAIL),
        total(rafters, "stock_ft", "sister_stock_of_" + plane + "_ft", Units.FOOT),
        total(rafters, "shim_ft", "shim_strips_of_" + plane + "_ft", Units.FOOT),
        rafters
            .gathered(Gather.LEAST, "lap_in", Units.INCH)
            .max(SisterLaps.HAIR)
            .as("smallest_lap_of_" + plane + "_in", Units.INCH));
  }

  private static <Q extends Quantity> Figure<Q> total(
      Roll rafters, String column, String name, Unit<Q> unit) {
    return rafters.sum(column, unit).as(name, unit);
  }
}
