package sheathwright.life.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import sheathwright.job.Estimate;
import sheathwright.job.JobFields;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.RowSource;

/**
 * The issues of a job's estimate, as its workbook tells them: what changed from each to the next,
 * and the tables as they stood when the last one was written, with which the next is compared.
 *
 * @param all the issues, the oldest first
 * @param kept every line of those tables: its table's word, and the line as a CSV file has it
 */
public record Revisions(List<Revision> all, List<Kept> kept) {

  /** The tab that tells them. */
  public static final String HISTORY = "History";

  /** The tab with the tables as they stood. */
  public static final String KEPT = "As issued";

  /** What the lines of the first tab are headed. */
  public static final List<String> HEADINGS = List.of("Issue", "Date", "Total, $", "What changed");

  /** What the lines of the second are headed. */
  public static final List<String> KEPT_HEADINGS = List.of("Table", "Line as it stood");

  private static final int LINES_OF_THE_NEWEST = 30;
  private static final int LINES_OF_OTHERS = 3;
  private static final int CHANGED = 3;
  private static final List<String> NOTHING = List.of("nothing in the tables");
  private static final CSVFormat LINE = CSVFormat.DEFAULT;

  /** One line of a table, as it stood. */
  public record Kept(String table, String line) {}

  /** The first that is told. */
  public static Revisions first(int number, Estimate estimate) {
    return of(List.of(), number, estimate, List.of());
  }

  /** Those that a workbook tells, and one more. */
  public static Revisions after(TableBook book, Estimate estimate) {
    List<Revision> past = told(book);
    List<String> changes = TableChanges.between(kept(book), HeldTables.of(estimate.job()));
    int last = past.isEmpty() ? 0 : past.get(past.size() - 1).number();
    return of(past, last + 1, estimate, changes.isEmpty() ? NOTHING : changes);
  }

  /** The one that is written now. */
  public Revision newest() {
    return all.get(all.size() - 1);
  }

  private static Revisions of(
      List<Revision> past, int number, Estimate estimate, List<String> changes) {
    String date =
        estimate.job().knows(JobFields.QUOTE_DATE)
            ? estimate.job().fact(JobFields.QUOTE_DATE).value()
            : "";
    List<Revision> all = new ArrayList<>();
    past.forEach(revision -> all.add(revision.atMost(LINES_OF_OTHERS)));
    all.add(new Revision(number, date, total(estimate), changes).atMost(LINES_OF_THE_NEWEST));
    return new Revisions(all, lines(HeldTables.of(estimate.job())));
  }

  /** A total that is refused is told by the page that it stands on, with all else that is. */
  private static double total(Estimate estimate) {
    return estimate.total().refusal().isPresent() ? 0 : estimate.total().value();
  }

  /** Every line of some tables. */
  public static List<Kept> lines(Map<String, RowSource> tables) {
    List<Kept> kept = new ArrayList<>();
    tables.forEach(
        (word, table) -> {
          kept.add(new Kept(word, LINE.format(table.header().toArray())));
          table
              .lines()
              .forEach(line -> kept.add(new Kept(word, LINE.format(line.cells().toArray()))));
        });
    return kept;
  }

  private static List<Revision> told(TableBook book) {
    List<Revision> told = new ArrayList<>();
    Optional<SheetTable> history = book.table(HISTORY, HEADINGS);
    for (RowSource.Line line : history.map(SheetTable::lines).orElse(List.of())) {
      List<String> cells = line.cells();
      if (cells.get(0).matches("\\d{1,6}")) {
        double total = Double.parseDouble(cells.get(2));
        told.add(
            new Revision(Integer.parseInt(cells.get(0)), cells.get(1), total, new ArrayList<>()));
      }
      if (!told.isEmpty() && cells.size() > CHANGED && !cells.get(CHANGED).isEmpty()) {
        told.get(told.size() - 1).changes().add(cells.get(CHANGED));
      }
    }
    return told;
  }

  /** The tables as they stood when a workbook was written. */
  public static Map<String, RowSource> kept(TableBook book) {
    Map<String, StringBuilder> texts = new LinkedHashMap<>();
    Optional<SheetTable> kept = book.table(KEPT, KEPT_HEADINGS);
    for (RowSource.Line line : kept.map(SheetTable::lines).orElse(List.of())) {
      texts
          .computeIfAbsent(line.cells().get(0), word -> new StringBuilder())
          .append(line.cells().get(1))
          .append('\n');
    }
    Map<String, RowSource> tables = new LinkedHashMap<>();
    texts.forEach(
        (word, text) ->
            tables.put(word, CsvFile.parse("%s, %s".formatted(KEPT, word), text.toString())));
    return tables;
  }
}
