package sheathwright.life.record;

import static java.util.stream.Collectors.joining;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.PhotoRules;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableColumns;

/**
 * The SHA-256 of a file, or of what a job's tables say: the same where only separators, ends of
 * lines, the order of columns or keys, blanks, notes or the way in which a number is written
 * differ.
 */
final class Fingerprint {

  /** Neither can stand in a cell. */
  private static final String CELL = "\u001f";

  private static final String LINE = "\u001e";

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?\\$?\\s*(\\d{1,3}(,\\d{3})+|\\d+)(\\.\\d+)?");

  /**
   * What is written while a job goes on, and no quote's numbers are made from; the firm's table
   * among it, which goes on counting.
   */
  private static final Set<JobTable> AFTER_THE_QUOTE =
      Set.of(
          JobTable.FIRST_CALL,
          JobTable.PHOTOS,
          JobTable.AGREED,
          JobTable.TALKS,
          JobTable.STAGES,
          JobTable.ORDERS,
          JobTable.ORDER_LINES,
          JobTable.PLACES,
          JobTable.INSPECTIONS,
          JobTable.PULL_TESTS,
          JobTable.LOG,
          JobTable.FIRM);

  /** What the office or the owner adds to tables that a quote is made from. */
  private static final Set<String> LATER_KEYS =
      Stream.of(List.of(LifeFields.STAGE), LifeFields.DATES, LifeFields.BESIDE_THE_PRICE)
          .flatMap(List::stream)
          .map(Field::name)
          .collect(java.util.stream.Collectors.toUnmodifiableSet());

  private static final Set<String> LATER_COLUMNS =
      Set.of(
          AgreedFields.CHOSEN.name(),
          AgreedFields.CHOSEN_ON.name(),
          LifeFields.WHEN_DONE.name(),
          LifeFields.WHEN_DONE_ON.name());

  private Fingerprint() {}

  /** Of a file. */
  static String of(byte[] bytes) {
    return PhotoRules.hash(bytes);
  }

  /**
   * Of everything that what a quote has the owner pay and get is made from, in whatever order rows
   * stand.
   */
  static String ofQuote(JobTables tables) {
    return ofQuote(tables, table -> table != JobTable.OPTIONS); // they are numbered as they stand
  }

  /**
   * Whether a quote's fingerprint is that of these tables. Until version 0.1.0 it was taken of rows
   * as they stood; such a quote is known again as long as nobody sorts them.
   */
  static boolean isOfQuote(String hash, JobTables tables) {
    return hash.equals(ofQuote(tables)) || hash.equals(ofQuote(tables, table -> false));
  }

  private static String ofQuote(JobTables tables, Predicate<JobTable> isSorted) {
    return of(
        tables,
        table -> table != JobTable.SENT && !AFTER_THE_QUOTE.contains(table),
        heading -> !LATER_COLUMNS.contains(heading),
        key -> !LATER_KEYS.contains(key),
        isSorted);
  }

  /** Of everything but the list of what was sent, and the firm's own. */
  static String ofAll(JobTables tables) {
    return of(
        tables, table -> table != JobTable.SENT, heading -> true, key -> true, table -> false);
  }

  private static String of(
      JobTables tables,
      Predicate<JobTable> isMeant,
      Predicate<String> isColumn,
      Predicate<String> isKey,
      Predicate<JobTable> isSorted) {
    String canonical =
        Stream.of(JobTable.values())
            .filter(isMeant)
            .filter(table -> tables.files().containsKey(table.word()))
            .map(
                table -> {
                  RowSource file = tables.files().get(table.word());
                  Stream<String> rows = rows(table, file, isColumn, isKey);
                  return LINE
                      + table.word()
                      + (isSorted.test(table) ? rows.sorted() : rows).collect(joining());
                })
            .collect(joining());
    return of(canonical.getBytes(StandardCharsets.UTF_8));
  }

  private static Stream<String> rows(
      JobTable table, RowSource file, Predicate<String> isColumn, Predicate<String> isKey) {
    List<Integer> columns =
        IntStream.range(0, file.header().size())
            .boxed()
            .filter(place -> !TableColumns.isNote(file.header().get(place)))
            .filter(place -> isColumn.test(file.header().get(place)))
            .sorted(java.util.Comparator.comparing(file.header()::get))
            .toList();
    Stream<RowSource.Line> lines = file.lines().stream();
    if (table.keys().isPresent()) {
      Keys keys = table.keys().get();
      int key = file.header().indexOf(keys.key());
      int value = file.header().indexOf(keys.value());
      lines =
          lines
              .filter(line -> isKey.test(line.cells().get(key).strip()))
              .filter(line -> !line.cells().get(value).isBlank())
              .sorted(java.util.Comparator.comparing(line -> line.cells().get(key).strip()));
    }
    return lines.map(line -> LINE + cells(file, columns, line));
  }

  private static String cells(RowSource file, List<Integer> columns, RowSource.Line line) {
    return columns.stream()
        .filter(place -> !line.cells().get(place).isBlank())
        .map(place -> file.header().get(place) + CELL + plain(file, line.cells().get(place)))
        .collect(joining(CELL));
  }

  /** A number without what may be written about it: {@code 10,420.00} is {@code 10420}. */
  private static String plain(RowSource file, String cell) {
    String given = cell.strip();
    try {
      String readable = file.readable(given);
      return NUMBER.matcher(readable).matches()
          ? new BigDecimal(readable.replaceAll("[$,\\s+]", "")).stripTrailingZeros().toPlainString()
          : given;
    } catch (RefusedException noNumber) {
      return given;
    }
  }
}
