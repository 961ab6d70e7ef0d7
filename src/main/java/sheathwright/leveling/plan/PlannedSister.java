package sheathwright.leveling.plan;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Units;

/**
 * The sister of one rafter, all zero if it gets none.
 *
 * @param pieces one or none
 * @param covered length that a sister covers where one is asked for
 * @param length of the sister
 * @param wanted stock length, at least the shortest that is sold
 * @param sold the same, refused where no stick is so long
 * @param stock of the stick to buy
 * @param nailsWanted by a sister of that length
 * @param nails in it
 * @param shorter the next shorter stick
 * @param lacking what that one lacks
 * @param nearMiss the same where it is under an inch, else zero
 * @param lapIfSistered by which a sister would lie against the old rafter
 * @param lap by which sister and old rafter lie against each other; the sister's depth if there is
 *     none
 */
public record PlannedSister(
    Figure<Pieces> pieces,
    Figure<Length> covered,
    Figure<Length> length,
    Figure<Length> wanted,
    Figure<Length> sold,
    Figure<Length> stock,
    Figure<Per<Nails, Pieces>> nailsWanted,
    Figure<Per<Nails, Pieces>> nails,
    Figure<Length> shorter,
    Figure<Length> lacking,
    Figure<Length> nearMiss,
    Figure<Length> lapIfSistered,
    Figure<Length> lap) {

  private static final Figure<Pieces> ONE = Figure.of(1, Units.PIECE);
  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);

  static PlannedSister of(
      Choice<LevelAction> action,
      Figure<Length> covered,
      Figure<Length> greatest,
      SideBySide.Depths depths,
      SisterRules rules) {
    Condition needed = action.is(LevelAction.SISTER);
    Figure<Length> length = Figure.choose(needed, covered, NO_LENGTH).as("length_ft", Units.FOOT);
    SisterStick stick = new SisterStick(needed, length);
    Figure<Length> wanted = stick.wanted();
    Figure<Length> sold = SisterStick.soldInAList(wanted);
    Figure<Length> stock = stick.stock(sold);
    Figure<Length> shorter = stick.shorter(stock);
    Figure<Length> lacking = stick.lacking(shorter);
    Figure<Per<Nails, Pieces>> nailsWanted =
        stick
            .nailsWanted(rules.nailRows(), rules.nailSpacing())
            .as("nails_wanted", Units.NAILS_PER_PIECE);
    Figure<Length> lap =
        SisterLaps.lap(depths.sister(), depths.rafter(), greatest)
            .as("lap_if_sistered_in", Units.INCH);
    return new PlannedSister(
        Figure.choose(needed, ONE, NONE),
        covered,
        length,
        wanted,
        sold,
        stock,
        nailsWanted,
        stick.nails(nailsWanted),
        shorter,
        lacking,
        SisterStick.nearMiss(shorter, lacking),
        lap,
        Figure.choose(needed, lap, depths.sister()).as("lap_in", Units.INCH));
  }

  @Override
  public String toString() {
    return "sister %s long from a %s stick, if the first line of its plan allows it"
        .formatted(length, stock);
  }
}
