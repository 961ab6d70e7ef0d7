package sheathwright.repl.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.Function;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.repl.whatif.Sought.Tried;

/**
 * Finds the value that gives an answer: looks over the values that are allowed for two of which one
 * gives less and one more, the nearest to the present value first, and halves what is between. Only
 * values that can be typed are tried.
 */
final class Search {

  // Of 400 values sought that some value is known to give (SeekWork), with 21,000 tries: half does
  // not find 15, double 9 with 1.44 times the tries, this 13.
  private static final int PIECES = 24;
  // Half does not find 10, and finds nothing beyond 32 times the present value; double 11.
  private static final int DOUBLINGS = 10;

  /** Of the answer: what jumps by less shows the same digits. Half and double find the same. */
  private static final double SMOOTH = 1e-3;

  private final Function<List<Double>, List<Optional<Figure<?>>>> answers;
  private final Figure<?> target;
  private final Limits limits;
  private final double now;
  private final Map<Double, Optional<Figure<?>>> tried = new HashMap<>();
  private Notches notches;

  /**
   * A search.
   *
   * @param answers what comes of values
   * @param target what is to come of the one sought, in the unit of the answers
   * @param limits which values are allowed
   * @param now the present value
   */
  Search(
      Function<List<Double>, List<Optional<Figure<?>>>> answers,
      Figure<?> target,
      Notches notches,
      Limits limits,
      double now) {
    this.answers = answers;
    this.target = target;
    this.notches = notches;
    this.limits = limits;
    this.now = now;
  }

  /** What the search comes to. */
  Sought sought() {
    List<Long> grid = grid();
    tryAll(grid.stream().map(notches::value).toList());
    List<Long> answered = grid.stream().filter(notch -> side(notch).isPresent()).toList();
    if (answered.isEmpty()) {
      return new Sought.Unanswered(
          notches.value(grid.get(0)), notches.value(grid.get(grid.size() - 1)));
    }
    return hits(grid).stream()
        .min(Comparator.comparingDouble(this::away))
        .map(this::halved)
        .orElseGet(() -> nowhere(answered));
  }

  private Sought nowhere(List<Long> answered) {
    Comparator<Tried> byAnswer =
        Comparator.comparingDouble(one -> one.answer().orElseThrow().value());
    List<Tried> all = answered.stream().map(this::tried).toList();
    return new Sought.Nowhere(
        all.stream().min(byAnswer).orElseThrow(),
        all.stream().max(byAnswer).orElseThrow(),
        all.get(0).value(),
        all.get(all.size() - 1).value());
  }

  /** Values over all that is allowed, thicker about the present one. */
  private List<Long> grid() {
    double least = Double.isFinite(limits.least()) ? limits.least() : Math.min(0, lowest());
    double most = Double.isFinite(limits.most()) ? limits.most() : highest(least);
    if (limits.kind() == Limits.Kind.ENDS_ONLY) {
      return List.of(notches.nearest(least), notches.nearest(most));
    }
    TreeSet<Long> grid = new TreeSet<>();
    long first = (long) Math.ceil(least * notches.perUnit());
    long last = (long) Math.floor(most * notches.perUnit());
    for (int piece = 0; piece <= PIECES; piece++) {
      grid.add(first + Math.round((last - first) * (double) piece / PIECES));
    }
    for (int power = -DOUBLINGS; power <= DOUBLINGS; power++) {
      grid.add(notches.nearest(now * Math.pow(2, power)));
    }
    return List.copyOf(grid.subSet(first, true, last, true));
  }

  private double lowest() {
    return now < 0 ? now * Math.pow(2, DOUBLINGS) : 0;
  }

  private double highest(double least) {
    double size = now == 0 ? 1 : Math.abs(now);
    return Math.max(least, 0) + size * Math.pow(2, DOUBLINGS);
  }

  /** Two notches between which, or at which, the answer lies. */
  private record Hit(long left, long right) {}

  private double away(Hit hit) {
    double left = notches.value(hit.left());
    double right = notches.value(hit.right());
    return left <= now && now <= right ? 0 : Math.min(Math.abs(left - now), Math.abs(right - now));
  }

  private List<Hit> hits(List<Long> grid) {
    List<Hit> hits = new ArrayList<>();
    for (int i = 0; i < grid.size(); i++) {
      OptionalInt side = side(grid.get(i));
      if (side.isPresent() && side.getAsInt() == 0) {
        int from = i;
        while (i + 1 < grid.size() && side(grid.get(i + 1)).equals(side)) {
          i++;
        }
        hits.add(new Hit(grid.get(Math.max(0, from - 1)), grid.get(Math.min(i + 1, last(grid)))));
      } else if (i < last(grid)
          && side.isPresent()
          && side(grid.get(i + 1)).equals(OptionalInt.of(-side.getAsInt()))) {
        hits.add(new Hit(grid.get(i), grid.get(i + 1)));
      }
    }
    return hits;
  }

