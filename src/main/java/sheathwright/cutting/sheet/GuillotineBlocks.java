package sheathwright.cutting.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import sheathwright.cutting.Patience;

/**
 * All sets of wanted pieces that one stock can give and that are worth what is asked of it. Blocks
 * are built from the smallest up (Wang 1983, from memory); a block is dropped when even the best
 * surroundings, with pieces in any number, would not bring what is asked.
 */
final class GuillotineBlocks {

  private record Size(long width, long height) implements Comparable<Size> {
    @Override
    public int compareTo(Size other) {
      int byWidth = Long.compare(width, other.width);
      return byWidth != 0 ? byWidth : Long.compare(height, other.height);
    }
  }

  /** Blocks of one size, the worthiest first. */
  private record Shape(Size size, List<GuillotineBlock> blocks) {
    long most() {
      return blocks.get(0).worth();
    }
  }

  /** Any number, so that the same order gives the same plan. */
  private static final long SEED = 20_240_229;

  private final SheetTask task;
  private final GuillotineGrid grid;
  private final GuillotineValues values;
  private final int mostBlocks;
  private final long widest;
  private final long highest;
  private final int[] counts;
  private final TreeMap<Size, List<GuillotineBlock>> waiting = new TreeMap<>();
  private final List<Shape> done = new ArrayList<>();
  private final Map<Long, List<GuillotineBlock>> known = new HashMap<>();
  private int blocks;
  private boolean complete;
  private long leastMissing = Long.MAX_VALUE;

  /**
   * @param values at the prices, with what is asked of each stock
   * @param counts how many of each kind a pattern may have
   * @param mostBlocks the search gives up beyond this
   */
  GuillotineBlocks(
      SheetTask task, GuillotineGrid grid, GuillotineValues values, int[] counts, int mostBlocks) {
    this.task = task;
    this.grid = grid;
    this.values = values;
    this.mostBlocks = mostBlocks;
    this.counts = counts.clone();
    widest = task.stocks().stream().mapToLong(SheetTask.Stock::width).max().orElseThrow();
    highest = task.stocks().stream().mapToLong(SheetTask.Stock::height).max().orElseThrow();
  }

  /** Builds the blocks. */
  void build(Patience patience) {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int kind = 0; kind < task.kinds().size(); kind++) {
      GuillotineBlock single =
          GuillotineBlock.single(
              kind, task.kinds().get(kind), values.worth(kind), random.nextLong());
      boolean fits = single.width() <= widest && single.height() <= highest;
      if (counts[kind] > 0
          && fits
          && isEnough(single.worth(), needed(single.width(), single.height()))) {
        keep(single);
      }
    }
    while (!waiting.isEmpty()) {
      if (blocks > mostBlocks || patience.isSpent()) {
        return;
      }
      var least = waiting.pollFirstEntry();
      finish(least.getKey(), least.getValue());
    }
    complete = blocks <= mostBlocks;
  }

  /** Whether no block was left out. */
  boolean isComplete() {
    return complete;
  }

  /**
   * By how much less must be asked of every stock before any block is kept that was dropped here:
   * to a complete list, less of a change adds none.
   */
  long leastMissing() {
    return leastMissing;
  }

  /** Whether a block is kept; of those in an order from the worthiest down, none after it is. */
  private boolean isEnough(long worth, long needed) {
    if (worth < needed) {
      leastMissing = Math.min(leastMissing, needed - worth);
    }
    return worth >= needed;
  }

  private long needed(long width, long height) {
    return values.needed(grid.across().floor(width), grid.up().floor(height));
  }

  private void keep(GuillotineBlock block) {
    List<GuillotineBlock> same = known.computeIfAbsent(block.hash(), hash -> new ArrayList<>(1));
    for (GuillotineBlock other : same) {
      if (other.replaces(block)) {
        return;
      }
    }
    same.add(block);
    waiting
        .computeIfAbsent(new Size(block.width(), block.height()), size -> new ArrayList<>())
        .add(block);
    blocks++;
  }

  private void finish(Size size, List<GuillotineBlock> found) {
    found.removeIf(
        block ->
            known.get(block.hash()).stream()
                .anyMatch(other -> other != block && other.replaces(block)));
    if (found.isEmpty()) {
      return;
    }
    found.sort(Comparator.comparingLong(GuillotineBlock::worth).reversed());
    Shape shape = new Shape(size, found);
    done.add(shape);
    for (Shape other : done) {
      if (blocks > mostBlocks) {
        return;
      }
      join(shape, other, true);
      join(shape, other, false);
    }
  }

  private void join(Shape one, Shape other, boolean beside) {
    Size a = one.size();
    Size b = other.size();
    long width = beside ? a.width() + b.width() : Math.max(a.width(), b.width());
    long height = beside ? Math.max(a.height(), b.height()) : a.height() + b.height();
    if (width > widest || height > highest) {
      return;
    }
    long needed = needed(width, height);
    if (!isEnough(one.most() + other.most(), needed)) {
      return;
    }
    for (int at = 0; at < one.blocks().size(); at++) {
      GuillotineBlock first = one.blocks().get(at);
      if (!isEnough(first.worth() + other.most(), needed)) {
        return;
      }
      for (int to = one == other ? at : 0; to < other.blocks().size(); to++) {
        GuillotineBlock second = other.blocks().get(to);
        if (!isEnough(first.worth() + second.worth(), needed) || blocks > mostBlocks) {
          break;
        }
        int[] both = merged(first.kinds(), second.kinds());
        if (both != null) {
          keep(GuillotineBlock.of(first, second, beside, both));
        }
      }
    }
  }

  private int[] merged(int[] one, int[] other) {
    int[] both = new int[one.length + other.length];
    int left = 0;
    int right = 0;
    int run = 0;
    for (int at = 0; at < both.length; at++) {
      boolean fromLeft = right == other.length || left < one.length && one[left] <= other[right];
      both[at] = fromLeft ? one[left++] : other[right++];
      run = at > 0 && both[at] == both[at - 1] ? run + 1 : 1;
      if (run > counts[both[at]]) {
        return null;
      }
    }
    return both;
  }

  /** Every block that is worth what is asked of a stock that holds it, with that stock. */
  List<SheetPattern> patterns(long[] asked) {
    List<SheetPattern> patterns = new ArrayList<>();
    for (Shape shape : done) {
      for (int stock = 0; stock < asked.length; stock++) {
        SheetTask.Stock holder = task.stocks().get(stock);
        if (shape.size().width() <= holder.width() && shape.size().height() <= holder.height()) {
          for (GuillotineBlock block : shape.blocks()) {
            if (block.worth() >= asked[stock]) {
              patterns.add(new SheetPattern(stock, block));
            }
          }
        }
      }
    }
    return patterns;
  }
}
