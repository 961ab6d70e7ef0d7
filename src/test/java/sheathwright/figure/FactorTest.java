package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;

/** Exact ratios, by the arithmetic of fractions. */
class FactorTest {

  private static final long BIG = 1_000_000_000_000_000_000L;

  @Test
  void aRatio_isInItsLowestTerms() {
    assertThat(new Factor(6, 4)).isEqualTo(new Factor(3, 2));
    assertThat(new Factor(12, 12)).isEqualTo(Factor.ONE);
    assertThat(new Factor(6, 4).over()).isEqualTo(3);
    assertThat(new Factor(6, 4).under()).isEqualTo(2);
  }

  @Test
  void ratios_multiplyAndDivideAsFractionsDo() {
    assertThat(new Factor(2, 3).times(new Factor(3, 4))).isEqualTo(new Factor(1, 2));
    assertThat(new Factor(2, 3).dividedBy(new Factor(4, 5))).isEqualTo(new Factor(5, 6));
    assertThat(new Factor(3, 2).raisedTo(3)).isEqualTo(new Factor(27, 8));
    assertThat(new Factor(3, 2).raisedTo(0)).isEqualTo(Factor.ONE);
    assertThat(new Factor(3, 2).raisedTo(-2)).isEqualTo(new Factor(4, 9));
  }

  @Test
  void whatCancels_neverOverflows() {
    assertThat(new Factor(BIG, 7).times(new Factor(7, BIG))).isEqualTo(Factor.ONE);
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> Factor.of(BIG).times(Factor.of(BIG)));
    assertThatExceptionOfType(ArithmeticException.class)
        .isThrownBy(() -> Factor.oneIn(BIG).times(Factor.oneIn(BIG)));
  }

  @Test
  void applyTo_multipliesThenDivides() {
    assertThat(Factor.of(12).applyTo(2.5)).isEqualTo(30);
    assertThat(Factor.oneIn(12).applyTo(30)).isEqualTo(2.5);
    assertThat(new Factor(25, 3).applyTo(6)).isEqualTo(50);
    assertThat(Factor.ONE.applyTo(0.1)).isEqualTo(0.1);
  }
}
