package sheathwright.fastening.uplift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.psf;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class UpliftSpacingsTest {

  /** By hand: 144 × 68.2 ÷ (57.3 × 24) and × 16. */
  @ParameterizedTest
  @CsvSource({"24, 7.14, 6", "16, 10.71, 6"})
  void nailSpacing_isThatOfTheLoad(double support, double exact, double nailed) {
    var spacing = UpliftSpacings.nailSpacingForUplift(lb(68.2), psf(57.3), in(support));
    assertThat(spacing.value()).isCloseTo(exact, within(0.02));
    assertThat(UpliftSpacings.practicalNailSpacing(AllowedSpacing.load(spacing)).value())
        .isEqualTo(nailed);
  }

  /** A thesis on sheathing states 2, 1 and 0.5 sq ft over framing 24 in apart; 16 in by hand. */
  @ParameterizedTest
  @CsvSource({
    "12, 24, 2",
    "6, 24, 1",
    "3, 24, 0.5",
    "12, 16, 1.333",
    "6, 16, 0.667",
    "24, 16, 2.667"
  })
  void tributaryArea_isARectangle(double spacing, double lines, double area) {
    assertThat(
            UpliftSpacings.tributaryArea(FastenerLines.spacing(in(spacing)).lines(in(lines)))
                .value())
        .isCloseTo(area, within(0.001));
  }

  /** At the exact spacing the wind's pull on one nail is just its strength. */
  @Test
  void nailSpacing_bringsEachNailToItsStrength() {
    Random random = new Random(20_270_511);
    for (int i = 0; i < 1000; i++) {
      double strength = random.nextDouble(20, 300);
      double uplift = random.nextDouble(10, 120);
      double support = random.nextDouble(12, 32);
      double spacing =
          UpliftSpacings.nailSpacingForUplift(lb(strength), psf(uplift), in(support)).value();
      assertThat(uplift * spacing * support / 144).isCloseTo(strength, within(1e-9 * strength));
    }
  }

  /** Common practice, no source: 12, 6, 4, 3; both sides of each. */
  @ParameterizedTest(name = "{0}, {1} at most: {2}")
  @CsvSource({
    "48, 12, 12",
    "12, 12, 12",
    "11.99, 12, 6",
    "12, 6, 6",
    "6, 12, 6",
    "5.99, 12, 4",
    "4, 12, 4",
    "3.99, 12, 3",
    "3, 12, 3",
    "30, 24, 12"
  })
  void practicalNailSpacing_isTheNextBelow(double exact, double most, double nailed) {
    assertThat(
            UpliftSpacings.practicalNailSpacing(AllowedSpacing.load(in(exact)).code(in(most)))
                .value())
        .isEqualTo(nailed);
  }

  @Test
  void practicalNailSpacing_refusesWhereWoodSplits() {
    assertThat(Asked.of("practical_nail_spacing").with("spacing_in", "2.99").refusal())
        .contains(
            "nails would stand closer than 3 in, where wood splits; take a nail that holds more,"
                + " such as a ring-shank nail");
  }
}
