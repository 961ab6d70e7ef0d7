package sheathwright.repl.show;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.sheets;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.forecast.BadShare;
import sheathwright.forecast.DeckSeen;
import sheathwright.forecast.Forecasts;
import sheathwright.job.Estimate;
import sheathwright.job.Job;

/** Expected values: a script of its own for the beta-binomial, drawn by hand. */
class ChanceBarsTest {

  /** By hand, 44 sheets of which 18 were seen and 1 bad: 1 in 0.2866 and 2 in 0.2887 of houses. */
  @Test
  void aForecast_isABarForEachNumber() {
    String picture =
        Bars.of(
            Forecasts.badSheetForecast(
                DeckSeen.sheets(sheets(44)).seen(sheets(18)).bad(sheets(1)),
                BadShare.of(number(1.472231), number(21.794786))),
            80);
    List<String> lines = picture.lines().toList();
    assertThat(lines.get(0)).isEqualTo("bad sheets, of 100 houses");
    assertThat(lines.get(1)).isEqualTo("    1  " + "#".repeat(64) + " 28.7");
    assertThat(lines.get(2)).isEqualTo("    2  " + "#".repeat(64) + " 28.9");
    assertThat(lines.get(5)).isEqualTo("    5  " + "#".repeat(13) + " 6.0");
    assertThat(lines).contains("    8  # 0.5", " more  # 0.3");
    assertThat(picture).contains("1 or 2 bad sheets in 3 houses of 5; more than 5 in 1 of 20");
    assertThat(lines).allMatch(line -> line.length() <= 80);
  }

  @Test
  void aJob_isDrawnByItsForecast() {
    String picture =
        Bars.of(new Estimate(Job.in(Path.of("demo-data", "whole-life", "3-quoted"))), 60);
    assertThat(picture)
        .contains("in houses like this one:\n1 or 2 bad sheets in 2 houses of 5;")
        .contains("rests on: a guess, no data");
    assertThat(picture.lines()).allMatch(line -> line.length() <= 60);
  }
}
