package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheathwright.figure.YesNo;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;

/** What the owner was offered and did not take, in sentences that are read again years later. */
final class Declined {

  private static final String LEVELING = "level";

  private Declined() {}

  /** One sentence an option; none where every option was taken. */
  static List<String> sentences(Job job) {
    List<String> all = new ArrayList<>();
    for (Row row : job.lines(JobTable.OPTIONS)) {
      boolean isDecided = row.has(AgreedFields.CHOSEN);
      if (!isDecided) {
        all.add("Nobody decided about this: " + row.of(AgreedFields.FOR).value() + ".");
      } else if (row.of(AgreedFields.CHOSEN).value() == YesNo.NO) {
        all.add(sentence(row));
      }
    }
    return all;
  }

  private static String sentence(Row row) {
    String on =
        row.has(AgreedFields.CHOSEN_ON)
            ? " on " + Moment.spoken(row.of(AgreedFields.CHOSEN_ON).value())
            : "";
    String what = row.of(AgreedFields.FOR).value();
    if (!isLeveling(row)) {
      return "Owner chose not to have it done%s: %s.".formatted(on, what);
    }
    int end = what.indexOf(": ");
    String where = end < 0 ? "it" : what.substring(0, end);
    String how = end < 0 ? what : what.substring(end + 2);
    return "Owner chose to leave %s as it is%s: %s; it will show.".formatted(where, on, how);
  }

  private static boolean isLeveling(Row row) {
    return row.of(AgreedFields.OPTION).value().toLowerCase(Locale.ROOT).startsWith(LEVELING);
  }
}
