package sheathwright.workbook.firm;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.life.firm.HistoryRates;
import sheathwright.life.firm.JobLine;
import sheathwright.life.firm.SeasonColumn;
import sheathwright.life.firm.SeasonSummary;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.JobBooks;
import sheathwright.workbook.page.Sections;

/** The workbook of a season: a row a job, their sums, what was not read, and what has held. */
public final class SeasonBook {

  private static final int[] WIDTHS = {20, 10, 13, 13, 8, 8, 8, 9, 7, 9, 12, 12, 13, 14, 13, 7, 9};

  private static final Source TOLD = Source.derived("from the job's own tables");

  private final SeasonSummary summary;
  private final HistoryRates history;
  private final String subtitle;
  private final Book book;

  private SeasonBook(SeasonSummary summary, HistoryRates history, String season) {
    this.summary = summary;
    this.history = history;
    this.subtitle = season + " · season, for the office only";
    this.book =
        new Book(
            Particulars.of(
                "The jobs of the season " + season,
                "A row a job, and whether forecasts have held"));
    book.showCountsPlainly();
    book.leaveOutEmptyPages();
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @param season what it is called
   */
  public static byte[] bytes(SeasonSummary summary, HistoryRates history, String season) {
    SeasonBook made = new SeasonBook(summary, history, season);
    return JobBooks.laidOut(made.book, made::written);
  }

  private byte[] written() {
    Tab season = Sections.titled(book.tab("Season", WIDTHS), subtitle);
    Tab held = Sections.titled(book.tab("What has held", 16, 14, 14, 14, 14, 14, 14), subtitle);
    jobs(season);
    HeldPage.write(book, held, history);
    return book.finished(Sections.workingTab(book, subtitle), Sections.tablesTab(book, subtitle));
  }

  private void jobs(Tab tab) {
    List<JobLine> jobs = summary.read();
    if (!jobs.isEmpty()) {
      list(tab, jobs);
    }
    tab.skip(1);
    tab.note(
        "Total is what the owner was told, and once a job is agreed what it comes to with its approved orders; by today's prices stands where that is no longer what the tables come to. Bad sheets are places of the old deck, not exceeded in so many houses of 10 or 20.");
    tab.note(
        "Percentiles of several houses are not to be added up: the sheets of many houses together are what the command solve pooled_stock says.");
    List<JobLine> refused = summary.refused();
    if (!refused.isEmpty()) {
      tab.heading("Not read");
      for (JobLine job : refused) {
        int line = tab.line();
        tab.text(line, 0, job.job(), Part.LISTED_TEXT);
        for (int column = 1; column < tab.columns(); column++) {
          tab.text(line, column, column == 1 ? job.refusal() : "", Part.LISTED_TEXT);
        }
        tab.merge(line, 1, tab.columns() - 1);
      }
    }
  }

  private void list(Tab tab, List<JobLine> jobs) {
    List<Roll.Column<JobLine>> columns = new ArrayList<>();
    List<String> headings = new ArrayList<>(List.of("Job"));
    List<Unit<?>> units = new ArrayList<>();
    units.add(null);
    columns.add(Roll.column("job", job -> Choice.literal(job.job())));
    for (SeasonColumn column : SeasonColumn.values()) {
      headings.add(column.label());
      units.add(column.unit().orElse(null));
      columns.add(Roll.column(column.word(), job -> cell(job, column)));
    }
    Roll roll = Roll.of("jobs", "the jobs of the season", jobs, columns);
    tab.list(roll, headings, units);
    int line = tab.line();
    for (int place = 0; place < headings.size(); place++) {
      tab.text(line, place, place == 0 ? "All jobs" : "", Part.TOTAL_LABEL);
    }
    for (SeasonColumn column : SeasonColumn.values()) {
      if (column.isSummed()) {
        Figure<?> sum = sum(roll, column, column.unit().orElseThrow());
        tab.value(line, column.ordinal() + 1, sum, Part.TOTAL);
      }
    }
  }

  private static <Q extends sheathwright.figure.Quantity> Figure<Q> sum(
      Roll roll, SeasonColumn column, Unit<Q> unit) {
    return roll.sum(column.word(), unit).as("season_" + column.word(), unit);
  }

  private static Traced cell(JobLine job, SeasonColumn column) {
    return column
        .unit()
        .<Traced>flatMap(
            unit ->
                job.number(column)
                    .map(number -> Figure.constant(column.word(), number, unit, TOLD)))
        .orElseGet(() -> Choice.literal(job.word(column)));
  }
}
