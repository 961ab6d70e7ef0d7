package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.*;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What each maker of an amount makes, by sums done in the head. */
final class AmountsTest {

  static Stream<Arguments> sums() {
    return Stream.of(
        Arguments.of(sheets(4).times(nailsPerSheet(33)), nails(132)),
        Arguments.of(pieces(4).times(nailsPerPiece(12)), nails(48)),
        Arguments.of(ft(6).times(nailsPerFoot(2)), nails(12)),
        Arguments.of(lb(3).times(nailsPerPound(100)), nails(300)),
        Arguments.of(sheets(4).times(hoursPerSheet(0.5)), hours(2)),
        Arguments.of(pieces(4).times(hoursPerPiece(0.25)), hours(1)),
        Arguments.of(ft(8).times(hoursPerFoot(0.5)), hours(4)),
        Arguments.of(squares(3).times(hoursPerSquare(2)), hours(6)),
        Arguments.of(sheets(2).times(usdPerSheet(48)), usd(96)),
        Arguments.of(pieces(3).times(usdPerPiece(9.5)), usd(28.5)),
        Arguments.of(nails(200).times(usdPerNail(0.25)), usd(50)),
        Arguments.of(hours(2).times(usdPerHour(65)), usd(130)),
        Arguments.of(ft(10).times(usdPerFoot(2.5)), usd(25)),
        Arguments.of(tons(2).times(usdPerTon(80)), usd(160)),
        Arguments.of(sheets(2).times(lbPerSheet(48)), lb(96)),
        Arguments.of(ft(2).times(lbPerFt(30)), lb(60)),
        Arguments.of(in(2).times(lbPerInch(30)), lb(60)),
        Arguments.of(psf(20).times(sqft(3)), lb(60)),
        Arguments.of(psi(2).times(sqft(1)), lb(288)),
        Arguments.of(pcf(35).times(ft(2)).times(sqft(3)), lb(210)),
        Arguments.of(minutes(90), hours(1.5)),
        Arguments.of(squares(1), sqft(100)),
        Arguments.of(tons(1), lb(2000)),
        Arguments.of(usd(10).times(pct(15)), usd(1.5)),
        Arguments.of(ft("16-9"), in(201)));
  }

  @ParameterizedTest
  @MethodSource("sums")
  void sum_isWhatItIsInTheHead(Figure<?> sum, Figure<?> inTheHead) {
    Figure<?> share = sum.dividedBy(inTheHead);
    assertThat(share.unit().dimension()).isEqualTo(Units.RATIO.dimension());
    assertThat(share.unit().to(Units.RATIO).applyTo(share.value())).isCloseTo(1, within(1e-12));
  }
}
