package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.catalog.Asked;

class SisterStockTest {

  /** Feet and inches of arithmetic on doubles: some last digits, no more. */
  private static final double DIGITS = 1e-9;

  /** The invented sagging cottage: 10 ft on the flat at 8 in 12, every sister from end to end. */
  private static final Asked COTTAGE =
      Asked.of("sister_stock")
          .with("sag_in", "1-5/8")
          .with("span_ft", "12.0185")
          .with("tolerance_in", "3/8")
          .with("lap_in", "24")
          .with("rafter_count", "18")
          .with("sister_size", "2x8");

  /** A sag of 1 in with laps so long that the sister runs from bearing to bearing. */
  private static Asked full(String span) {
    return Asked.of("sister_stock")
        .with("sag_in", "1")
        .with("span_ft", span)
        .with("tolerance_in", "3/8")
        .with("lap_in", "120")
        .with("rafter_count", "1");
  }

  @Test
  void sisterStock_findsTheCottageShortOfATwelveFootStick() {
    assertThat(COTTAGE.number("length_ft")).isEqualTo(12.0185);
    assertThat(COTTAGE.number("stock_ft")).isEqualTo(14);
    assertThat(COTTAGE.number("pieces")).isEqualTo(18);
    // 2 rows × (⌈(144.222 − 4) ÷ 12⌉ + 1) = 2 × 13 = 26 nails in each of 18
    assertThat(COTTAGE.number("nails")).isEqualTo(2 * 13 * 18).isEqualTo(468);
    assertThat(COTTAGE.number("near_miss_in"))
        .isCloseTo((12.0185 - 12) * 12, within(DIGITS)) // 0.222 in
        .isCloseTo(0.222, within(DIGITS));
    assertThat(COTTAGE.number("end_offset_in")).isZero();
  }

  @Test
  void sisterStock_readsTheSameSpanInFeetAndInches() {
    Asked tape = COTTAGE.with("span_ft", "12-0 1/4");
    assertThat(tape.number("near_miss_in")).isCloseTo(0.25, within(DIGITS));
  }

  /** Worked by hand: √(1 − 0.5 ÷ 2) = √0.75 of the span is below the tolerance. */
  @Test
  void sisterStock_runsALapBeyondTheDropAtEachEnd() {
    Asked part =
        COTTAGE
            .with("sag_in", "2")
            .with("tolerance_in", "0.5")
            .with("span_ft", "16")
            .with("lap_in", "9");
    double length = 16 * Math.sqrt(0.75) + 2 * 9 / 12.0; // 13.8564 + 1.5 ft
    assertThat(part.number("length_ft")).isCloseTo(length, within(DIGITS));
    assertThat(part.number("stock_ft")).isEqualTo(16);
    assertThat(part.number("end_offset_in"))
        .isCloseTo(2 * (1 - Math.pow(length / 16, 2)), within(DIGITS));
    // 15.3564 ft − 14 ft is more than an inch: no near miss.
    assertThat(part.number("near_miss_in")).isZero();
  }

  @Test
  void sisterStock_leavesTheToleranceStandingAtTheEndsWithoutALap() {
    Asked bare = COTTAGE.with("lap_in", "0");
    assertThat(bare.number("end_offset_in")).isCloseTo(0.375, within(DIGITS));
  }

  @ParameterizedTest(name = "sag {0}")
  @ValueSource(strings = {"0", "1/8", "0.374", "3/8"})
  void sisterStock_needsNothingWithinTheTolerance(String sag) {
    Asked level = COTTAGE.with("sag_in", sag);
    for (String result :
        new String[] {
          "length_ft", "stock_ft", "pieces", "nails", "end_offset_in", "near_miss_in"
        }) {
      assertThat(level.number(result)).as(result).isZero();
    }
  }

  @Test
  void sisterStock_needsASisterJustAboveTheTolerance() {
    Asked sagged = COTTAGE.with("sag_in", "0.376");
    assertThat(sagged.number("pieces")).isEqualTo(18);
    assertThat(sagged.number("stock_ft")).isEqualTo(8);
  }

  @ParameterizedTest(name = "{0} ft fits, a sixteenth more takes {1} ft")
  @CsvSource({"8, 10", "10, 12", "12, 14", "14, 16", "16, 18", "18, 20"})
  void sisterStock_stepsUpBeyondEachStick(int stick, double next) {
    Asked fits = full(String.valueOf(stick));
    assertThat(fits.number("stock_ft")).isEqualTo(stick);
    assertThat(fits.number("near_miss_in")).isZero();
    Asked longer = full(stick + "-0 1/16");
    assertThat(longer.number("stock_ft")).isEqualTo(next);
    assertThat(longer.number("near_miss_in")).isCloseTo(1 / 16.0, within(DIGITS));
  }

  @Test
  void sisterStock_callsItANearMissBelowAnInch() {
    assertThat(full("10-0 15/16").number("near_miss_in")).isCloseTo(15 / 16.0, within(DIGITS));
    assertThat(full("10-1 1/16").number("near_miss_in")).isZero();
  }

  @Test
  void sisterStock_hasNoShorterStickThanEightFeet() {
    assertThat(full("6-0 1/16").number("stock_ft")).isEqualTo(8);
    assertThat(full("6-0 1/16").number("near_miss_in")).isZero();
  }

  @ParameterizedTest(name = "{0} ft at {1} in in {2} rows: {3}")
  @CsvSource({
    "8, 12, 2, 18", // 2 × (⌈92 ÷ 12⌉ + 1) = 2 × 9
    "10, 12, 2, 22", // 2 × (⌈116 ÷ 12⌉ + 1) = 2 × 11
    "10, 16, 3, 27", // 3 × (⌈116 ÷ 16⌉ + 1) = 3 × 9
    "12-4, 12, 1, 13", // ⌈144 ÷ 12⌉ + 1: a whole number of spaces
    "12-4 1/8, 12, 1, 14"
  })
  void sisterStock_countsNailsInRows(String span, String spacing, String rows, double nails) {
    Asked nailed = full(span).with("nail_spacing_in", spacing).with("nail_rows", rows);
    assertThat(nailed.number("nails")).isEqualTo(nails);
  }
}
