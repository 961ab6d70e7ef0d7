package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Reading;
import sheathwright.figure.Units;

/**
 * One sister to cut, in plain numbers for a cut list.
 *
 * @param label rafter and what it is: {@code A-7 sister}
 * @param inches long, up to the next sixteenth
 */
public record LevelPiece(String label, double inches) {

  /** To the inch: pieces are cut to the mark of a tape. */
  private static final double SIXTEENTHS = 16;

  /** Of a sixteenth: far above what rounding leaves of a length on a mark, far below a hair. */
  private static final double DUST = 1e-6;

  /** The sisters of a plan, their lengths read. */
  public static List<LevelPiece> of(LevelPlan plan, Reading reading) {
    List<LevelPiece> pieces = new ArrayList<>();
    for (PlannedRafter rafter : plan.rafters()) {
      String sister = "the sister of rafter " + rafter.rafter();
      double inches = reading.number(sister, rafter.sister().length(), Units.INCH);
      if (inches > 0) {
        pieces.add(new LevelPiece(rafter.rafter() + " sister", sixteenth(inches)));
      }
    }
    return pieces;
  }

  private static double sixteenth(double inches) {
    return Math.ceil(inches * SIXTEENTHS - DUST) / SIXTEENTHS;
  }
}
