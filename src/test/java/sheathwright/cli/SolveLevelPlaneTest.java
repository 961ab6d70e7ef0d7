package sheathwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings whose best plane can be seen by hand. */
class SolveLevelPlaneTest {

  /** Three rafters with five stations each, level but for the ridge, which lies 2 in lower. */
  private static final String LOW_RIDGE =
      """
      x_in,y_in,z_in
      0,0,0
      0,36,0
      0,72,0
      0,108,0
      0,144,-2
      24,0,0
      24,36,0
      24,72,0
      24,108,0
      24,144,-2
      48,0,0
      48,36,0
      48,72,0
      48,108,0
      48,144,-2
      """;

  @TempDir private Path folder;

  private CommandRun solve(String table, String... options) throws IOException {
    Path file = Files.writeString(folder.resolve("readings.csv"), table);
    Object[] words = new Object[3 + options.length];
    words[0] = "solve";
    words[1] = "level_plane";
    words[2] = file;
    System.arraycopy(options, 0, words, 3, options.length);
    return CommandRun.of(words);
  }

  /**
   * Level, the ridge alone is built up, 2 in on each rafter. Tilted about the station below the
   * ridge, each inch at the eave takes a third of an inch off the ridge: at 1-1/2 both are alike,
   * and a rafter takes 1-1/2 + 1 + 1/2 + 0 + 1-1/2. A cap of 1-3/4 asks for half of that tilt.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "objective=total; total 6 in, largest 2 in, optimal",
        "objective=largest; total 13.5 in, largest 1.5 in, optimal",
        "objective=Largest; total 13.5 in, largest 1.5 in, optimal",
        "cap_in=; total 6 in, largest 2 in, optimal",
        "cap_in=1-3/4; total 9.75 in, largest 1.75 in, optimal",
        "target=lines; total 6 in, largest 2 in, optimal"
      })
  void summary_isAsByHand(String option, String summary) throws IOException {
    CommandRun ran = solve(LOW_RIDGE, option);
    assertThat(ran.err()).isEqualTo(summary + "\n");
    assertThat(ran.status()).isZero();
  }

  /**
   * The two high corners, R1's eave and R2's ridge, are 0 in the middle on average, so that no
   * plane lies lower there: the total is what the six drops add up to, 2 in. Among those planes the
   * one on R1's ridge needs least at R1's middle: 1-3/8 - 1/32.
   */
  @Test
  void rows_areAsTheyWere_withTheBuildUpAppended() throws IOException {
    CommandRun ran =
        solve(
            """
            rafter,z_in,x_in,y_in,note
            R1,-1/16,0,0,
            R1,-1-3/8,0,6',"knot, split"
            R1,0.0,0,144,
            R2,-1/8,24,0,
            R2,-.5,24,72,
            R2,1/16,24,144,
            """);
    assertThat(ran.out())
        .isEqualTo(
            """
            rafter,z_in,x_in,y_in,note,build_up_in
            R1,-1/16,0,0,,0
            R1,-1-3/8,0,6',"knot, split",1.34375
            R1,0.0,0,144,,0
            R2,-1/8,24,0,,0.125
            R2,-.5,24,72,,0.53125
            R2,1/16,24,144,,0
            """);
    assertThat(ran.err()).isEqualTo("total 2 in, largest 1.34375 in, optimal\n");
  }

  @Test
  void bounds_holdTheSurfaceWhereItIsTiedIn() throws IOException {
    CommandRun ran =
        solve(
            """
            x_in;y_in;z_in;lo_in;hi_in
            0;0;-0,25;0,5;0,5
            0;96;-1;;
            0;192;0;;1/4
            """);
    assertThat(ran.out())
        .isEqualTo(
            """
            x_in,y_in,z_in,lo_in,hi_in,build_up_in
            0,0,"-0,25","0,5","0,5",0.5
            0,96,-1,,,1.125
            0,192,0,,1/4,0
            """);
  }

