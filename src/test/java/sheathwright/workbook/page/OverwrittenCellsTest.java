package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;

/** A number typed over an amount, a price or a total makes a check fail, whichever cell it was. */
class OverwrittenCellsTest {

  private static final List<String> TOTALS = List.of("quote_total_usd", "worst_case_usd");
  private static final List<String> LISTED =
      List.of("lines_amount_usd", "lines_price_usd", "held_amount_usd", "held_price_usd");
  private static final List<String> QUOTED =
      List.of(
          "planned_sheet_quoted_usd",
          "extra_sheet_quoted_usd",
          "sister_quoted_usd",
          "shim_quoted_usd");

  /** As the first page and others repeat them. */
  private static final List<String> TOLD_AGAIN =
      List.of(
          "shown_quote_total_usd",
          "shown_worst_case_usd",
          "shown_planned_sheets",
          "shown_extra_sheet_quoted_usd");

  static Stream<String> jobs() {
    return Samples.JOBS.stream();
  }

  @ParameterizedTest
  @MethodSource("jobs")
  void inTheEstimate(String job) throws Exception {
    List<String> names = new ArrayList<>(LISTED);
    names.addAll(TOTALS);
    names.addAll(TOLD_AGAIN);
    names.addAll(QUOTED);
    OverwrittenCells.eachIsSeen(
        JobBook.estimate(new Estimate(Job.of(Samples.tables(job)))).bytes(), names, TOLD_AGAIN);
  }
}
