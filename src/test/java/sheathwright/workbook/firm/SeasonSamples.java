package sheathwright.workbook.firm;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import sheathwright.job.season.Season;
import sheathwright.job.season.SeasonText;
import sheathwright.life.firm.Calibration;
import sheathwright.life.firm.SeasonSummary;

/** The workbook of a small invented season with a history, for every check of workbooks. */
public final class SeasonSamples {

  private static final String TWELVE =
      """
      job,closed_on,sheets,bad
      a,2026-01-09,52,1
      b,2026-01-19,64,3
      c,2026-02-09,48,0
      d,2026-02-19,88,9
      e,2026-03-09,71,2
      f,2026-03-19,60,5
      g,2026-04-09,95,4
      h,2026-04-19,44,0
      i,2026-05-09,78,16
      j,2026-05-19,66,3
      k,2026-06-09,58,2
      l,2026-06-19,82,6
      """;

  private SeasonSamples() {}

  /** Its bytes. */
  public static byte[] season() {
    try {
      Path folder = Files.createTempDirectory("season");
      try {
        Season season = Season.in(SeasonText.two().file("history.csv", TWELVE).in(folder));
        return SeasonBook.bytes(
            SeasonSummary.of(season, 2, line -> {}), Calibration.historyOf(season), "invented");
      } finally {
        try (Stream<Path> all = Files.walk(folder)) {
          for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
            Files.delete(each);
          }
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
