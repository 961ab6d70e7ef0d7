package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Asked;

/** What holds rafters to each other and to the wall. */
class LoadPathTest {

  private static final double[] WINDS = {110, 115, 120, 130, 140};
  private static final Asked TIE =
      Asked.of("uplift_tie")
          .with("wind_mph", "115")
          .with("exposure", "b")
          .with("spacing_in", "16")
          .with("roof_span_ft", "28")
          .with("rise_in_12", "4");

  /** Half the load of a pair stands on the wall; moments about the ridge give the pull. */
  @Test
  void heelNails_holdTheThrustOfEquilibrium() {
    Random chance = new Random(802_52);
    for (int i = 0; i < 200; i++) {
      double span = 4 + 20 * chance.nextDouble();
      double rise = 3 + 9 * chance.nextDouble();
      double tie = 0.3 * chance.nextDouble() * span * rise;
      double spacing = 12 + 36 * chance.nextDouble();
      double load = 15 + 60 * chance.nextDouble();
      double nail = 60 + 120 * chance.nextDouble();
      int found = chance.nextInt(20);
      Asked asked =
          Asked.of("heel_nails")
              .with("span_ft", "" + span)
              .with("rise_in_12", "" + rise)
              .with("tie_height_in", "" + tie)
              .with("spacing_in", "" + spacing)
              .with("load_psf", "" + load)
              .with("adjusted_lb", "" + nail)
              .with("nails_found", "" + found);
      double onOneRafter = load * span * spacing / 12;
      double aboutTheRidge = onOneRafter * span * 12 - onOneRafter * span * 12 / 2;
      double thrust = aboutTheRidge / (span * rise - tie);
      assertThat(asked.number("thrust_lb")).isCloseTo(thrust, within(1e-6 * thrust));
      double nails = Math.max(3, Math.ceil(thrust / nail));
      assertThat(asked.number("nails")).isEqualTo(nails);
      assertThat(asked.number("nails_missing")).isEqualTo(Math.max(0, nails - found));
      assertThat(asked.answer("ok")).isEqualTo(found >= nails ? "yes" : "no");
    }
  }

  /** Nails that nobody saw are no nails. */
  @Test
  void heelNails_areMissingWhereNobodyLooked() {
    Asked asked =
        Asked.of("heel_nails")
            .with("span_ft", "12")
            .with("rise_in_12", "4")
            .with("spacing_in", "16")
            .with("load_psf", "30")
            .with("adjusted_lb", "1000");
    assertThat(asked.number("nails_missing")).as("three at least").isEqualTo(3);
    assertThat(asked.answer("ok")).isEqualTo("no");
  }

  /** Every cell of IRC 2018 Table R802.11, Exposure B, that was read, at its own row and column. */
  @ParameterizedTest(name = "{0} in, {1} ft")
  @CsvFileSource(resources = "irc-r802.11.csv", numLinesToSkip = 1)
  void upliftTie_isThePrintedCell(
      String spacing,
      String span,
      double low110,
      double steep110,
      double low115,
      double steep115,
      double low120,
      double steep120,
      double low130,
      double steep130,
      double low140,
      double steep140) {
    double[] low = {low110, low115, low120, low130, low140};
    double[] steep = {steep110, steep115, steep120, steep130, steep140};
    for (int i = 0; i < WINDS.length; i++) {
      Asked cell =
          TIE.with("wind_mph", "" + WINDS[i])
              .with("spacing_in", spacing)
              .with("roof_span_ft", span);
      assertThat(cell.with("rise_in_12", "4.99").number("uplift_lb")).isEqualTo(low[i]);
      assertThat(cell.with("rise_in_12", "5").number("uplift_lb")).isEqualTo(steep[i]);
    }
  }

  /** Between printed numbers the next larger one counts; by hand from the table. */
  @ParameterizedTest
  @CsvSource({"111, 13, 24.1, 132", "90, 8, 6, 48", "120, 16, 18, 118", "120.1, 16, 18, 162"})
  void upliftTie_readsTheNextLargerPrintedOne(
      String wind, String spacing, String span, double uplift) {
    double found =
        TIE.with("wind_mph", wind)
            .with("spacing_in", spacing)
            .with("roof_span_ft", span)
            .number("uplift_lb");
    // 111 mph reads 115, 13 in reads 16, 24.1 ft reads 28: 132 below 5 in 12.
    assertThat(found).isEqualTo(uplift);
  }

  @Test
  void aTieNobodySaw_isNoTie() {
    assertThat(TIE.answer("ok")).isEqualTo("no");
    assertThat(TIE.number("missing_lb")).isEqualTo(132);
    assertThat(TIE.with("tie_lb", "132").answer("ok")).isEqualTo("yes");
    assertThat(TIE.with("tie_lb", "131").number("missing_lb")).isEqualTo(1);
  }

  /** In the open the wind pulls harder than the table that was read says. */
  @ParameterizedTest
  @ValueSource(strings = {"c", "d"})
  void anOpenSite_isRefusedAndNotTakenForATown(String exposure) {
    assertThat(TIE.with("exposure", exposure).refusal().orElseThrow())
        .contains("Exposure C and D, where the wind pulls harder");
  }

  @Test
  void whatWasNotRead_isRefused() {
    assertThat(TIE.with("spacing_in", "24").with("roof_span_ft", "40").refusal()).isPresent();
  }
}
