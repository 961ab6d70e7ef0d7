package sheathwright.leveling.plan;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;

/**
 * The strips of one rafter, all zero if it gets none.
 *
 * @param strips where it is shimmed and not sistered
 * @param stripLength of those
 * @param besideStrips beyond the ends of a sister
 * @param besideLength of those
 * @param ifSistered strips beyond the ends of the sister that it gets
 * @param pieces strips to cut
 * @param lengthIfSistered of strips beyond the ends of the sister that it gets
 * @param length of strips to cut
 */
public record PlannedShims(
    Figure<Pieces> strips,
    Figure<Length> stripLength,
    Figure<Pieces> besideStrips,
    Figure<Length> besideLength,
    Figure<Pieces> ifSistered,
    Figure<Pieces> pieces,
    Figure<Length> lengthIfSistered,
    Figure<Length> length) {

  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);

  static PlannedShims of(Choice<LevelAction> action, BuildUpParts parts, Solution solution) {
    var strips = solution.figure("strips", parts.strips().size(), Units.PIECE, LevelPlan.FOUND);
    var stripLength = feet(solution, "strip_ft", BuildUpParts.length(parts.strips()));
    var beside =
        solution.figure("strips_beside", parts.beside().size(), Units.PIECE, LevelPlan.FOUND);
    var besideLength = feet(solution, "strip_beside_ft", BuildUpParts.length(parts.beside()));
    var sistered = action.is(LevelAction.SISTER);
    var shimmed = action.is(LevelAction.SHIM);
    var ifSistered = Figure.choose(sistered, beside, NONE).as("shims_beside", Units.PIECE);
    var lengthIfSistered =
        Figure.choose(sistered, besideLength, NO_LENGTH).as("shim_beside_ft", Units.FOOT);
    return new PlannedShims(
        strips,
        stripLength,
        beside,
        besideLength,
        ifSistered,
        Figure.choose(shimmed, strips, ifSistered).as("shims", Units.PIECE),
        lengthIfSistered,
        Figure.choose(shimmed, stripLength, lengthIfSistered).as("shim_ft", Units.FOOT));
  }

  private static Figure<Length> feet(Solution solution, String name, double inches) {
    return solution.figure(name, inches / 12, Units.FOOT, LevelPlan.FOUND);
  }
}
