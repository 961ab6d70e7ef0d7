package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Values of whole sheets against a recursion over every cut at every unit. */
class GuillotineValuesTest {

  private record Size(int width, int height) {}

  private static long most(
      Size size, List<SheetTask.Kind> kinds, long[] worth, Map<Size, Long> known) {
    Long before = known.get(size);
    if (before != null) {
      return before;
    }
    long most = 0;
    for (int kind = 0; kind < kinds.size(); kind++) {
      if (kinds.get(kind).width() <= size.width() && kinds.get(kind).height() <= size.height()) {
        most = Math.max(most, worth[kind]);
      }
    }
    for (int cut = 1; 2 * cut <= size.width(); cut++) {
      most =
          Math.max(
              most,
              most(new Size(cut, size.height()), kinds, worth, known)
                  + most(new Size(size.width() - cut, size.height()), kinds, worth, known));
    }
    for (int cut = 1; 2 * cut <= size.height(); cut++) {
      most =
          Math.max(
              most,
              most(new Size(size.width(), cut), kinds, worth, known)
                  + most(new Size(size.width(), size.height() - cut), kinds, worth, known));
    }
    known.put(size, most);
    return most;
  }

  /** Every piece is wanted so often that the limit does not show. */
  private static SheetTask task(Random random) {
    int width = 8 + random.nextInt(20);
    int height = 8 + random.nextInt(20);
    List<SheetPiece> pieces = new ArrayList<>();
    int kinds = 2 + random.nextInt(4);
    for (int kind = 0; kind < kinds; kind++) {
      pieces.add(
          new SheetPiece(2 + random.nextInt(width - 2), 2 + random.nextInt(height - 2), 400));
    }
    return new SheetTask(new SheetOrder(width, height, List.of(), pieces, 0));
  }

  @Test
  void most_agreesWithTheTrialOfEveryCut() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      SheetTask task = task(random);
      long[] worth = random.longs(task.kinds().size(), 0, 100).toArray();
      GuillotineValues values =
          new GuillotineValues(GuillotineGrid.of(task.kinds(), task.stocks()));
      values.setWorth(worth);
      SheetTask.Stock sheet = task.stocks().get(SheetTask.NEW);
      assertThat(values.most(SheetTask.NEW))
          .as("seed %d", seed)
          .isEqualTo(
              most(
                  new Size((int) sheet.width(), (int) sheet.height()),
                  task.kinds(),
                  worth,
                  new HashMap<>()));
      assertThat(worthOf(values.bestPattern(SheetTask.NEW), worth))
          .isEqualTo(values.most(SheetTask.NEW));
    }
  }

  private static long worthOf(int[] counts, long[] worth) {
    return IntStream.range(0, counts.length).mapToLong(kind -> counts[kind] * worth[kind]).sum();
  }

  @Test
  void bestPatternOverAllPiecesInIt_isTheBestPattern() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      SheetTask task = task(random);
      long[] worth = random.longs(task.kinds().size(), 1, 100).toArray();
      GuillotineValues values =
          new GuillotineValues(GuillotineGrid.of(task.kinds(), task.stocks()));
      values.setWorth(worth);
      values.ask(new long[] {0});
      long most = 0;
      for (int kind = 0; kind < worth.length; kind++) {
        int[] counts = new int[worth.length];
        values.patternWith(kind, counts);
        assertThat(counts[kind]).isPositive();
        most = Math.max(most, worthOf(counts, worth));
      }
      assertThat(most).as("seed %d", seed).isEqualTo(values.most(SheetTask.NEW));
    }
  }

  @Test
  void coarseGrid_isNeverBelow() {
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      SheetTask task = task(random);
      long[] worth = random.longs(task.kinds().size(), 1, 100).toArray();
      GuillotineValues exact = new GuillotineValues(GuillotineGrid.of(task.kinds(), task.stocks()));
      GuillotineGrid grid = GuillotineGrid.coarse(task.kinds(), task.stocks(), 8);
      GuillotineValues coarse = new GuillotineValues(grid);
      exact.setWorth(worth);
      coarse.setWorth(worth);
      boolean allOnGrid = IntStream.range(0, worth.length).allMatch(coarse::isOnGrid);
      if (allOnGrid) {
        assertThat(coarse.most(SheetTask.NEW))
            .as("seed %d", seed)
            .isGreaterThanOrEqualTo(exact.most(SheetTask.NEW));
      }
    }
  }
}
