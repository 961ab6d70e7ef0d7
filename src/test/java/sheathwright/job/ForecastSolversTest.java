package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.cutting.Patience;
import sheathwright.job.solve.SolvedTable;
import sheathwright.job.solve.Solver;
import sheathwright.job.table.CsvFile;

/** Forecasts over whole tables; expected values by an independent script. */
class ForecastSolversTest {

  private static final Map<String, String> HISTORY =
      Map.of("alpha", "1.4722306112220547", "beta", "21.79478649946375");

  private static final String ZONES =
      """
      zone,places,seen,seen_bad,odds,seen_share_pct
      field,30,18,1,,80
      eave,12,0,,3,
      valley,2,,,6,
      """;

  private static final String JOBS =
      """
      job,sheets,week
      a,44,1
      b,66,1
      c,24,1
      d,62,1
      e,121,1
      f,38,1
      g,52,2
      h,71,2
      i,47,2
      j,90,2
      k,58,2
      l,33,2
      """;

  static final String FINISHED =
      """
      job,closed_on,sheets,bad,known_leak
      a,2026-01-09,52,1,no
      b,2026-01-19,64,3,yes
      c,2026-02-09,48,0,no
      d,2026-02-19,88,9,yes
      e,2026-03-09,71,2,yes
      f,2026-03-19,60,5,yes
      g,2026-04-09,95,4,yes
      h,2026-04-19,44,0,yes
      i,2026-05-09,78,16,yes
      j,2026-05-19,66,3,yes
      k,2026-06-09,58,2,yes
      l,2026-06-19,82,6,no
      """;

  private static SolvedTable solved(Solver solver, String text, Map<String, String> options) {
    Patience ever = () -> 1e9;
    return solver.solve(CsvFile.parse("table.csv", text), options, seconds -> ever);
  }

  private static double number(SolvedTable table, int row, String column) {
    return Double.parseDouble(table.rows().get(row).get(table.header().indexOf(column)));
  }

  @Test
  void forecast_hasALineForEachZoneAndOneForAll() {
    SolvedTable answer = solved(Solver.FORECAST, ZONES, HISTORY);
    assertThat(answer.rows().stream().map(row -> row.get(0)))
        .containsExactly("field", "eave", "valley", "all");
    assertThat(number(answer, 3, "mean")).isCloseTo(4.604104, within(1e-6));
    assertThat(number(answer, 3, "p90_sheets")).isEqualTo(8);
    assertThat(answer.summary()).contains("2 to 8 bad sheets in 8 houses of 10", "a guess");
  }

  @Test
  void forecast_writesTheChanceOfEachCountWhereAsked() {
    SolvedTable asked =
        solved(
            Solver.FORECAST, ZONES, Map.of("alpha", "1.47", "beta", "21.8", "pmf", "chances.csv"));
    SolvedTable chances = asked.beside().orElseThrow().table();
    assertThat(chances.rows()).hasSize(45);
    assertThat(chances.rows().stream().mapToDouble(row -> Double.parseDouble(row.get(1))).sum())
        .isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "eave,12,13,0,1,100 | line 2, column seen: 13 is given, but places is 12; no more is seen than is there: give at most that",
        "eave,12,5,6,1,100 | line 2, column seen_bad: 6 is given, but seen is 5; only what was seen is known to be bad: give at most that",
        "eave,12,5,,1,100 | line 2, column seen_bad: it is empty, though 5 were seen; give 0 if all",
        "eave,,5,0,1,100 | line 2, column places: it is empty; give the places in this zone",
        "eave,12,5,0,0.05,100 | line 2, column odds: odds is 0.05; it must be from 0.1 to 20",
        "eave,12,5,0,1,4 | line 2, column seen_share_pct: seen_share_pct is 4",
      })
  void forecast_refusesInOneLine(String zone, String said) {
    assertThatThrownBy(
            () ->
                solved(
                    Solver.FORECAST,
                    "zone,places,seen,seen_bad,odds,seen_share_pct\n" + zone + "\n",
                    HISTORY))
        .hasMessageContaining("table.csv, " + said);
  }

  @Test
  void forecast_refusesANumberThatNoHistoryGives() {
    assertThatThrownBy(() -> solved(Solver.FORECAST, ZONES, Map.of("alpha", "0", "beta", "3")))
        .hasMessage("alpha is 0; it must be from 0.05 to 1000000");
  }

  @Test
  void fit_saysWhatWasFoundHowSureItIsAndWhetherItHeld() {
    SolvedTable answer = solved(Solver.FIT, FINISHED, Map.of("by", "known_leak"));
    assertThat(number(answer, 0, "alpha")).isCloseTo(1.4722306, within(1e-6));
    assertThat(number(answer, 0, "beta_likeliest")).isCloseTo(29.1854, within(1e-2));
    assertThat(number(answer, 0, "within_p80")).isEqualTo(11);
    assertThat(answer.rows().stream().map(row -> row.get(0)))
        .containsExactly("all", "known_leak yes");
    assertThat(answer.summary()).contains("4 to 9 given only 12 jobs", "known_leak no (3)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "4 | it has 4 jobs; a fit needs 5 jobs with bad sheets and sound ones: until then alpha=0.8",
        "1 | it has 1 job; a fit needs 5 jobs",
      })
  void fit_refusesTooFewJobs(int jobs, String said) {
    String few = String.join("\n", FINISHED.lines().limit(jobs + 1).toList());
    assertThatThrownBy(() -> solved(Solver.FIT, few, Map.of())).hasMessageContaining(said);
  }

  @Test
  void fit_refusesHousesWithoutABadSheetAndMoreBadThanSheets() {
    String sound = FINISHED.replaceAll(",\\d+,(yes|no)", ",0,$1");
    assertThatThrownBy(() -> solved(Solver.FIT, sound, Map.of()))
        .hasMessageContaining("its sheets are all of one kind");
    assertThatThrownBy(() -> solved(Solver.FIT, FINISHED.replace(",52,1,", ",52,53,"), Map.of()))
        .hasMessageContaining(
            "line 2, column bad: 53 is given, but sheets is 52; no more is bad than is there");
  }

  @Test
  void pooledStock_needsFewerSheetsThanHouseByHouse() {
    SolvedTable answer = solved(Solver.POOLED_STOCK, JOBS, HISTORY);
    assertThat(number(answer, 0, "one_by_one")).isEqualTo(100);
    assertThat(number(answer, 0, "pooled")).isEqualTo(61);
    assertThat(number(answer, 0, "mean")).isCloseTo(44.67245657567987, within(1e-6));
    assertThat(number(answer, 0, "sd")).isCloseTo(12.670648358256743, within(1e-6));
  }

  @Test
  void pooledStock_saysThatHousesShareOneUncertainHistory(@TempDir Path folder) throws Exception {
    Path history = Files.writeString(folder.resolve("history.csv"), FINISHED);
    SolvedTable answer =
        solved(Solver.POOLED_STOCK, JOBS, Map.of("history", history.toString(), "by", "week"));
    assertThat(answer.rows().stream().map(row -> row.get(0))).containsExactly("1", "2", "all");
    assertThat(number(answer, 2, "pooled_least")).isLessThan(61);
    assertThat(number(answer, 2, "pooled_most")).isGreaterThan(68);
  }
}
