package sheathwright.sheathing.patch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import sheathwright.catalog.NaturalOrder;
import sheathwright.roof.Box;

/**
 * Makes neighboring patches one, those first that gain most by it, until no two are better as one.
 * What two come to is worked out once; what they gain, again only where something in it changed.
 */
final class Joining {

  /** A snapped box may end inside what it was snapped from by a hair on each side. */
  private static final double SLACK = 1.0 / 8;

  private final PatchFrame frame;
  private final double anotherPatch;
  private final List<Draft> drafts;
  private final List<Pair> pairs = new ArrayList<>();

  /**
   * A rectangle to be cut out.
   *
   * @param place where it stands among the others
   * @param box the rectangle
   * @param marks the marks that it cures
   */
  record Draft(int place, Box box, TreeSet<String> marks) {

    /** What is cut out for one mark. */
    static Draft of(int place, Box box, String mark) {
      TreeSet<String> marks = new TreeSet<>(NaturalOrder.OF_NAMES);
      marks.add(mark);
      return new Draft(place, box, marks);
    }

    Draft as(Box joined, Draft other) {
      TreeSet<String> all = new TreeSet<>(marks);
      all.addAll(other.marks);
      return new Draft(place, joined, all);
    }
  }

  /** Two that are better as one; the first stands before the other. */
  private record Pair(Draft first, Draft other, Box box, double gain) {

    boolean isOf(Draft draft) {
      return first == draft || other == draft;
    }
  }

  private Joining(PatchFrame frame, double anotherPatch, List<Draft> drafts) {
    this.frame = frame;
    this.anotherPatch = anotherPatch;
    this.drafts = new ArrayList<>(drafts);
  }

  /** The drafts that are left when none are better as one, in their order. */
  static List<Draft> joined(PatchFrame frame, double anotherPatch, List<Draft> drafts) {
    Joining joining = new Joining(frame, anotherPatch, drafts);
    joining.join();
    return joining.drafts;
  }

  private void join() {
    for (int i = 0; i < drafts.size(); i++) {
      for (int j = i + 1; j < drafts.size(); j++) {
        pair(drafts.get(i), drafts.get(j));
      }
    }
    Comparator<Pair> best =
        Comparator.comparingDouble((Pair pair) -> -pair.gain())
            .thenComparingInt(pair -> pair.first().place())
            .thenComparingInt(pair -> pair.other().place());
    while (!pairs.isEmpty()) {
      join(pairs.stream().min(best).orElseThrow());
    }
  }

  private void join(Pair pair) {
    Draft made = pair.first().as(pair.box(), pair.other());
    drafts.removeIf(draft -> draft == pair.other());
    drafts.replaceAll(draft -> draft == pair.first() ? made : draft);
    pairs.removeIf(each -> each.isOf(pair.first()) || each.isOf(pair.other()));
    pairs.replaceAll(
        each ->
            each.box().holds(pair.first().box())
                    || each.box().holds(pair.other().box())
                    || each.box().holds(made.box())
                ? new Pair(each.first(), each.other(), each.box(), gain(each.box()))
                : each);
    for (Draft draft : drafts) {
      if (draft.place() < made.place()) {
        pair(draft, made);
      } else if (draft.place() > made.place()) {
        pair(made, draft);
      }
    }
  }

  private void pair(Draft first, Draft other) {
    asOne(first.box(), other.box())
        .ifPresent(box -> pairs.add(new Pair(first, other, box, gain(box))));
  }

  /** The two as one, if they must or should be. */
  private Optional<Box> asOne(Box one, Box other) {
    Box round = one.with(other);
    boolean mayBeCheaper = extra(round.grown(-SLACK), one, other) < anotherPatch;
    boolean isForced = frame.leavesTooLittleBetween(one, other);
    if (!(mayBeCheaper || isForced) || !frame.isFree(round)) {
      return Optional.empty();
    }
    Box both = frame.snapped(round);
    return isForced || extra(both, one, other) < anotherPatch
        ? Optional.of(both)
        : Optional.empty();
  }

  private static double extra(Box both, Box one, Box other) {
    double overlap = one.overlaps(other) ? one.and(other).area() : 0;
    return both.area() - one.area() - other.area() + overlap;
  }

  private double gain(Box joined) {
    double replaced =
        drafts.stream()
            .filter(draft -> joined.holds(draft.box()))
            .mapToDouble(draft -> draft.box().area() + anotherPatch)
            .sum();
    return replaced - joined.area();
  }
}
