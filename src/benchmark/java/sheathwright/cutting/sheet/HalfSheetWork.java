package sheathwright.cutting.sheet;

import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/** The same of every second of the hard sheet lists. */
public final class HalfSheetWork implements BiFunction<Path, Long, List<long[]>> {

  @Override
  public List<long[]> apply(Path folder, Long turns) {
    List<SheetOrder> orders = SheetWork.orders(folder);
    return IntStream.range(0, orders.size())
        .filter(index -> index % 2 == 0)
        .mapToObj(index -> SheetWork.measured(orders.get(index), turns))
        .toList();
  }
}
