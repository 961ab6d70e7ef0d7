package sheathwright.cli.firm;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import sheathwright.figure.Shown;
import sheathwright.job.file.NewFile;
import sheathwright.job.file.NewFiles;
import sheathwright.job.season.Season;
import sheathwright.job.table.Printable;
import sheathwright.life.firm.Calibration;
import sheathwright.life.firm.JobLine;
import sheathwright.life.firm.SeasonColumn;
import sheathwright.life.firm.SeasonSummary;
import sheathwright.workbook.firm.SeasonBook;

/**
 * The summary of a season, a table and a workbook, both or none.
 *
 * @param folder of the season
 * @param place the folder that they go into; nothing where the season's own is meant
 * @param mayReplace whether older ones are replaced
 * @param threads how many jobs are worked on at once
 */
public record SeasonFiles(Path folder, Optional<Path> place, boolean mayReplace, int threads) {

  private static final int REFUSED = 3;

  /** Those of a season, worked out on all processors. */
  public static SeasonFiles of(Path folder, Optional<Path> place, boolean mayReplace) {
    return new SeasonFiles(folder, place, mayReplace, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Writes them, and says a line of each job as it comes.
   *
   * @param said takes what is said of jobs and files, a line each
   * @param err takes what is wrong
   * @return the exit status: whether any job was refused
   */
  public int write(Consumer<String> said, PrintWriter err) {
    Path where = place.orElse(folder);
    Path table = where.resolve(Season.SUMMARY);
    Path workbook = where.resolve("season.xlsx");
    NewFile newTable = NewFile.at(table, mayReplace);
    NewFile newWorkbook = NewFile.at(workbook, mayReplace);
    Season season = Season.in(folder);
    SeasonSummary summary = SeasonSummary.of(season, threads, job -> tell(job, said, err));
    new NewFiles()
        .with(newTable, summary.table())
        .with(newWorkbook, SeasonBook.bytes(summary, Calibration.historyOf(season), named(folder)))
        .write();
    said.accept("wrote %s and %s".formatted(table, workbook));
    if (!summary.refused().isEmpty()) {
      err.println(
          Shown.text(
              "%,d of %,d jobs not read; their lines say why",
              summary.refused().size(), summary.lines().size()));
    }
    return summary.refused().isEmpty() ? 0 : REFUSED;
  }

  private static String named(Path folder) {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    return name == null ? "season" : name.toString();
  }

  private static void tell(JobLine job, Consumer<String> said, PrintWriter err) {
    if (job.isRefused()) {
      err.println(Printable.line(job.job() + ": " + job.refusal()));
      return;
    }
    String now =
        job.number(SeasonColumn.NOW_USD)
            .map(usd -> Shown.text("; by today's prices $%,.2f", usd))
            .orElse("");
    said.accept(
        Shown.text(
            "%s: %s, $%,.2f, at worst $%,.2f, likely %.0f to %.0f bad sheets%s",
            job.job(),
            job.word(SeasonColumn.STAGE),
            job.number(SeasonColumn.TOTAL_USD).orElseThrow(),
            job.number(SeasonColumn.WORST_USD).orElseThrow(),
            job.number(SeasonColumn.P50_SHEETS).orElseThrow(),
            job.number(SeasonColumn.P95_SHEETS).orElseThrow(),
            now));
  }
}
