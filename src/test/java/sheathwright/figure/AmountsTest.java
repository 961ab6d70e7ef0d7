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

  private static Arguments said(Supplier<Figure<?>> amount, String text) {
    return Arguments.of(amount, text);
  }

  static Stream<Arguments> amounts() {
    return Stream.of(
        said(() -> in(2), "2 in"),
        said(() -> in("1-3/8"), "1-3/8 in"),
        said(() -> ft(2), "2' 0\""),
        said(() -> ft("16-9"), "16' 9\""),
        said(() -> sqft(2), "2 sq ft"),
        said(() -> squares(3), "3 squares"),
        said(() -> psf(20), "20 psf"),
        said(() -> strengthPsf(20), "20 psf strength"),
        said(() -> pcf(35), "35 pcf"),
        said(() -> mph(115), "115 mph"),
        said(() -> psi(900), "900 psi"),
        said(() -> lb(30), "30 lb"),
        said(() -> tons(2), "2 tons"),
        said(() -> lbPerInch(30), "30 lb/in"),
        said(() -> lbPerFt(30), "30 lb/ft"),
        said(() -> lbPerSheet(48), "48 lb/sheet"),
        said(() -> pct(5), "5 %"),
        said(() -> number(2), "2"),
        said(() -> pitch(6), "6 in 12"),
        said(() -> usd(2), "$2.00"),
        said(() -> usdPerSheet(48), "$48.00/sheet"),
        said(() -> usdPerNail(0.25), "$0.25/nail"),
        said(() -> usdPerHour(65), "$65.00/h"),
        said(() -> usdPerTon(80), "$80.00/ton"),
        said(() -> usdPerPiece(9.5), "$9.50/piece"),
        said(() -> usdPerFoot(2.5), "$2.50/ft"),
        said(() -> nails(3), "3 nails"),
        said(() -> nailsPerPound(100), "100 nails/lb"),
        said(() -> nailsPerSheet(33), "33 nails/sheet"),
        said(() -> nailsPerPiece(12), "12 nails/piece"),
        said(() -> nailsPerFoot(2), "2 nails/ft"),
        said(() -> hours(2), "2 h"),
        said(() -> minutes(90), "1.5 h"),
        said(() -> hoursPerSheet(0.5), "0.5 h/sheet"),
        said(() -> hoursPerPiece(0.25), "0.25 h/piece"),
        said(() -> hoursPerFoot(0.5), "0.5 h/ft"),
        said(() -> hoursPerSquare(2), "2 h/square"),
        said(() -> sheets(4), "4 sheets"),
        said(() -> pieces(4), "4 pieces"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("amounts")
  void amount_isSaidWithItsUnit(Supplier<Figure<?>> amount, String text) {
    assertThat(amount.get()).hasToString(text);
    assertThat(amount.get().step().isLiteral()).isTrue();
  }
}
