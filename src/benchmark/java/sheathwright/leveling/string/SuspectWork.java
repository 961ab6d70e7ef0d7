package sheathwright.leveling.string;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import sheathwright.figure.Amounts;
import sheathwright.leveling.target.TargetReading;
import sheathwright.leveling.target.TargetReadings;
import sheathwright.tuning.Turns;

/**
 * Invented planes of which one to eight readings are wrong by an inch or more: how many wrong ones
 * were not suspected, how many right ones were, and the work.
 */
public final class SuspectWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int PLANES = 160;
  private static final int MOST_WRONG = 8;

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<long[]> measured = new ArrayList<>();
    for (int plane = 0; plane < PLANES; plane++) {
      measured.add(measured(new Random(plane), 1 + plane % MOST_WRONG));
    }
    return measured;
  }

  private static long[] measured(Random random, int wrongOnes) {
    List<TargetReading> plane = TargetReadings.sagged(random, 10 + random.nextInt(8), 6);
    Set<Integer> wrong = new HashSet<>();
    while (wrong.size() < wrongOnes) {
      wrong.add(random.nextInt(plane.size()));
    }
    List<StringReading> read = new ArrayList<>();
    for (int at = 0; at < plane.size(); at++) {
      TargetReading one = plane.get(at);
      double error = (random.nextBoolean() ? 1 : -1) * (1 + random.nextDouble());
      read.add(
          StringReading.ofDrop(
              "at " + one.x(),
              Amounts.in(one.x()),
              Amounts.in(one.y()),
              Amounts.in(-one.z() + (wrong.contains(at) ? error : 0))));
    }
    long start = Turns.done;
    StringReadings judged = StringReadings.of("A", read, SuspicionRules.usual());
    long work = Turns.done - start;
    Set<StringReading> suspected = new HashSet<>();
    judged.suspects().forEach(suspect -> suspected.add(suspect.reading()));
    long found = wrong.stream().filter(at -> suspected.contains(read.get(at))).count();
    return new long[] {wrongOnes - found, suspected.size() - found, work};
  }
}
