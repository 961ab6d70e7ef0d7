package sheathwright.job.life;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import sheathwright.catalog.Nearest;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/**
 * The numbers of a job by the names of their cells: what its tables say, and every named step of
 * what is worked out from them. A covering's maker may be answered by one of them.
 */
public final class CellsOfTheJob {

  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(_[a-z0-9]+)+");

  private final Map<String, Figure<?>> named = new TreeMap<>();
  private final Set<String> several = new HashSet<>();

  /** All that some values come from, and they themselves. */
  public CellsOfTheJob(Collection<? extends Traced> values) {
    Set<Traced> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<Traced> next = new ArrayDeque<>(values);
    while (!next.isEmpty()) {
      Traced value = next.remove();
      if (seen.add(value)) {
        if (value.isNamed() && value instanceof Figure<?> figure) {
          Figure<?> other = named.putIfAbsent(value.name(), figure);
          if (other != null && !isSame(other, figure)) {
            several.add(value.name());
          }
        }
        next.addAll(value.step().operands());
      }
    }
  }

  private static boolean isSame(Figure<?> one, Figure<?> other) {
    return one.refusal().isPresent()
        ? other.refusal().isPresent()
        : other.refusal().isEmpty() && one.plain().equals(other.plain());
  }

  /** Whether what is typed is the name of a cell, and no number. */
  public static boolean isName(String typed) {
    return NAME.matcher(typed.strip()).matches();
  }

  /**
   * The number of a cell, as it stands there.
   *
   * @throws RefusedException if the job has no such cell, or its number measures something else
   */
  public Figure<?> answer(String name, Unit<?> unit) {
    Figure<?> cell = named.get(name.strip());
    if (cell == null) {
      throw new RefusedException(
          "\"%s\" is no cell of this job%s; give a number, or the name of a cell such as clip_spacing_in: the estimate's tab Names lists them"
              .formatted(name.strip(), Nearest.asked(name, named.keySet())),
          List.of());
    }
    if (several.contains(name.strip())) {
      throw new RefusedException(
          "several cells of this job are called %s; name one that stands once, such as clip_spacing_in, or give a number"
              .formatted(name.strip()),
          List.of());
    }
    if (!cell.unit().dimension().equals(unit.dimension())) {
      throw new RefusedException(
          "%s is in %s, and this is asked in %s; name a cell that measures the same thing, or give a number"
              .formatted(name.strip(), cell.unit().spoken(), unit.spoken()),
          List.of());
    }
    return cell.in(unit);
  }
}
