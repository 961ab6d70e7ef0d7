package sheathwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sheathwright.forecast.LineFit.Point;

/**
 * Lines against certified ones: NIST Statistical Reference Datasets, linear regression, Norris
 * (calibration of ozone monitors); the data and the certified values from a secondary source.
 */
class LineFitTest {

  private static final double[] X = {
    0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5,
    666.9, 338.0, 447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
    999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
  };
  private static final double[] Y = {
    0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1,
    668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0,
    998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
  };

  @Test
  void theLineOfNorris_isTheCertifiedOne() {
    LineFit line =
        LineFit.of(
            IntStream.range(0, X.length).mapToObj(place -> new Point(X[place], Y[place])).toList());

    assertThat(line.points()).isEqualTo(36);
    assertThat(line.each()).isCloseTo(1.00211681802045, within(1e-12));
    assertThat(line.start()).isCloseTo(-0.262323073774029, within(1e-10));
    assertThat(line.error()).isCloseTo(0.429796848199937e-3, within(1e-13));
  }

  /**
   * By hand: n 2 4 8, mean 14/3; hours 2.6 4.1 8.3, mean 5; products 18, squares 56/3; so 0.964286
   * an hour each, 5 - 0.964286 × 14/3 = 0.5 beside, and residuals 0.171429 -0.257143 0.085714 of
   * which the squares come to 0.102857, over 1 and 56/3 the square of 0.074231.
   */
  @Test
  void threeDaysOfALog_areTheLineWorkedByHand() {
    LineFit line = LineFit.of(List.of(new Point(2, 2.6), new Point(4, 4.1), new Point(8, 8.3)));

    assertThat(line.each()).isCloseTo(18 / (56 / 3d), within(1e-12));
    assertThat(line.start()).isCloseTo(0.5, within(1e-12));
    assertThat(line.error()).isCloseTo(Math.sqrt(0.72 / 7 / (56 / 3d)), within(1e-12));
    assertThat(line.at(8)).isCloseTo(0.5 + 8 * 18 / (56 / 3d), within(1e-12));
  }
}
