package sheathwright.workbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Traced;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/** What else an input could say, and a table that says it. */
public final class Perturbed {

  private Perturbed() {}

  /** Other things that an input's cell could say, the likeliest to be allowed first. */
  static List<String> otherTexts(Traced input) {
    List<String> texts = new ArrayList<>();
    if (input instanceof Figure<?> figure) {
      double number = figure.isAbsent() ? 0 : figure.value();
      for (double other :
          new double[] {
            number * 1.0625,
            number * 0.9375,
            number + 1,
            number - 1,
            number + 0.125,
            number + 0.03125
          }) {
        if (other != number) {
          texts.add(Double.toString(other));
        }
      }
      texts.add(number == 180 ? "240" : "180");
    } else {
      Choice<?> choice = (Choice<?>) input;
      texts.addAll(choice.options());
      texts.add(choice.plain() + " changed");
      texts.add("2030-01-31"); // where it takes nothing but a date
      texts.add(choice.plain().replace("22", "21")); // a corner moved
      texts.removeIf(choice.plain()::equals);
    }
    return texts;
  }

  /** The first of them, as it stands in a cell. */
  static Object otherValue(Traced input) {
    String text = otherTexts(input).get(0);
    return input instanceof Figure<?> ? (Object) Double.valueOf(text) : text;
  }

  /** A job's tables as they were read from files. */
  public static Map<String, CsvFile> files(JobTables tables) {
    Map<String, CsvFile> files = new LinkedHashMap<>();
    tables.files().forEach((name, file) -> files.put(name, (CsvFile) file));
    return files;
  }

  /** The table with one cell changed. */
  public static CsvFile with(RowSource file, long line, int column, String text) {
    List<RowSource.Line> lines =
        file.lines().stream()
            .map(
                old -> {
                  if (old.number() != line) {
                    return old;
                  }
                  List<String> cells = new ArrayList<>(old.cells());
                  cells.set(column, text);
                  return new RowSource.Line(line, cells);
                })
            .toList();
    return new CsvFile(file.name(), ((CsvFile) file).separator(), file.header(), lines);
  }
}
