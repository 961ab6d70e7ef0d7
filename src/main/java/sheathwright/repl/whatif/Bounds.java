package sheathwright.repl.whatif;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Set;
import sheathwright.figure.Factor;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/**
 * What a value may be by every function that it goes into on its way to an answer.
 *
 * @param limits in the value's own unit
 */
record Bounds(Limits limits) {

  /** The limits of a value in an answer that is made from it. */
  static Bounds of(Traced answer, Object value, Unit<?> unit) {
    Limits limits = value instanceof Figure<?> figure ? figure.step().limits() : Limits.NONE;
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> open = new ArrayDeque<>(Set.of(answer));
    while (!open.isEmpty()) {
      Traced each = open.pop();
      if (seen.add(each)) {
        open.addAll(each.step().operands());
        if (each instanceof Figure<?> guarded
            && guarded.step() instanceof Step.Guarded guard
            && bare(guard.argument()) == value) {
          limits = in(guard.limits(), guarded.unit().to(unit)).and(limits);
        }
      }
    }
    return new Bounds(limits);
  }

  boolean areWhole() {
    return limits.kind() == Limits.Kind.WHOLE_ONLY;
  }

  /** The figure that was put into another unit or let through, as it was. */
  private static Figure<?> bare(Figure<?> figure) {
    Step step = figure.step();
    if (step instanceof Step.Converted converted) {
      return bare(converted.from());
    }
    return step instanceof Step.Guarded guarded ? bare(guarded.argument()) : figure;
  }

  private static Limits in(Limits limits, Factor factor) {
    return new Limits(
        in(limits.least(), factor), in(limits.most(), factor), limits.kind(), limits.rule());
  }

  private static double in(double end, Factor factor) {
    return Double.isFinite(end) ? factor.applyTo(end) : end;
  }
}
