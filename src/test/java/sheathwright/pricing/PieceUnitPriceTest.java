package sheathwright.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The lumber prices of the invented demo firm; the arithmetic is common practice, no source. */
class PieceUnitPriceTest {

  /** Doubles against exact decimals: a billionth of a dollar. */
  private static final double DIGITS = 1e-9;

  private static final Asked SISTER =
      Asked.of("piece_unit_price")
          .with("material_usd", "17.10")
          .with("nails", "26")
          .with("nail_usd", "0.026")
          .with("tax_pct", "6.5")
          .with("hours", "1.5")
          .with("labor_usd_per_h", "46.00")
          .with("overhead_pct", "18")
          .with("margin_pct", "12");

  /** The last three columns are printed in the demo firm's price list, to four decimals. */
  @ParameterizedTest(name = "{0}: ${6}")
  @CsvSource({
    "2x8 of 14 ft as a sister, 17.10, 26, 1.5, 87.9314, 117.9081, 118",
    "a rafter shimmed, 1.00, 0, 0.25, 12.5650, 16.8485, 17",
    "half a 2x4 of 8 ft as a scab, 2.05, 10, 0.30, 16.2601, 21.8034, 22",
    "a panel clip, 0.24, 0, 0.01, 0.7156, 0.9596, 1"
  })
  void pieceUnitPrice_isTheDemoFirmsPriceList(
      String what,
      String material,
      String nails,
      String hours,
      double listedDirect,
      double listedExact,
      double listedQuote) {
    BigDecimal direct =
        of(material)
            .add(of(nails).multiply(of("0.026")))
            .multiply(of("1.065"))
            .add(of(hours).multiply(of("46")));
    double exact = direct.multiply(of("1.18")).doubleValue() / 0.88;

    Asked price = SISTER.with("material_usd", material).with("nails", nails).with("hours", hours);
    assertThat(price.number("direct_usd")).isCloseTo(direct.doubleValue(), within(DIGITS));
    assertThat(price.number("exact_usd")).isCloseTo(exact, within(DIGITS));
    assertThat(price.number("quoted_usd")).isEqualTo(Math.ceil(exact)).isEqualTo(listedQuote);
    assertThat(price.number("direct_usd")).isCloseTo(listedDirect, within(0.00005));
    assertThat(price.number("exact_usd")).isCloseTo(listedExact, within(0.00005));
  }

  @Test
  void pieceUnitPrice_taxesMaterialAndNailsButNotLabor() {
    Asked untaxed = SISTER.with("tax_pct", "0");
    assertThat(SISTER.number("direct_usd") - untaxed.number("direct_usd"))
        .isCloseTo(0.065 * (17.10 + 26 * 0.026), within(DIGITS));
  }

  @Test
  void pieceUnitPrice_takesMarginAsAShareOfThePriceNotAsMarkup() {
    double cost = SISTER.number("direct_usd") * 1.18;
    double price = SISTER.number("exact_usd");
    assertThat((price - cost) / price).isCloseTo(0.12, within(DIGITS));
    assertThat(price).isGreaterThan(cost * 1.12 + 1);
  }

  private static BigDecimal of(String exact) {
    return new BigDecimal(exact);
  }
}
