package sheathwright.job.solve;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import sheathwright.cutting.Patience;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.CsvFile;

/** A function over a whole table, which no line of it can answer alone. */
public enum Solver {
  /** Pieces out of sheets. */
  CUT_SHEETS(SheetCutter.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return SheetCutter.cut(file, options, patience.apply(options.number(SolverOptions.SECONDS)));
    }
  },
  /** Pieces out of sticks. */
  CUT_STOCK(StickCutter.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return StickCutter.cut(file, options, patience.apply(options.number(SolverOptions.SECONDS)));
    }
  },
  /** The surface over readings that needs the least build-up. */
  LEVEL_PLANE(PlaneLeveler.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return PlaneLeveler.leveled(file, options);
    }
  },
  /** Bad places of a roof whose zones are not alike. */
  FORECAST(DeckForecaster.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return DeckForecaster.forecast(file, options);
    }
  },
  /** What a firm's finished houses say of the next. */
  FIT(HistoryFitter.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return HistoryFitter.fit(file, options);
    }
  },
  /** Sheets for several houses at once. */
  POOLED_STOCK(StockPooler.OPTIONS) {
    @Override
    SolvedTable solved(CsvFile file, SolverOptions options, DoubleFunction<Patience> patience) {
      return StockPooler.pooled(file, options);
    }
  };

  private final List<SolverOption<?>> options;

  Solver(List<SolverOption<?>> options) {
    this.options = options;
  }

  abstract SolvedTable solved(
      CsvFile file, SolverOptions options, DoubleFunction<Patience> patience);

  /** The solver of this name. */
  public static Solver named(String name) {
    for (Solver solver : values()) {
      if (solver.word().equals(name.toLowerCase(java.util.Locale.ROOT).replace('-', '_'))) {
        return solver;
      }
    }
    throw new RefusedException(
        "there is no solver \"%s\"; there are %s"
            .formatted(
                name,
                String.join(", ", java.util.Arrays.stream(values()).map(Solver::word).toList())));
  }

  /** Its name as it is typed. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /**
   * The answer for a table.
   *
   * @param typed options by name
   * @param patience that lasts for so many seconds
   */
  public SolvedTable solve(
      CsvFile file, Map<String, String> typed, DoubleFunction<Patience> patience) {
    return solved(file, new SolverOptions(typed, options), patience);
  }
}
