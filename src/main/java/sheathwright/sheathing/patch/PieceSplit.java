package sheathwright.sheathing.patch;

import static sheathwright.sheathing.layout.LayoutRules.HAIR;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sheathwright.roof.Box;
import sheathwright.roof.Centers;
import sheathwright.sheathing.layout.LayoutRules;

/**
 * Parts a strip of one course into pieces that a sheet can give, with their ends on supports: as
 * few as can be, each over enough spans, the longer ones first.
 */
final class PieceSplit {

  // Not tuned: outweighs any number of pieces, so that short ones are counted first.
  private static final int A_SHORT_PIECE = 1000;

  private final Centers supports;
  private final int minSpans;
  private final double minLength;

  PieceSplit(Centers supports, int minSpans, double minLength) {
    this.supports = supports;
    this.minSpans = minSpans;
    this.minLength = minLength;
  }

  /** The modules of a strip, from the left. */
  List<Box> modules(Box strip) {
    List<Double> ends = new ArrayList<>(List.of(strip.left()));
    supports.between(strip.left() + HAIR, strip.right() - HAIR).forEach(ends::add);
    ends.add(strip.right());
    int last = ends.size() - 1;
    int[] cost = new int[ends.size()];
    int[] from = new int[ends.size()];
    for (int to = 1; to <= last; to++) {
      cost[to] = Integer.MAX_VALUE;
      for (int start = 0; start < to; start++) {
        if (cost[start] != Integer.MAX_VALUE
            && ends.get(to) - ends.get(start) <= LayoutRules.MODULE_LENGTH + HAIR) {
          int asked =
              cost[start] + 1 + (isShort(ends.get(start), ends.get(to)) ? A_SHORT_PIECE : 0);
          if (asked < cost[to]) {
            cost[to] = asked;
            from[to] = start;
          }
        }
      }
    }
    return boxes(strip, ends, from);
  }

  private boolean isShort(double left, double right) {
    return right - left < minLength - HAIR
        || supports.between(left - HAIR, right + HAIR).size() - 1 < minSpans;
  }

  private static List<Box> boxes(Box strip, List<Double> ends, int[] from) {
    List<Double> cuts = new ArrayList<>();
    for (int at = ends.size() - 1; at > 0; at = from[at]) {
      cuts.add(ends.get(at));
    }
    Collections.reverse(cuts);
    List<Box> boxes = new ArrayList<>();
    double left = strip.left();
    for (double right : cuts) {
      boxes.add(new Box(left, strip.bottom(), right, strip.top()));
      left = right;
    }
    return boxes;
  }
}
