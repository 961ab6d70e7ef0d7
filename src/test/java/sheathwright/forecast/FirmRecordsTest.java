package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** Failures against the binomial distribution of a statistics library; hours by hand. */
class FirmRecordsTest {

  private static Asked failures(String kept, String failed) {
    return Asked.of("fail_rate").with("kept_sheets", kept).with("failed", failed);
  }

  @ParameterizedTest
  @CsvSource({"400, 0, 0, 0.746", "400, 2, 0.5, 1.566"})
  void failRate_asAnIndependentScriptHasIt(String kept, String failed, double rate, double atMost) {
    assertThat(failures(kept, failed).number("rate_pct")).isCloseTo(rate, within(1e-12));
    assertThat(failures(kept, failed).number("at_most_pct")).isCloseTo(atMost, within(5e-4));
  }

  @ParameterizedTest
  @CsvSource({"400, 0", "400, 2", "37, 30", "1, 0", "93, 0"})
  void failRate_isTheShareForWhichSoFewAreOneInTwenty(int kept, int failed) {
    double share =
        failures(String.valueOf(kept), String.valueOf(failed)).number("at_most_pct") / 100;
    assertThat(new BinomialDistribution(null, kept, share).cumulativeProbability(failed))
        .isCloseTo(0.05, within(1e-6));
  }

  /** 0 of 93 at 99 %: 0.0483 (Case Studies in Reliability and Maintenance, 14.3, from memory). */
  @Test
  void failRate_ofABookExample() {
    assertThat(failures("93", "0").with("confidence_pct", "99").number("at_most_pct"))
        .isCloseTo(4.83, within(0.005));
  }

  /** With none failed it is 1 − doubt^(1/n), which keeps its digits for as many as are allowed. */
  @ParameterizedTest
  @CsvSource({"50", "4000", "10000000"})
  void failRate_ofNoneIsExact(int kept) {
    assertThat(failures(String.valueOf(kept), "0").number("at_most_pct"))
        .isCloseTo(-100 * Math.expm1(Math.log(0.05) / kept), withinPercentage(1e-7));
  }

  @Test
  void failRate_refusesMoreThanWereKept() {
    assertThat(failures("5", "5").number("at_most_pct")).isEqualTo(100);
    assertThat(failures("5", "6").refusedOutright().orElseThrow())
        .isEqualTo(
            "failed exceeds the sheets kept: 6 sheets of 5 sheets; it must be at most as many");
  }

  @Test
  void hoursRate_weighsTheLogByHowSureItIs() {
    Asked asked =
        Asked.of("hours_rate")
            .with("fitted_h", "0.964286")
            .with("se_h", "0.074231")
            .with("rows", "3")
            .with("book_h", "0.90");
    assertThat(asked.number("weight")).isCloseTo(0.9018, within(5e-5));
    assertThat(asked.number("hours")).isCloseTo(0.957975, within(1e-6));
    assertThat(asked.with("rows", "2").refusedOutright())
        .contains("a line and its error need three rows of the log");
  }
}
