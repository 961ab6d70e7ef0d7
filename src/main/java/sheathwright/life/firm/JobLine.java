package sheathwright.life.firm;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/**
 * What a season's summary says of one job.
 *
 * @param job its name
 * @param numbers that it says
 * @param words that it says
 * @param refusal why it says nothing; empty where it does
 */
public record JobLine(
    String job,
    Map<SeasonColumn, Double> numbers,
    Map<SeasonColumn, String> words,
    String refusal) {

  /** A job that says something. */
  static JobLine of(String job) {
    return new JobLine(
        job, new EnumMap<>(SeasonColumn.class), new EnumMap<>(SeasonColumn.class), "");
  }

  /** A job that cannot be read. */
  static JobLine refused(String job, String refusal) {
    return new JobLine(job, Map.of(), Map.of(), refusal);
  }

  void put(SeasonColumn column, double number) {
    numbers.put(column, number);
  }

  void put(SeasonColumn column, String word) {
    words.put(column, word);
  }

  /** Whether it says nothing of the job. */
  public boolean isRefused() {
    return !refusal.isEmpty();
  }

  /** A number, if the job has it. */
  public Optional<Double> number(SeasonColumn column) {
    return Optional.ofNullable(numbers.get(column));
  }

  /** Words; none where the job has none. */
  public String word(SeasonColumn column) {
    return words.getOrDefault(column, "");
  }

  /** The headings of a table of them. */
  static List<String> headings() {
    List<String> headings = new ArrayList<>(List.of("job"));
    for (SeasonColumn column : SeasonColumn.values()) {
      headings.add(column.word());
    }
    headings.add("refused");
    return headings;
  }

  /** As a line of a table. */
  List<String> cells() {
    List<String> cells = new ArrayList<>(List.of(job));
    for (SeasonColumn column : SeasonColumn.values()) {
      cells.add(
          column.unit().isEmpty()
              ? word(column)
              : number(column).map(number -> plain(column, number)).orElse(""));
    }
    cells.add(refusal);
    return cells;
  }

  private static String plain(SeasonColumn column, double number) {
    return column.unit().equals(Optional.of(Units.USD))
        ? BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).toPlainString()
        : Shown.plain(number);
  }
}
