package sheathwright.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** Work by the foot of the invented demo firm; the arithmetic is common practice, no source. */
class FootUnitPriceTest {

  private static final Asked BLOCK =
      Asked.of("foot_unit_price")
          .with("material_usd", "0.5125")
          .with("nails", "2")
          .with("nail_usd", "0.026")
          .with("tax_pct", "6.5")
          .with("hours", "0.05")
          .with("labor_usd_per_h", "46.00")
          .with("overhead_pct", "18")
          .with("margin_pct", "12");

  /**
   * By hand. A minute of sawing: 46 / 60 = 0.7667; × 1.18 / 0.88 = 1.0280. A foot of block: (4.10 /
   * 8 + 2 × 0.026) × 1.065 + 0.05 × 46 = 0.6012 + 2.30 = 2.9012; × 1.18 / 0.88 = 3.8902.
   */
  @ParameterizedTest(name = "{0}: ${5}")
  @CsvSource({
    "a tight joint sawn, 0, 0, 0.016666666666666666, 0.7667, 1.05, 1.0280",
    "a bare edge blocked, 0.5125, 2, 0.05, 2.9012, 3.90, 3.8902"
  })
  void footUnitPrice_isTheDemoFirmsPriceList(
      String what,
      String material,
      String nails,
      String hours,
      double direct,
      double quoted,
      double exact) {
    Asked price = BLOCK.with("material_usd", material).with("nails", nails).with("hours", hours);
    assertThat(price.number("direct_usd")).isCloseTo(direct, within(0.00005));
    assertThat(price.number("exact_usd")).isCloseTo(exact, within(0.00005));
    assertThat(price.number("quoted_usd")).isEqualTo(quoted);
  }

  @ParameterizedTest
  @CsvSource({"0.01, 3.90", "0.25, 4.00", "1, 4.00", "5, 5.00"})
  void footUnitPrice_isUpToTheNextStep(String step, double quoted) {
    assertThat(BLOCK.with("round_usd", step).number("quoted_usd")).isEqualTo(quoted);
  }

  /** A price that is a multiple of the step already stays: no cent of dust lifts it a step. */
  @Test
  void footUnitPrice_leavesAMultipleOfTheStep() {
    Asked plain =
        BLOCK.with("nails", "0").with("hours", "0").with("tax_pct", "0").with("overhead_pct", "0");
    for (int steps = 1; steps < 400; steps++) {
      String usd = new BigDecimal("0.05").multiply(BigDecimal.valueOf(steps)).toPlainString();
      assertThat(plain.with("margin_pct", "0").with("material_usd", usd).number("quoted_usd"))
          .isEqualTo(Double.parseDouble(usd));
    }
  }

  @Test
  void footUnitPrice_refusesAStepThatIsNone() {
    assertThat(BLOCK.with("round_usd", "0").refusal())
        .hasValueSatisfying(
            reason -> assertThat(reason).startsWith("round_usd is 0; it must be from 0.01 to 10"));
  }
}
