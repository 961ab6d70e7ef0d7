package sheathwright.cutting.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The same of invented orders of 15 to 60 patches in sixteenths of an inch, all different. */
public final class FineSheetsWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int ORDERS = 10;

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    return IntStream.range(0, ORDERS)
        .mapToObj(
            order -> SheetWork.measured(order(new Random(order), 15 + 5 * order, 84, 36), turns))
        .toList();
  }

  /** Patches of a foot and up to so many inches more either way. */
  static SheetOrder order(Random random, int pieces, int longer, int higher) {
    return new SheetOrder(
        96 * 16,
        48 * 16,
        List.of(),
        IntStream.range(0, pieces)
            .mapToObj(
                piece ->
                    new SheetPiece(
                        12 * 16 + random.nextInt(longer * 16),
                        12 * 16 + random.nextInt(higher * 16),
                        1))
            .toList(),
        2);
  }
}