  /** A crown of 1/2 in between an eave and a ridge that may not be built up. */
  @Test
  void clash_saysWhichBoundsAndByHowMuch() throws IOException {
    String table =
        """
        x_in,y_in,z_in,hi_in
        0,0,0,0
        0,72,1/2,
        0,144,0,0
        """;
    CommandRun ran = solve(table);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .isEqualTo(
            """
            readings.csv: nothing straight fits all of these limits; the wood stays, and each of the others would have to give 0.5 in
            readings.csv, line 2, column hi_in: build-up of at most 0 in
            readings.csv, line 3, column z_in: the wood stands at 0.5 in
            readings.csv, line 4, column hi_in: build-up of at most 0 in
            """);
    assertThat(solve(table, "target=lines").err()).isEqualTo(ran.err());
  }

  @Test
  void clash_namesTheCap() throws IOException {
    CommandRun ran = solve("x_in,y_in,z_in\n0,0,0\n0,72,-1\n0,144,0\n", "cap_in=3/4");
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.err())
        .contains("nothing straight fits", "would have to give 0.25 in", "line 3: cap_in=0.75");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "x_in,y_in|0,0; ; readings.csv, line 1, column z_in: this column is missing; the table has x_in, y_in, z_in, lo_in, hi_in",
        "x_in,y_in,z_in,low_in|0,0,0,1; ; readings.csv, line 1, column low_in: this column is not known",
        "x_in,y_in,z_in,hi|0,0,0,1; ; readings.csv, line 1, column hi: this column is not known",
        "x_in,y_in,z_in,build_up_in|0,0,0,1; ; readings.csv, line 1, column build_up_in: this column is not known",
        "x_in,y_in,z_in,z_in|0,0,0,1; ; readings.csv, line 1, column z_in: this column appears twice",
        "x_in,y_in,z_in|0,0,low; ; readings.csv, line 2, column z_in: ",
        "x_in,y_in,z_in|0,0,|1,0,0; ; readings.csv, line 2, column z_in: z_in is missing; give from -10000 to 10000 inches",
        "x_in,y_in,z_in|0,99999,0; ; readings.csv, line 2, column y_in: y_in is 99999; it must be from -10000 to 10000",
        "x_in,y_in,z_in,lo_in|0,0,0,-1; ; readings.csv, line 2, column lo_in: lo_in is -1; it must be from 0 to 1000",
        "x_in,y_in,z_in,lo_in,hi_in|0,0,0,1,1/2; ; readings.csv, line 2, column hi_in: 1/2 in is given, less than lo_in, which is 1 in",
        "x_in,y_in,z_in; ; readings.csv: it has no lines under its heading",
        "x_in,y_in,z_in|0,0,0; objective=least; objective is \"least\"; it must be one of total, largest",
        "x_in,y_in,z_in|0,0,0; target=hip; target is \"hip\"; it must be one of plane, lines",
        "x_in,y_in,z_in|0,0,0; cap_in=-1; cap_in is -1; it must be from 0 to 1000",
        "x_in,y_in,z_in|0,0,0; cap=1; \"cap=1\" is not an option of this solver; it has objective=total, cap_in=, target=plane"
      })
  void whatIsWrong_isSaidInOneLine(String table, String option, String said) throws IOException {
    String text = table.replace('|', '\n') + "\n";
    CommandRun ran = option == null ? solve(text) : solve(text, option);
    assertThat(ran.status()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).startsWith(said).hasLineCount(1);
  }

  @Test
  void everythingWrong_isSaidAtOnce() throws IOException {
    CommandRun ran = solve("x_in,y_in,z_in\nleft,0,0\n0,up,0\n");
    assertThat(ran.err()).contains("line 2, column x_in", "line 3, column y_in").hasLineCount(2);
  }

  /** A third of the way from 0 to -1/2, 1 in lower: 5/6, which no decimal ends. */
  @Test
  void buildUps_readBackAsTheSameNumbers() throws IOException {
    CommandRun ran = solve("x_in,y_in,z_in\n0,0,0\n0,1,-1\n0,3,-1/2\n");
    String[] lines = ran.out().split("\n");
    assertThat(Double.parseDouble(lines[2].split(",")[3])).isCloseTo(5 / 6.0, within(1e-13));
  }

  @Test
  void help_showsTheSolver() {
    assertThat(CommandRun.of("solve", "--help").out())
        .contains("level_plane", "x_in (across the rafters)", "objective=total");
  }
}
