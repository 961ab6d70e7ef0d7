package sheathwright.sheathing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import sheathwright.figure.Amounts;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.DeckLayout;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.tuning.Turns;

/** Best layouts of invented planes: short pieces, sheets and work. */
public final class OriginsWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int PLANES = 60;
  private static final int[] SPACINGS = {12, 16, 24};

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<long[]> measured = new ArrayList<>();
    for (int plane = 0; plane < PLANES; plane++) {
      measured.add(measured(new Random(plane), SPACINGS[plane % SPACINGS.length]));
    }
    return measured;
  }

  private static long[] measured(Random random, int spacing) {
    Plane plane =
        Plane.rectangle(
            "south",
            Amounts.ft((60 + random.nextInt(80)) / 4.0),
            Amounts.ft((28 + random.nextInt(40)) / 4.0));
    Supports supports =
        Supports.every(Amounts.in(spacing), Amounts.in(1 + random.nextInt(spacing - 1)));
    long start = Turns.done;
    DeckLayout best = Layouts.bestLayout(plane, supports, LayoutRules.USUAL);
    return new long[] {
      Math.round(best.shortPieces().value()),
      Math.round(best.sheets().value()),
      Turns.done - start,
      Math.round(best.jointsOff().value())
    };
  }
}
