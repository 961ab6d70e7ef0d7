package sheathwright.job.solve;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.forecast.Chances;
import sheathwright.forecast.FitRange;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.job.life.FirmFields;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.TableReader;
import sheathwright.job.zone.SeenRules;

/**
 * Sheets for several houses at once: the bad luck of one is evened out by the good luck of another,
 * as far as they do not share it.
 */
final class StockPooler {

  private static final SolverOption<Figure<Ratio>> PERCENTILE =
      new SolverOption<>(
          Field.number("percentile", "Enough in so many of 100", Units.RATIO, 1, 99.9), "90");
  private static final SolverOption<Choice<String>> BY =
      new SolverOption<>(Field.text("by", "Column that tells deliveries apart"), "");
  private static final SolverOption<Choice<String>> HISTORY =
      new SolverOption<>(Field.text("history", "The firm's finished jobs"), "");

  static final List<SolverOption<?>> OPTIONS =
      List.of(
          DeckForecaster.ALPHA, DeckForecaster.BETA, HISTORY, PERCENTILE, BY, HistoryFitter.SEED);

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);

  private StockPooler() {}

  /** One house that sheets are wanted for. */
  private record Wanted(String delivery, int sheets, int seen, int bad) {

    Chances chances(HistoryFit fit) {
      return Chances.betaBinomial(sheets - seen, fit.alpha() + bad, fit.beta() + seen - bad);
    }
  }

  static SolvedTable pooled(CsvFile file, SolverOptions options) {
    List<Wanted> houses = houses(file, options.textIfGiven(BY));
    double chance = options.number(PERCENTILE) / 100;
    Optional<List<House>> history =
        options
            .textIfGiven(HISTORY)
            .map(name -> HistoryRows.of(CsvFile.read(Path.of(name))).houses());
    HistoryFit fit = history.map(HistoryFit::byMoments).orElseGet(() -> typed(options));
    int usual = (int) Math.round(houses.stream().mapToInt(Wanted::sheets).average().orElse(1));
    Optional<FitRange> range =
        history.map(
            done -> FitRange.of(done, usual, chance, (long) options.number(HistoryFitter.SEED)));

    Map<String, List<Wanted>> deliveries = new LinkedHashMap<>();
    houses.forEach(
        house ->
            deliveries.computeIfAbsent(house.delivery(), each -> new ArrayList<>()).add(house));
    List<List<String>> lines = new ArrayList<>();
    deliveries.forEach((name, some) -> lines.add(line(name, some, fit, range, chance)));
    List<String> all = line("all", houses, fit, range, chance);
    if (deliveries.size() > 1) {
      lines.add(all);
    }
    String delivery = options.textIfGiven(BY).orElse("delivery");
    return new SolvedTable(
        List.of(
            delivery,
            "jobs",
            "sheets_of_decks",
            "mean",
            "sd",
            "one_by_one",
            "pooled",
            "pooled_least",
            "pooled_most"),
        lines,
        "all together: %s one by one, %s pooled%s"
            .formatted(
                all.get(5),
                all.get(6),
                range.isPresent()
                    ? "; houses share one uncertain history, so %s to %s: buy by the greater"
                        .formatted(all.get(7), all.get(8))
                    : "; houses share one uncertain history, so buy more: history=history.csv says how much"),
        Optional.empty(),
        Set.of(delivery));
  }

  private static HistoryFit typed(SolverOptions options) {
    double alpha = options.number(DeckForecaster.ALPHA);
    double beta = options.number(DeckForecaster.BETA);
    return new HistoryFit(alpha / (alpha + beta), 1 / (alpha + beta + 1), alpha, beta);
  }

  private static List<String> line(
      String name, List<Wanted> houses, HistoryFit fit, Optional<FitRange> range, double chance) {
    Chances pool = pool(houses, fit);
    Function<HistoryFit, String> asked =
        other -> String.valueOf(pool(houses, other).percentile(chance));
    return List.of(
        name,
        String.valueOf(houses.size()),
        String.valueOf(houses.stream().mapToInt(Wanted::sheets).sum()),
        Shown.plain(pool.mean()),
        Shown.plain(pool.sd()),
        Shown.plain(houses.stream().mapToInt(house -> house.chances(fit).percentile(chance)).sum()),
        String.valueOf(pool.percentile(chance)),
        range.map(FitRange::least).map(asked).orElse(""),
        range.map(FitRange::most).map(asked).orElse(""));
  }

  private static Chances pool(List<Wanted> houses, HistoryFit fit) {
    return houses.stream().map(house -> house.chances(fit)).reduce(Chances.known(0), Chances::and);
  }

  /**
   * The houses of a table.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  private static List<Wanted> houses(CsvFile file, Optional<String> by) {
    Optional<ClassColumn> delivery = by.map(column -> ClassColumn.of(file, column));
    TableReader reader = new TableReader();
    List<Field<?>> fields =
        List.of(FirmFields.JOB, FirmFields.SHEETS, FirmFields.SEEN, FirmFields.SEEN_BAD);
    ReadTable table = reader.widerTable(file, fields);
    SeenRules.hold(table, FirmFields.SHEETS, FirmFields.SEEN, FirmFields.SEEN_BAD);
    reader.raiseProblems();
    return table.rows().stream()
        .map(
            row ->
                new Wanted(
                    delivery.map(column -> column.in(row)).orElse("all"),
                    (int) row.of(FirmFields.SHEETS).value(),
                    (int) row.or(FirmFields.SEEN, NONE).value(),
                    (int) row.or(FirmFields.SEEN_BAD, NONE).value()))
        .toList();
  }
}
