package sheathwright.pricing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

/** By hand: 38.85 squares of two layers at 240 lb a square, and 121 sheets of 45 lb. */
class HaulageTest {

  @Test
  void disposalWeight_isCoveringAndSheets() {
    assertThat(
            Asked.of("disposal_weight")
                .with("roof_squares", "38.85")
                .with("layers", "2")
                .with("covering_psf", "2.4")
                .with("sheets", "121")
                .number("disposal_tons"))
        .isCloseTo((18_648 + 5_445) / 2_000.0, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "12.0465, 3, 1398.813", // 3 × 465 + 0.0465 × 82
    "15.9,    3, 1714.8", // 3.9 tons over at 82 are 319.80, under 465
    "0,       1, 465",
    "4,       1, 465",
  })
  void containers_areTheCheaperNumber(String tons, double containers, double cost) {
    assertThat(hauled(tons, "82").number("containers")).isEqualTo(containers);
    assertThat(hauled(tons, "82").number("cost_usd")).isCloseTo(cost, within(1e-6));
  }

  /** At 200 dollars a ton, 2.4 tons over cost more than another container. */
  @Test
  void containers_areOneMoreWhereTheRestCostsMore() {
    assertThat(hauled("14.4", "200").number("containers")).isEqualTo(4);
    assertThat(hauled("14.4", "200").number("cost_usd")).isEqualTo(1_860);
  }

  private static Asked hauled(String tons, String over) {
    return Asked.of("containers")
        .with("tons", tons)
        .with("container_tons", "4")
        .with("container_usd", "465")
        .with("over_usd_per_ton", over);
  }

  @ParameterizedTest
  @CsvSource({"1, 18.571428571", "0.5, 37.142857143", "0.1, 100"})
  void rainThreshold_isWhereBothChoicesCostTheSame(String open, double chance) {
    assertThat(
            Asked.of("rain_threshold")
                .with("lost_day_usd", "780")
                .with("damage_usd", "4200")
                .with("open_share", open)
                .number("chance_pct"))
        .isCloseTo(chance, within(1e-8));
  }
}
