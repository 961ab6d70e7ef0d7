package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.sheets;
import static sheathwright.figure.Amounts.strengthPsf;

import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;

/** Feet and pounds per square foot never meet in a sum; the refusal names both. */
class DimensionRefusalTest {

  private static final Figure<Length> SPAN = ft(12).as("span_ft", Units.FOOT);
  private static final Figure<Pressure> LIVE = psf(20).as("live_psf", Units.PSF);
  private static final Figure<Ratio> SHARE = number(0.5).as("share", Units.RATIO);

  static Stream<Arguments> unlikePairs() {
    return Stream.of(
        refused(
            () -> SPAN.plus(LIVE),
            "live_psf in psf cannot be added to span_ft in ft: they do not measure the same thing"),
        refused(
            () -> LIVE.minus(SPAN),
            "span_ft in ft cannot be taken from live_psf in psf: they do not measure the same"
                + " thing"),
        refused(
            () -> SPAN.isAtMost(LIVE),
            "live_psf in psf cannot be compared with span_ft in ft: they do not measure the same"
                + " thing"),
        refused(
            () -> SPAN.isLessThan(LIVE),
            "live_psf in psf cannot be compared with span_ft in ft: they do not measure the same"
                + " thing"),
        refused(
            () -> SPAN.isTheSameAs(SHARE),
            "share in plain numbers cannot be compared with span_ft in ft: they do not measure the"
                + " same thing"),
        refused(
            () -> LIVE.plus(strengthPsf(30)),
            "30 psf strength cannot be added to live_psf in psf: they do not measure the same"
                + " thing"),
        refused(
            () -> SPAN.plus(psf(20)),
            "20 psf cannot be added to span_ft in ft: they do not measure the same thing"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("unlikePairs")
  void sumsAndComparisons_nameBothFigures(ThrowingCallable operation, String message) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(operation)
        .withMessage("%s", message);
  }

  static Stream<Arguments> wrongKinds() {
    return Stream.of(
        refused(() -> SPAN.in(Units.RATIO), "span_ft in ft cannot be given in plain numbers"),
        refused(() -> SPAN.in(Units.PSF), "span_ft in ft cannot be given in psf"),
        refused(
            () -> SPAN.times(LIVE).as("load_lb", Units.POUND),
            "240 lb/ft cannot be given in lb"), // 12 ft × 20 psf
        refused(
            () -> SHARE.within("deck_area_sf", Units.SQUARE_FOOT, Limits.NONE),
            "share in plain numbers cannot be given in sq ft"),
        refused(() -> strengthPsf(30).in(Units.PSF), "30 psf strength cannot be given in psf"),
        refused(
            () -> sheets(3).counting(Units.NAIL),
            "3 sheets cannot be counted: only a pure number can"),
        refused(SPAN::squareRoot, "span_ft in ft has no root of degree 2"),
        refused(SPAN.squared()::cubeRoot, "144 sq ft has no root of degree 3"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("wrongKinds")
  void conversionsAndRoots_nameTheFigureAndBothUnits(ThrowingCallable operation, String message) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(operation)
        .withMessage("%s", message);
  }

  @Test
  void power_refusesALength() {
    // The compiler lets power() follow any figure; its unit does not.
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> SPAN.power(number(2)))
        .withMessage("span_ft in ft cannot be raised to a power: only a pure number can");
  }

  @Test
  void refusedFigures_areStillCheckedForDimension() {
    Figure<Length> refused = Figure.of(Double.NaN, Units.FOOT);
    assertThat(refused.plus(SPAN).refusal()).isPresent();
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> refused.plus(LIVE))
        .withMessage(
            "live_psf in psf cannot be added to a refused figure in ft: they do not measure the"
                + " same thing");
  }

  private static Arguments refused(ThrowingCallable operation, String message) {
    return Arguments.of(operation, message);
  }
}
