package sheathwright.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CommonUnitTest {

  /**
   * By hand: 96, 31-7/8 and 1/8 in are 768, 255 and 1 eighths, so that three pieces and two cuts
   * are 767.
   */
  @Test
  void lengths_areWholeMultiplesOfTheirCommonUnit() {
    CommonUnit unit = CommonUnit.of(96, 31.875, 0.125, 0);
    assertThat(unit.units(96)).isEqualTo(768);
    assertThat(3 * unit.units(31.875) + 2 * unit.units(0.125)).isEqualTo(767);
    assertThat(unit.length(255)).isEqualTo(31.875);
  }

  @Test
  void decimals_keepTheirPlaces() {
    CommonUnit unit = CommonUnit.of(144.222, 168, 0.125);
    assertThat(unit.length(unit.units(144.222))).isEqualTo(144.222);
    assertThat(unit.length(1)).isEqualTo(0.001);
  }

  @Test
  void nothingButZeros_isMeasuredAnyhow() {
    assertThat(CommonUnit.of(0, 0).units(0)).isZero();
  }
}
