package sheathwright.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** The sheet prices of the invented demo firm; the arithmetic is common practice, no source. */
class SheetUnitPriceTest {

  /** Doubles against exact decimals: a billionth of a dollar. */
  private static final double DIGITS = 1e-9;

  private static final Asked FIRM =
      Asked.of("sheet_unit_price")
          .with("sheet_usd", "38.50")
          .with("waste_pct", "5")
          .with("nails", "43")
          .with("nail_usd", "0.020")
          .with("tax_pct", "6.5")
          .with("hours", "0.90")
          .with("labor_usd_per_h", "46.00")
          .with("disposal_lb", "45")
          .with("disposal_usd_per_ton", "78.00")
          .with("overhead_pct", "18")
          .with("margin_pct", "12");

  /** The last three columns are printed in the demo firm's price list, to four decimals. */
  @ParameterizedTest(name = "{0}: ${9}")
  @CsvSource({
    "15/32 at 16 in scattered, 38.50, 5, 43, 0.020, 0.90, 45, 0, 87.1235, 116.8247, 117",
    "15/32 at 16 in foreseen, 38.50, 5, 43, 0.020, 0.55, 45, 0, 71.0235, 95.2361, 96",
    "7/16 at 24 in scattered with 4 clips, 19.80, 5, 33, 0.016, 0.90, 45, 0.96, 66.8811, 89.6814, 90",
    "7/16 at 24 in foreseen with 4 clips, 19.80, 5, 33, 0.016, 0.55, 45, 0.96, 50.7811, 68.0928, 69",
    "15/32 ring shank scattered, 38.50, 5, 45, 0.034, 0.90, 45, 0, 87.8371, 117.7815, 118",
    "15/32 ring shank foreseen, 38.50, 5, 45, 0.034, 0.55, 45, 0, 71.7371, 96.1929, 97",
    "full re-deck with 4 clips, 38.50, 5, 33, 0.020, 0.62, 45, 0.96, 75.0529, 100.6391, 101",
    "re-nail only, 0, 0, 45, 0.034, 0.30, 0, 0, 15.4294, 20.6895, 21",
    "refasten only, 0, 0, 19, 0.016, 0.12, 0, 0, 5.8438, 7.8360, 8",
    "plywood a quarter dearer, 48.125, 5, 43, 0.020, 0.90, 45, 0, 97.8867, 131.2571, 132"
  })
  void sheetUnitPrice_isTheDemoFirmsPriceList(
      String what,
      String sheet,
      String waste,
      String nails,
      String nail,
      String hours,
      String weight,
      String extras,
      double listedDirect,
      double listedExact,
      double listedQuote) {
    BigDecimal material =
        of(sheet)
            .multiply(of(waste).movePointLeft(2).add(BigDecimal.ONE))
            .add(of(nails).multiply(of(nail)))
            .add(of(extras));
    BigDecimal direct =
        material
            .multiply(of("1.065"))
            .add(of(hours).multiply(of("46")))
            .add(of(weight).multiply(of("78")).divide(of("2000")));
    double exact = direct.multiply(of("1.18")).doubleValue() / 0.88;

    Asked price =
        FIRM.with("sheet_usd", sheet)
            .with("waste_pct", waste)
            .with("nails", nails)
            .with("nail_usd", nail)
            .with("hours", hours)
            .with("disposal_lb", weight)
            .with("extras_usd", extras);
    assertThat(price.number("direct_usd")).isCloseTo(direct.doubleValue(), within(DIGITS));
    assertThat(price.number("exact_usd")).isCloseTo(exact, within(DIGITS));
    assertThat(price.number("quoted_usd")).isEqualTo(Math.ceil(exact)).isEqualTo(listedQuote);
    assertThat(price.number("direct_usd")).isCloseTo(listedDirect, within(0.00005));
    assertThat(price.number("exact_usd")).isCloseTo(listedExact, within(0.00005));
  }

  @Test
  void sheetUnitPrice_takesNoExtrasWhereNoneAreGiven() {
    assertThat(FIRM.number("exact_usd"))
        .isEqualTo(FIRM.with("extras_usd", "0").number("exact_usd"));
    // A dollar of clips is taxed, carries overhead and margin: 1.065 × 1.18 ÷ 0.88.
    assertThat(FIRM.with("extras_usd", "1").number("exact_usd") - FIRM.number("exact_usd"))
        .isCloseTo(1.065 * 1.18 / 0.88, within(DIGITS));
  }

  @Test
  void sheetUnitPrice_takesMarginAsAShareOfThePriceNotAsMarkup() {
    double cost = FIRM.number("direct_usd") * 1.18;
    double price = FIRM.number("exact_usd");
    assertThat((price - cost) / price).isCloseTo(0.12, within(DIGITS));
    // As a markup the same 12 % would come to 102.8058 × 1.12 = 115.14, $1.68 less.
    assertThat(cost).isCloseTo(102.8058, within(0.00005));
    assertThat(price - cost * 1.12).isCloseTo(1.68, within(0.005));
  }

  @Test
  void sheetUnitPrice_leavesAWholeDollarAsItIs() {
    Asked bare =
        FIRM.with("waste_pct", "0")
            .with("nails", "0")
            .with("tax_pct", "0")
            .with("hours", "0")
            .with("disposal_lb", "0")
            .with("overhead_pct", "0");
    for (int dollars = 1; dollars <= 1000; dollars++) {
      // 0.88 × dollars ÷ (1 − 0.12) is so many dollars, though neither is exact in binary.
      Asked whole = bare.with("sheet_usd", of("0.88").multiply(new BigDecimal(dollars)).toString());
      assertThat(whole.number("quoted_usd")).isEqualTo(dollars);
    }
    assertThat(bare.with("sheet_usd", "88.01").number("quoted_usd")).isEqualTo(101);
  }

  private static BigDecimal of(String exact) {
    return new BigDecimal(exact);
  }
}
