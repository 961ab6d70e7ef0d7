package sheathwright.life.unseen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.figure.Solution;
import sheathwright.forecast.Chances;
import sheathwright.forecast.Zone;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.found.FoundWork;

/**
 * The invented job of the whole life has 60 places: 24 in an upper zone, 18 of them seen and 1 bad,
 * and 36 in a lower one that nobody saw. Expected chances: a script of its own for the
 * beta-binomial (log-gamma), since no zone is worse than another.
 */
class JobForecastTest {

  private static final Path DEMO = Path.of("demo-data", "whole-life");

  private static final String TWELVE =
      """
      job,closed_on,sheets,bad
      a,2026-05-04,52,1
      b,2026-05-04,64,3
      c,2026-05-04,48,0
      d,2026-05-04,88,9
      e,2026-05-04,71,2
      f,2026-05-04,60,5
      g,2026-05-04,95,4
      h,2026-05-04,44,0
      i,2026-05-04,78,16
      j,2026-05-04,66,3
      k,2026-05-04,58,2
      l,2026-05-04,82,6
      """;

  @TempDir Path firm;
  private Path job;
  private Set<String> left = Set.of();

  @BeforeEach
  void copied() throws IOException {
    job = Files.createDirectories(firm.resolve("job"));
  }

  private Estimate estimate(String stage) {
    try (Stream<Path> tables = Files.list(DEMO.resolve(stage))) {
      for (Path table : tables.filter(file -> file.toString().endsWith(".csv")).toList()) {
        if (!Files.exists(job.resolve(table.getFileName()))
            && !left.contains(table.getFileName().toString())) {
          Files.copy(table, job.resolve(table.getFileName()));
        }
      }
      Path photos = Files.createDirectories(job.resolve("photos"));
      try (Stream<Path> pictures = Files.list(DEMO.resolve(stage).resolve("photos"))) {
        for (Path picture : pictures.toList()) {
          Files.copy(picture, photos.resolve(picture.getFileName()));
        }
      }
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
    return new Estimate(Job.in(job));
  }

  private void write(Path file, String text) throws IOException {
    Files.writeString(file, text);
  }

  private void append(String table, String line) throws IOException {
    Files.writeString(
        job.resolve(table),
        Files.readString(DEMO.resolve("3-quoted").resolve(table)) + line + "\n");
  }

  private static List<Integer> percentiles(Chances chances) {
    return Stream.of(0.1, 0.5, 0.8, 0.9, 0.95).map(chances::percentile).toList();
  }

  @Test
  void withoutAnyHistory_itIsAGuessAndSaysSo() {
    JobForecast forecast = JobForecast.before(estimate("3-quoted"));
    assertThat(forecast.chances().mean()).isCloseTo(3.454545, within(1e-6));
    assertThat(percentiles(forecast.chances())).containsExactly(1, 3, 5, 7, 8);
    assertThat(forecast.told()).isEqualTo("a guess, no data");
    assertThat(forecast.share().isGuess()).isTrue();
    assertThat(forecast.solution().state().value()).isEqualTo(Solution.CURRENT);
  }

  @Test
  void twelveFinishedJobs_areFittedAndNamed() throws IOException {
    write(firm.resolve("history.csv"), TWELVE);
    JobForecast forecast = JobForecast.before(estimate("3-quoted"));
    assertThat(forecast.share().alpha().value()).isCloseTo(1.472231, within(1e-6));
    assertThat(forecast.share().beta().value()).isCloseTo(21.794786, within(1e-6));
    assertThat(forecast.chances().mean()).isCloseTo(3.516143, within(1e-6));
    assertThat(percentiles(forecast.chances())).containsExactly(1, 3, 5, 6, 8);
    assertThat(forecast.told()).isEqualTo("from 12 of your jobs");
  }

  /** What this very house came to is no forecast of it. */
  @Test
  void theJobItself_isNoHistoryOfItsOwn() throws IOException {
    write(firm.resolve("history.csv"), TWELVE + "job,2026-05-04,60,30\n");
    assertThat(JobForecast.before(estimate("3-quoted")).told()).isEqualTo("from 12 of your jobs");
  }

  @Test
  void fewerThanFiveJobs_areNoHistory() throws IOException {
    write(
        firm.resolve("history.csv"),
        "job,closed_on,sheets,bad\na,2026-05-04,52,1\nb,2026-05-04,64,3\n");
    assertThat(JobForecast.before(estimate("3-quoted")).told())
        .isEqualTo(
            "a guess, no data: 2 of your jobs are not enough, a fit needs 5 with bad sheets and"
                + " sound ones");
  }

  @Test
  void theOfficesOwnNumbers_areTakenBeforeItsHistory() throws IOException {
    write(firm.resolve("history.csv"), TWELVE);
    append("rates.csv", "bad_alpha,0.8,\nbad_beta,12,");
    JobForecast forecast = JobForecast.before(estimate("3-quoted"));
    assertThat(forecast.chances().mean()).isCloseTo(3.454545, within(1e-6));
    assertThat(forecast.told()).isEqualTo("from the office's rates");
  }

  @Test
  void oneOfTheTwoNumbers_saysNothing() throws IOException {
    append("rates.csv", "bad_beta,12,");
    assertThatThrownBy(() -> estimate("3-quoted"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("rates.csv: bad_alpha is missing")
        .hasMessageContaining("it belongs to bad_beta: give both, or neither");
  }

  @Test
  void aNumberThatCannotBe_isSaidOnce() throws IOException {
    append("rates.csv", "bad_alpha,0,\nbad_beta,12,");
    assertThatThrownBy(() -> estimate("3-quoted"))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("bad_alpha is 0; it must be from 0.05 to 1000000")
        .hasMessageNotContaining("is missing");
  }

  @Test
  void aHistoryWithMoreBadThanSheets_isRefusedWithItsPlace() throws IOException {
    write(firm.resolve("history.csv"), "job,closed_on,sheets,bad\na,2026-05-04,52,53\n");
    Estimate estimate = estimate("3-quoted");
    assertThatThrownBy(() -> JobForecast.before(estimate))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "history.csv, line 2, column bad: 53 is given, but sheets is 52; no more is bad than is"
                + " there");
  }

  /** What no zone has is a zone of its own, of which nothing was seen. */
  @Test
  void theRestOfTheMap_wasNotSeen() throws IOException {
    write(job.resolve("zones.csv"), "zone,places\nupper,24\n");
    JobForecast forecast = JobForecast.before(estimate("3-quoted"));
    assertThat(forecast.zones())
        .containsExactly(new Zone("upper", 24, 0, 0, 1, 1), new Zone("the rest", 36, 0, 0, 1, 1));
    assertThat(forecast.chances().mean()).isCloseTo(60 * 0.8 / 12.8, within(1e-6));
  }

  /**
   * By hand: planes A and B have 30 places each, 12 in the upper courses; marks replace A-1-2,
   * A-1-3, A-1-4 and A-4-6 on A, B-5-3 on B.
   */
  @Test
  void openPlanes_areCountedByTheirMarks() {
    Estimate estimate = estimate("5-opened");
    JobForecast now = JobForecast.now(estimate, FoundWork.of(estimate), Set.of());
    assertThat(now.opened()).containsExactlyInAnyOrder("A", "B");
    assertThat(now.known()).isEqualTo(5);
    assertThat(now.chances().of(5)).isCloseTo(1, within(1e-9));
    assertThat(now.chancesOfTheRest().of(0)).isCloseTo(1, within(1e-9));
  }

  /**
   * Plane A open, 30 places with 4 bad; of 18 seen before, 9 lay on B, and the bad one may have.
   */
  @Test
  void oneOpenPlane_tellsOfTheOther() throws IOException {
    Files.writeString(
        job.resolve("marks.csv"),
        """
        mark,plane,finding,sheet,stage_found,on
        R-1,A,rot,A-1-2,opened,2027-06-01
        R-2,A,rot,A-1-3,opened,2027-06-01
        R-3,A,rot,A-1-4,opened,2027-06-01
        R-4,A,rot,A-3-1,opened,2027-06-01
        """);
    left = Set.of("orders.csv", "order_lines.csv", "photos.csv");
    Estimate estimate = estimate("5-opened");
    JobForecast now = JobForecast.now(estimate, FoundWork.of(estimate), Set.of());
    assertThat(now.opened()).containsExactly("A");
    assertThat(now.zones())
        .containsExactly(
            new Zone("upper, open", 12, 12, 0, 1, 1),
            new Zone("upper", 12, 9, 1, 1, 1),
            new Zone("lower, open", 18, 18, 4, 1, 1),
            new Zone("lower", 18, 0, 0, 1, 1));
    // 39 seen, 5 bad: the other 21 are beta-binomial of 0.8 + 5 and 12 + 34
    assertThat(now.known()).isEqualTo(4);
    assertThat(now.chances().mean()).isCloseTo(5 + 21 * 5.8 / 51.8, within(1e-6));
    assertThat(now.chancesOfTheRest().mean()).isCloseTo(1 + 21 * 5.8 / 51.8, within(1e-6));
  }
}
