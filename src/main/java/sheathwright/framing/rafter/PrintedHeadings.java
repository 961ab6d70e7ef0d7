package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Shown;
import sheathwright.figure.Table;
import sheathwright.figure.Unit;

/** The headings of a table that is printed for some numbers, found for any number between them. */
final class PrintedHeadings {

  private PrintedHeadings() {}

  /** The numbers that a table is printed for, the least first. */
  static <Q extends Quantity> List<Figure<Q>> printed(
      String name, Table table, Unit<Q> unit, Integer... numbers) {
    return List.of(numbers).stream()
        .map(
            number ->
                Figure.constant(name.formatted(number), number, unit, table.source())
                    .symbol(number + " " + unit.symbol()))
        .toList();
  }

  /** The heading of the next larger printed number; beyond the last, the last. */
  static <Q extends Quantity> Choice<String> nextLarger(
      String name, String before, Figure<Q> given, List<Figure<Q>> printed) {
    int last = printed.size() - 1;
    Choice<String> heading = heading(before, printed.get(last));
    for (int i = last - 1; i >= 0; i--) {
      heading = step(name, i, given.isAtMost(printed.get(i)), before, printed.get(i), heading, 0);
    }
    return heading;
  }

  /** The heading of the next smaller printed number; below the first, the first. */
  static <Q extends Quantity> Choice<String> nextSmaller(
      String name, String before, Figure<Q> given, List<Figure<Q>> printed) {
    int last = printed.size() - 1;
    Choice<String> heading = heading(before, printed.get(0));
    for (int i = 1; i <= last; i++) {
      heading =
          step(name, i, given.isAtLeast(printed.get(i)), before, printed.get(i), heading, last);
    }
    return heading;
  }

  private static Choice<String> step(
      String name,
      int at,
      Condition isHere,
      String before,
      Figure<?> printed,
      Choice<String> otherwise,
      int end) {
    return Choice.choose(isHere, heading(before, printed), otherwise)
        .as(at == end ? name : name + "_from_" + at);
  }

  private static Choice<String> heading(String before, Figure<?> printed) {
    return Choice.literal(before + Shown.plain(printed.value()));
  }
}
