package sheathwright.life.unseen;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.forecast.HistoryFit;
import sheathwright.forecast.House;
import sheathwright.job.Job;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.FirmTables;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.table.Facts;

/**
 * What share of a house's sheets is bad before anything of it was seen, and who says so: the
 * office's own two numbers; else its finished jobs; else a guess, which is no data.
 *
 * @param alpha weighs the bad sheets
 * @param beta weighs the sound ones
 * @param told who says so: {@code from 12 of your jobs}
 */
public record OfficeShare(Figure<Ratio> alpha, Figure<Ratio> beta, String told) {

  /** What is said of two numbers that nobody has found anywhere. */
  public static final String GUESS = "a guess, no data";

  private static final double GUESSED_ALPHA = 0.8;
  private static final double GUESSED_BETA = 12;

  /**
   * The share that holds for a job.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with the history
   */
  public static OfficeShare of(Job job) {
    Facts rates = job.rateBook();
    return rates.knows(ForecastFields.BAD_ALPHA)
        ? new OfficeShare(
            rates.fact(ForecastFields.BAD_ALPHA),
            rates.fact(ForecastFields.BAD_BETA),
            "from the office's rates")
        : of(others(job.source().folder()));
  }

  /** The houses that the firm has finished, but for the job that lies in the folder itself. */
  private static List<House> others(Optional<Path> folder) {
    return folder
        .map(Path::toAbsolutePath)
        .map(Path::normalize)
        .map(
            home ->
                FirmTables.beside(home).history().stream()
                    .filter(row -> !row.of(FirmFields.JOB).value().equals(named(home)))
                    .map(FirmTables::house)
                    .toList())
        .orElse(List.of());
  }

  private static String named(Path home) {
    return home.getFileName() == null ? "" : home.getFileName().toString();
  }

  /** The share that finished houses show; a guess where they are too few, or all of one kind. */
  public static OfficeShare of(List<House> houses) {
    if (!HistoryFit.isEnough(houses)) {
      String few =
          houses.isEmpty()
              ? GUESS
              : "%s: %s of your jobs %s not enough, a fit needs %s with bad sheets and sound ones"
                  .formatted(
                      GUESS, houses.size(), houses.size() == 1 ? "is" : "are", HistoryFit.FEWEST);
      return of(GUESSED_ALPHA, GUESSED_BETA, new Source(GUESS, Source.Mark.COMMON_PRACTICE), few);
    }
    HistoryFit fit = HistoryFit.byMoments(houses);
    double raised =
        Math.max(1, ForecastFields.LEAST / Math.min(fit.alpha(), fit.beta())); // LEAST says why
    String told = "from %s of your jobs".formatted(houses.size());
    return of(
        fit.alpha() * raised,
        fit.beta() * raised,
        Source.derived(told + ", fitted by moments"),
        told);
  }

  /** Nobody changes these in a workbook: rates.csv says them, or else the history does. */
  private static OfficeShare of(double alpha, double beta, Source source, String told) {
    return new OfficeShare(
        number(ForecastFields.BAD_ALPHA.name(), alpha, source),
        number(ForecastFields.BAD_BETA.name(), beta, source),
        told);
  }

  private static Figure<Ratio> number(String name, double number, Source source) {
    return Figure.constant(name, Math.min(number, ForecastFields.MOST), Units.RATIO, source);
  }

  /** Whether nobody found these numbers anywhere. */
  public boolean isGuess() {
    return told.startsWith(GUESS);
  }
}
