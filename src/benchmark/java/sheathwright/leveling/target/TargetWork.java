package sheathwright.leveling.target;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import sheathwright.tuning.Turns;

/**
 * Invented planes under both objectives, half of them with bounds: the total build-up and the
 * largest one in millionths of an inch, and the work; where bounds clash, how far.
 */
public final class TargetWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int PLANES = 120;
  private static final double MILLIONTHS = 1e6;

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<long[]> measured = new ArrayList<>();
    for (int plane = 0; plane < PLANES; plane++) {
      Random random = new Random(plane);
      List<TargetReading> readings =
          TargetReadings.sagged(random, 2 + random.nextInt(60), 1 + random.nextInt(12));
      List<TargetReading> bounded =
          plane % 2 == 0 ? readings : TargetReadings.bounded(random, readings);
      for (TargetObjective objective : TargetObjective.values()) {
        measured.add(measured(bounded, objective));
      }
    }
    return measured;
  }

  private static long[] measured(List<TargetReading> readings, TargetObjective objective) {
    long start = Turns.done;
    double total;
    double largest;
    try {
      TargetPlane plane = TargetPlane.over(readings, objective, TargetReading.UNLIMITED);
      total = plane.total();
      largest = plane.largest();
    } catch (NoTargetException clash) {
      total = 0;
      largest = clash.lacking();
    } catch (IllegalStateException unchecked) {
      total = -1;
      largest = -1;
    }
    return new long[] {
      Math.round(total * MILLIONTHS), Math.round(largest * MILLIONTHS), Turns.done - start
    };
  }
}
