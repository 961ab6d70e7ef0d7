package sheathwright.job.solve;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.forecast.Backtest;
import sheathwright.forecast.FitRange;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;

/** What a firm's finished houses say of the next one, how sure that is, and whether it has held. */
final class HistoryFitter {

  static final SolverOption<Figure<Ratio>> SEED =
      new SolverOption<>(
          Field.whole("seed", "Seed of the draws", Units.RATIO, 0, 2_000_000_000),
          String.valueOf(FitRange.SEED));
  private static final SolverOption<Figure<Ratio>> ROOF =
      new SolverOption<>(
          Field.whole("roof_sheets", "Roof to compare fits by", Units.RATIO, 1, 10_000), "44");
  private static final SolverOption<Choice<String>> BY =
      new SolverOption<>(Field.text("by", "Column that tells classes apart"), "");

  static final List<SolverOption<?>> OPTIONS = List.of(ROOF, BY, SEED);

  /** Jobs that a class needs for a fit of its own. */
  private static final int FEWEST_IN_CLASS = 8;

  private static final double[] TRIED = {0.5, 0.8, 0.9};

  private static final String CLASS = "class";

  private static final List<String> HEADINGS =
      List.of(
          CLASS,
          "jobs",
          "sheets",
          "bad",
          "share_pct",
          "alike",
          "alpha",
          "beta",
          "alpha_likeliest",
          "beta_likeliest",
          "log_likelihood",
          "p90_sheets",
          "p90_least",
          "p90_most");

  private HistoryFitter() {}

  static SolvedTable fit(CsvFile file, SolverOptions options) {
    HistoryRows history = HistoryRows.of(file);
    Map<String, List<House>> classes = new LinkedHashMap<>();
    classes.put("all", history.houses());
    List<String> tooFew = new ArrayList<>();
    options
        .textIfGiven(BY)
        .ifPresent(
            column -> {
              history
                  .by(column)
                  .forEach(
                      (name, houses) -> {
                        String said = column + " " + name;
                        if (isEnough(houses)) {
                          classes.put(said, houses);
                        } else {
                          tooFew.add("%s (%s)".formatted(said, houses.size()));
                        }
                      });
            });
    List<String> header = new ArrayList<>(HEADINGS);
    for (double tried : TRIED) {
      String name = Shown.text("p%.0f", tried * 100);
      header.addAll(List.of("within_" + name, name + "_held_least", name + "_held_most"));
    }
    int roof = (int) options.number(ROOF);
    long seed = (long) options.number(SEED);
    List<List<String>> lines = new ArrayList<>();
    classes.forEach((name, houses) -> lines.add(line(name, houses, roof, seed)));
    return new SolvedTable(
        header,
        lines,
        summary(history.houses(), roof, seed, tooFew),
        Optional.empty(),
        Set.of(CLASS));
  }

  private static boolean isEnough(List<House> houses) {
    return houses.size() >= FEWEST_IN_CLASS && houses.stream().anyMatch(house -> house.bad() > 0);
  }

  private static List<String> line(String name, List<House> houses, int roof, long seed) {
    HistoryFit fit = HistoryFit.byMoments(houses);
    Optional<HistoryFit> likeliest =
        fit.isBinomial() ? Optional.empty() : Optional.of(fit.likeliest(houses));
    FitRange range = FitRange.of(houses, roof, 0.9, seed);
    List<String> cells = new ArrayList<>();
    cells.add(name);
    cells.add(String.valueOf(houses.size()));
    cells.add(String.valueOf(houses.stream().mapToInt(House::sheets).sum()));
    cells.add(String.valueOf(houses.stream().mapToInt(House::bad).sum()));
    cells.add(Shown.plain(fit.share() * 100));
    cells.add(Shown.plain(fit.isBinomial() ? 0 : fit.alike()));
    cells.add(Shown.plain(fit.alpha()));
    cells.add(Shown.plain(fit.beta()));
    cells.add(likeliest.map(found -> Shown.plain(found.alpha())).orElse(""));
    cells.add(likeliest.map(found -> Shown.plain(found.beta())).orElse(""));
    cells.add(likeliest.map(found -> Shown.plain(found.logLikelihood(houses))).orElse(""));
    cells.add(ninetieth(fit, roof));
    cells.add(ninetieth(range.least(), roof));
    cells.add(ninetieth(range.most(), roof));
    for (double tried : TRIED) {
      Backtest held = Backtest.of(houses, tried);
      cells.add(String.valueOf(held.within()));
      cells.add(Shown.plain(held.least()));
      cells.add(Shown.plain(held.most()));
    }
    return cells;
  }

  private static String ninetieth(HistoryFit fit, int roof) {
    return String.valueOf(fit.chances(roof).percentile(0.9));
  }

  private static String summary(List<House> houses, int roof, long seed, List<String> tooFew) {
    HistoryFit fit = HistoryFit.byMoments(houses);
    FitRange range = FitRange.of(houses, roof, 0.9, seed);
    Backtest eighty = Backtest.of(houses, 0.8);
    return "%s jobs: alpha=%s beta=%s; a roof of %s sheets has at most %s bad ones in 9 of 10 (%s to %s given only %s jobs); 8 of 10 was meant, and %s of %s held%s%s"
        .formatted(
            houses.size(),
            Shown.text("%.6f", fit.alpha()),
            Shown.text("%.6f", fit.beta()),
            roof,
            ninetieth(fit, roof),
            ninetieth(range.least(), roof),
            ninetieth(range.most(), roof),
            houses.size(),
            eighty.within(),
            eighty.houses(),
            fit.isBinomial() ? "; houses differ no more than chance makes them" : "",
            tooFew.isEmpty()
                ? ""
                : "; under %s jobs, so in \"all\" only: %s"
                    .formatted(FEWEST_IN_CLASS, String.join(", ", tooFew)));
  }
}
