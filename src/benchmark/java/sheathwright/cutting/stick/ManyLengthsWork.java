package sheathwright.cutting.stick;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * Cost, bound and work of invented stick lists of 150 to 560 pieces, nearly all of different
 * length, in sixty-fourths of an inch, and of sixty lengths in thousandths, which no table of
 * single units holds.
 */
public final class ManyLengthsWork implements BiFunction<Path, Long, List<long[]>> {

  private static final int[] FEET = {8, 10, 12, 16, 20};
  private static final int[] CENTS = {512, 655, 771, 1089, 1399};
  private static final int[] PIECES = {150, 220, 300, 400, 480, 560};

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<StickOrder> orders = new ArrayList<>();
    for (int pieces : PIECES) {
      orders.add(order(new Random(pieces), pieces, 64));
    }
    orders.add(order(new Random(1), 60, 1000));
    orders.add(order(new Random(2), 60, 1000));
    return orders.stream().map(order -> StickWork.measured(order, turns)).toList();
  }

  private static StickOrder order(Random random, int pieces, long parts) {
    return new StickOrder(
        IntStream.range(0, FEET.length)
            .mapToObj(k -> new StockLength(FEET[k] * 12 * parts, CENTS[k], StockLength.ANY))
            .toList(),
        IntStream.range(0, pieces)
            .mapToObj(i -> new StickPiece(8 * parts + random.nextInt((int) (50 * parts)), 1))
            .toList(),
        parts / 8,
        0);
  }
}
