package sheathwright.leveling.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Amounts;
import sheathwright.leveling.plan.Shims.ShimTaper;

class ShimsTest {

  private static double thickness(double buildUp) {
    return Shims.shimThickness(Amounts.in(buildUp), Shims.Ripped.to(Amounts.in(0.0625))).value();
  }

  @Test
  void shimThickness_isTheNextSixteenth() {
    assertThat(thickness(0.25)).isEqualTo(0.25);
    assertThat(thickness(0.2501)).isEqualTo(0.3125);
    assertThat(thickness(-1)).isZero();
  }

  @Test
  void shimThickness_leavesNothingMissingAndAddsLessThanAStep() {
    Random random = new Random(4);
    for (int i = 0; i < 2000; i++) {
      double buildUp = random.nextDouble(0, 1);
      double over = thickness(buildUp) - buildUp;
      assertThat(over).isBetween(-1e-7, 0.0625);
      assertThat(thickness(buildUp) * 16).isEqualTo(Math.rint(thickness(buildUp) * 16));
    }
  }

  private static TaperedShim strip(double feet, double first, double last) {
    return TaperedShim.length(Amounts.ft(feet))
        .firstThickness(Amounts.in(first))
        .lastThickness(Amounts.in(last));
  }

  @Test
  void shimTaper_byHand() {
    ShimTaper gentle = Shims.shimTaper(strip(2, 0.375, 0), Amounts.pitch(0.25));
    assertThat(gentle.taper().value()).isCloseTo(0.1875, within(1e-12)); // 3/8 in in 2 ft
    assertThat(gentle.gradual().plain()).isEqualTo("yes");
    ShimTaper steep = Shims.shimTaper(strip(1, 0, 0.375), Amounts.pitch(0.25));
    assertThat(steep.steepness().ratio().value()).isCloseTo(1.5, within(1e-12));
    assertThat(steep.gradual().plain()).isEqualTo("no");
  }

  @Test
  void shimNail_growsByTheStrip() {
    assertThat(Shims.shimNail(Amounts.in(2.5), Shims.Strip.of(Amounts.in(0.375))).value())
        .isEqualTo(2.875);
  }
}
