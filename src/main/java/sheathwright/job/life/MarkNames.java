package sheathwright.job.life;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/**
 * What each mark of a job is called: by its number, {@code 7}; where two people marked with the
 * same number, by who found it as well, {@code 7 (by JT)}.
 */
public final class MarkNames {

  private final List<Called> all;

  /** A mark, its number, and who found it; empty if nobody says. */
  private record Called(Row row, String mark, String by, boolean isShared) {

    String name() {
      return isShared && !by.isEmpty() ? fully() : mark;
    }

    String fully() {
      return "%s (by %s)".formatted(mark, by);
    }

    boolean isMeantBy(String given) {
      return name().equals(given) || !by.isEmpty() && fully().equals(given);
    }

    String inLine() {
      return "\"%s\" for line %s".formatted(name(), row.line().number());
    }
  }

  /** The names of the lines of the table of marks. */
  public static MarkNames of(List<Row> marks) {
    return new MarkNames(marks);
  }

  private MarkNames(List<Row> marks) {
    List<Row> numbered =
        marks.stream().filter(row -> row.read(OrderFields.OF_MARK).isPresent()).toList();
    Map<String, Long> often = numbered.stream().collect(groupingBy(row -> number(row), counting()));
    all =
        numbered.stream()
            .map(
                row ->
                    new Called(
                        row,
                        number(row),
                        row.read(MarkFields.BY).map(Choice::value).orElse(""),
                        often.get(number(row)) > 1))
            .toList();
  }

  private static String number(Row row) {
    return row.of(OrderFields.OF_MARK).value();
  }

  /** Whether two marks have the same number, so that names tell who found them. */
  public boolean areShared() {
    return all.stream().anyMatch(Called::isShared);
  }

  /** What the mark of a line is called. */
  public String of(Row row) {
    return all.stream()
        .filter(called -> called.row() == row)
        .findFirst()
        .map(Called::name)
        .orElseThrow();
  }

  /** The line that a table means by a mark; nothing where no mark, or more than one, is meant. */
  Optional<Row> row(String given) {
    return all.stream().filter(called -> called.isMeantBy(given)).findFirst().map(Called::row);
  }

  /** What the mark is called that a table means; as it is given, where there is none. */
  public String meant(String given) {
    return row(given).map(this::of).orElse(given);
  }

  /** Why what a table gives is none of the marks, with what to write; nothing where it is one. */
  Optional<String> problem(String given, ReadTable marks) {
    if (row(given).isPresent()) {
      return Optional.empty();
    }
    List<Called> numbered = all.stream().filter(called -> called.mark().equals(given)).toList();
    return numbered.isEmpty()
        ? marks.unknown(given, "a mark", OrderFields.OF_MARK)
        : Optional.of(
            "\"%s\" is given, and %s marks of %s have that number; write %s"
                .formatted(
                    given,
                    numbered.size(),
                    marks.name(),
                    numbered.stream().map(Called::inLine).collect(joining(", "))));
  }

  /** Says which lines cannot be told from one before them. */
  public void tellApart(ReadTable marks) {
    Map<String, Called> seen = new HashMap<>();
    for (Called called : all) {
      Called before = seen.putIfAbsent(called.name(), called);
      if (before != null) {
        marks.problem(
            called.row(),
            OrderFields.OF_MARK,
            called.by().isEmpty()
                ? "\"%s\" stands in line %s too, and by says of neither who found it; give one of them another number, or say in by who found which"
                    .formatted(called.mark(), before.row().line().number())
                : "\"%s\" stands in line %s too, and both are by %s; give one of them another number"
                    .formatted(called.mark(), before.row().line().number(), called.by()));
      } else if (called.isShared() && called.by().isEmpty()) {
        marks.problem(
            called.row(),
            MarkFields.BY,
            "it is empty, and another line has mark \"%s\" too; say who found which, or give one of them another number"
                .formatted(called.mark()));
      }
    }
  }
}
