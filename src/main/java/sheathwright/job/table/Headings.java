package sheathwright.job.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import sheathwright.catalog.Nearest;

/** The columns of a table, held against those that it may have. */
public final class Headings {

  private Headings() {}

  /** A column of notes is nobody's but the user's: its heading begins with {@code note}. */
  public static boolean isNote(String heading) {
    return heading.toLowerCase(Locale.ROOT).startsWith("note");
  }

  /**
   * What is wrong with them: a column that appears twice, one without a heading, one that is not
   * known.
   *
   * @param known the columns that are read
   * @param isLeftAlone which others may stand there
   * @param allowed said of one that may not
   */
  public static List<Problem> problems(
      CsvFile file, List<String> known, Predicate<String> isLeftAlone, String allowed) {
    List<Problem> problems = new ArrayList<>();
    for (int i = 0; i < file.header().size(); i++) {
      String heading = file.header().get(i);
      if (heading.isEmpty()) {
        String message = "column %d has no heading; name it, or begin its heading with note";
        problems.add(new Problem(file.name(), 1, "", message.formatted(i + 1)));
      } else if (file.header().indexOf(heading) < i) {
        problems.add(new Problem(file.name(), 1, heading, "this column appears twice"));
      } else if (!known.contains(heading) && !isLeftAlone.test(heading)) {
        String message = "this column is not known" + Nearest.asked(heading, known) + "; ";
        problems.add(new Problem(file.name(), 1, heading, message + allowed));
      }
    }
    return problems;
  }
}
