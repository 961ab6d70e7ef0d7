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

  private SeasonSamples() {}

  /** Its bytes. */
  public static byte[] season() {
    try {
      Path folder = Files.createTempDirectory("season");
      try {
        Season season =
            Season.in(SeasonText.two().file("history.csv", SeasonText.TWELVE_HOUSES).in(folder));
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