  private static int last(List<Long> grid) {
    return grid.size() - 1;
  }

  private Sought halved(Hit hit) {
    long left = hit.left();
    long right = hit.right();
    Optional<Sought.Jumped> jumped = Optional.empty();
    while (true) {
      Optional<Long> exact = inside(left, right);
      long before = left;
      long after = right;
      while (exact.isEmpty() && after - before > 1) {
        long middle = before + (after - before) / 2;
        OptionalInt side = side(middle);
        if (side.isPresent() && side.getAsInt() == 0) {
          exact = Optional.of(middle);
        } else if (side.equals(side(before))) {
          before = middle;
        } else {
          after = middle;
        }
      }
      if (exact.isPresent()) {
        return given(before, exact.get(), after);
      }
      if (jumped.isEmpty()) {
        jumped = Optional.of(new Sought.Jumped(tried(before), tried(after)));
      }
      if (!notches.canBeFiner() || limits.kind() != Limits.Kind.ANY) {
        return jumped.get();
      }
      notches = notches.finer();
      left = before * 10;
      right = after * 10;
    }
  }

  /** A notch from one to another that was tried and gives the answer; the present value first. */
  private Optional<Long> inside(long left, long right) {
    return tried.keySet().stream()
        .sorted(Comparator.comparingDouble(value -> Math.abs(value - now)))
        .map(notches::nearest)
        .filter(notch -> left <= notch && notch <= right)
        .filter(notch -> side(notch).equals(OptionalInt.of(0)))
        .findFirst();
  }

  private Sought given(long before, long exact, long after) {
    long least = edge(exact, before);
    long most = edge(exact, after);
    Optional<Tried> below = beyond(least, before, -1);
    Optional<Tried> above = beyond(most, after, 1);
    long present = notches.nearest(now);
    boolean isPresent = notches.value(present) == now && least <= present && present <= most;
    long found = isPresent ? present : notches.roundest(least, most);
    if (!side(found).equals(OptionalInt.of(0))) {
      found = exact;
    }
    return new Sought.Given(
        tried(found),
        notches.value(least),
        notches.value(most),
        jumps(least, below) || jumps(most, above),
        below,
        above);
  }

  /** The last notch towards an end that still gives the answer. */
  private long edge(long exact, long end) {
    if (side(end).equals(OptionalInt.of(0))) {
      return end;
    }
    long inside = exact;
    long outside = end;
    while (Math.abs(outside - inside) > 1) {
      long middle = inside + (outside - inside) / 2;
      if (side(middle).equals(OptionalInt.of(0))) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  private Optional<Tried> beyond(long edge, long end, int step) {
    return edge == end ? Optional.empty() : Optional.of(tried(edge + step));
  }

  /** Whether the answer jumps at an edge: halfway to the next notch it is that of either. */
  private boolean jumps(long edge, Optional<Tried> beyond) {
    Figure<?> inside = tried(edge).answer().orElseThrow();
    Optional<Figure<?>> outside = beyond.flatMap(Tried::answer);
    double least = SMOOTH * Math.max(Math.abs(target.value()), SMOOTH);
    if (outside.filter(next -> Math.abs(next.value() - inside.value()) > least).isEmpty()) {
      return false;
    }
    return notches.areWhole()
        || answer((notches.value(edge) + beyond.get().value()) / 2)
            .map(Figure::shown)
            .filter(List.of(inside.shown(), outside.get().shown())::contains)
            .isPresent();
  }

  private Tried tried(long notch) {
    double value = notches.value(notch);
    return new Tried(value, answer(value));
  }

  private Optional<Figure<?>> answer(double value) {
    tryAll(List.of(value));
    return tried.get(value);
  }

  /** Whether a notch gives less, the answer as it is shown, or more; nothing if it gives none. */
  private OptionalInt side(long notch) {
    return tried(notch)
        .answer()
        .map(
            answer ->
                answer.shown().equals(target.shown())
                    ? 0
                    : (int) Math.signum(answer.value() - target.value()))
        .map(OptionalInt::of)
        .orElse(OptionalInt.empty());
  }

  private void tryAll(List<Double> values) {
    List<Double> fresh = values.stream().filter(value -> !tried.containsKey(value)).toList();
    if (!fresh.isEmpty()) {
      List<Optional<Figure<?>>> made = answers.apply(fresh);
      for (int i = 0; i < fresh.size(); i++) {
        tried.put(fresh.get(i), made.get(i));
      }
    }
  }
}
