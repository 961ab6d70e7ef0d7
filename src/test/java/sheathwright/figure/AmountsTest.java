package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.*;

import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What each maker of an amount makes, by sums done in the head. */
final class AmountsTest {

  static Stream<Arguments> sums() {
    return Stream.of(
        sum(() -> sheets(4).times(nailsPerSheet(33)), () -> nails(132)),
        sum(() -> pieces(4).times(nailsPerPiece(12)), () -> nails(48)),
        sum(() -> ft(6).times(nailsPerFoot(2)), () -> nails(12)),
        sum(() -> lb(3).times(nailsPerPound(100)), () -> nails(300)),
        sum(() -> sheets(4).times(hoursPerSheet(0.5)), () -> hours(2)),
        sum(() -> pieces(4).times(hoursPerPiece(0.25)), () -> hours(1)),
        sum(() -> ft(8).times(hoursPerFoot(0.5)), () -> hours(4)),
        sum(() -> squares(3).times(hoursPerSquare(2)), () -> hours(6)),
        sum(() -> sheets(2).times(usdPerSheet(48)), () -> usd(96)),
        sum(() -> pieces(3).times(usdPerPiece(9.5)), () -> usd(28.5)),
        sum(() -> nails(200).times(usdPerNail(0.25)), () -> usd(50)),
        sum(() -> hours(2).times(usdPerHour(65)), () -> usd(130)),
        sum(() -> ft(10).times(usdPerFoot(2.5)), () -> usd(25)),
        sum(() -> tons(2).times(usdPerTon(80)), () -> usd(160)),
        sum(() -> sheets(2).times(lbPerSheet(48)), () -> lb(96)),
        sum(() -> ft(2).times(lbPerFt(30)), () -> lb(60)),
        sum(() -> in(2).times(lbPerInch(30)), () -> lb(60)),
        sum(() -> psf(20).times(sqft(3)), () -> lb(60)),
        sum(() -> psi(2).times(sqft(1)), () -> lb(288)),
        sum(() -> pcf(35).times(ft(2)).times(sqft(3)), () -> lb(210)),
        sum(() -> minutes(90), () -> hours(1.5)),
        sum(() -> squares(1), () -> sqft(100)),
        sum(() -> tons(1), () -> lb(2000)),
        sum(() -> usd(10).times(pct(15)), () -> usd(1.5)),
        sum(() -> ft("16-9"), () -> in(201)));
  }

  private static Arguments sum(Supplier<Figure<?>> sum, Supplier<Figure<?>> inTheHead) {
    return Arguments.of(sum, inTheHead);
  }

  @ParameterizedTest
  @MethodSource("sums")
  void sum_isWhatItIsInTheHead(Supplier<Figure<?>> sum, Supplier<Figure<?>> inTheHead) {
    Figure<?> share = sum.get().dividedBy(inTheHead.get());
    assertThat(share.unit().dimension()).isEqualTo(Units.RATIO.dimension());
    assertThat(share.unit().to(Units.RATIO).applyTo(share.value())).isCloseTo(1, within(1e-12));
  }
}
