package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Asked;

/**
 * Heel joints and ties at random places, against the codes' sentences said again in plain numbers:
 * the heel joint's row by the rule that makes it, the tie's row by its place in the table as it was
 * typed apart for these tests.
 */
class LoadPathOracleTest {

  private static final double[] SLOPES = {3, 4, 5, 7, 9, 12};
  private static final double[] SPANS = {12, 20, 28, 36};
  private static final double[] SPACINGS = {12, 16, 24};
  private static final double[] SNOWS = {30, 50, 70};
  private static final double[] TIED_SPANS = {12, 18, 24, 28, 32, 36, 42, 48};
  private static final double[] WINDS = {110, 115, 120, 130, 140};

  private static double up(double[] printed, double given) {
    for (double each : printed) {
      if (given <= each) {
        return each;
      }
    }
    throw new IllegalArgumentException("beyond the table: " + given);
  }

  private static double down(double given) {
    double found = SLOPES[0];
    for (double each : SLOPES) {
      found = each <= given ? each : found;
    }
    return found;
  }

  /** 15 psf and the snow on a span with 2 ft of eave, over 138 lb a nail times 1.15. */
  private static double printedNails(double slope, double spacing, double snow, double span) {
    double thrust = (15 + snow) * spacing / 12 * (span * span - 16) / 8 / (span / 2 * slope / 12);
    return Math.max(3, Math.ceil(thrust / (138 * 1.15) - 1e-9));
  }

  @Test
  void heelNails_areTheMoreOfStaticsAndTheCodesRow() {
    Random chance = new Random(9_17);
    int byCode = 0;
    for (int i = 0; i < 300; i++) {
      double half = 4 + 14 * chance.nextDouble();
      double rise = 3 + 10 * chance.nextDouble();
      double spacing = 6 + 18 * chance.nextDouble();
      double snow = SNOWS[chance.nextInt(3)];
      double tie = 0.3 * chance.nextDouble() * half * rise * chance.nextInt(2);
      double load = 15 + 60 * chance.nextDouble();
      double nail = 80 + 100 * chance.nextDouble();
      int found = chance.nextInt(40);
      double above = 1 - tie / (half * rise);
      double thrust = load * spacing / 12 * half / (2 * rise / 12) / above;
      double computed = Math.max(3, Math.ceil(thrust / nail - 1e-9));
      double code =
          Math.ceil(
              printedNails(down(rise), up(SPACINGS, spacing), snow, up(SPANS, 2 * half)) / above
                  - 1e-9);
      Asked asked =
          Asked.of("heel_nails")
              .with("span_ft", "" + half)
              .with("rise_in_12", "" + rise)
              .with("tie_height_in", "" + tie)
              .with("spacing_in", "" + spacing)
              .with("load_psf", "" + load)
              .with("adjusted_lb", "" + nail)
              .with("nails_found", "" + found)
              .with("code_snow", "to-" + (int) snow);
      assertThat(asked.number("computed_nails")).isEqualTo(computed);
      assertThat(asked.number("code_nails")).isEqualTo(code);
      double needed = Math.max(computed, code);
      assertThat(asked.number("nails")).isEqualTo(needed);
      assertThat(asked.number("nails_missing")).isEqualTo(Math.max(0, needed - found));
      assertThat(asked.answer("ok")).isEqualTo(found >= needed ? "yes" : "no");
      byCode += code > computed ? 1 : 0;
    }
    assertThat(byCode).as("both govern somewhere").isBetween(50, 250);
  }

  /** Spacing, span, then below 5 in 12 and from there, for each wind. */
  private static List<double[]> cells() throws IOException {
    try (InputStream table = LoadPathOracleTest.class.getResourceAsStream("irc-r802.11.csv")) {
      return new String(table.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .skip(1)
          .map(
              line ->
                  java.util.Arrays.stream(line.split(","))
                      .mapToDouble(Double::parseDouble)
                      .toArray())
          .toList();
    }
  }

  @Test
  void upliftTie_isTheCellThatIsNoLess() throws IOException {
    List<double[]> cells = cells();
    Random chance = new Random(802_11);
    for (int i = 0; i < 300; i++) {
      double wind = 85 + 55 * chance.nextDouble();
      double spacing = 4 + 20 * chance.nextDouble();
      double span = 1 + (spacing > 16 ? 35 : 47) * chance.nextDouble();
      double rise = 24 * chance.nextDouble();
      int tie = chance.nextInt(400);
      double row = up(SPACINGS, spacing);
      double column = up(TIED_SPANS, span);
      int place = java.util.Arrays.binarySearch(WINDS, up(WINDS, wind));
      double uplift =
          cells.stream()
              .filter(cell -> cell[0] == row && cell[1] == column)
              .findFirst()
              .orElseThrow()[2 + 2 * place + (rise < 5 ? 0 : 1)];
      Asked asked =
          Asked.of("uplift_tie")
              .with("wind_mph", "" + wind)
              .with("exposure", "b")
              .with("spacing_in", "" + spacing)
              .with("roof_span_ft", "" + span)
              .with("rise_in_12", "" + rise)
              .with("tie_lb", "" + tie);
      assertThat(asked.number("uplift_lb")).isEqualTo(uplift);
      assertThat(asked.number("missing_lb")).isEqualTo(Math.max(0, uplift - tie));
      assertThat(asked.answer("ok")).isEqualTo(tie >= uplift ? "yes" : "no");
    }
  }
}
