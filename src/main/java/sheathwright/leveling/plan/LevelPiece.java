package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * One piece to cut, in plain numbers for a cut list.
 *
 * @param label rafter and what it is: {@code A-7 sister}
 * @param isSister whether it is a sister and no strip
 * @param inches long, up to the next sixteenth
 */
public record LevelPiece(String label, boolean isSister, double inches) {

  private static final double SIXTEENTHS = 16;
  private static final double DUST = 1e-6;

  /** The sisters, then the strips, of a plan. */
  public static List<LevelPiece> of(LevelPlan plan) {
    List<LevelPiece> pieces = new ArrayList<>();
    for (PlannedRafter rafter : plan.rafters()) {
      if (rafter.sister().pieces().value() > 0) {
        double inches = 12 * rafter.sister().length().value();
        pieces.add(new LevelPiece(rafter.rafter() + " sister", true, sixteenth(inches)));
      }
    }
    for (ShimStrip strip : plan.strips()) {
      double inches = 12 * strip.length().value();
      pieces.add(new LevelPiece(strip.rafter() + " strip", false, sixteenth(inches)));
    }
    return pieces;
  }

  private static double sixteenth(double inches) {
    return Math.ceil(inches * SIXTEENTHS - DUST) / SIXTEENTHS;
  }
}
