package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.psf;

import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.framing.rafter.RafterSpan.Governs;
import sheathwright.loads.UniformLoad;
import sheathwright.wood.Grade;
import sheathwright.wood.Lumber;
import sheathwright.wood.LumberSize;
import sheathwright.wood.Species;
import sheathwright.wood.ValueSet;

/** What must hold for every rafter, whatever the tables say. */
class RafterSymmetriesTest {

  private static final double LAST_BITS = 1e-9;

  private record Wood(Species species, Grade grade, LumberSize size) {

    RafterSpan span(double spacing, double live, double dead, double limit) {
      return Rafters.rafterMaxSpan(
          Lumber.of(species, grade, size, ValueSet.NDS2018),
          UniformLoad.spacing(in(spacing)).live(psf(live)).dead(psf(dead)),
          RafterLoad.SNOW,
          number(limit));
    }

    double inches(double spacing, double live, double dead, double limit) {
      return span(spacing, live, dead, limit).span().value();
    }

    boolean isHeld() {
      return span(16, 20, 10, 180).span().refusal().isEmpty();
    }

    RafterCheck check(double spacing, double live, double dead, double limit, double inches) {
      return Rafters.rafterCheck(
          Lumber.of(species, grade, size, ValueSet.NDS2018),
          UniformLoad.spacing(in(spacing)).live(psf(live)).dead(psf(dead)),
          RafterLoad.SNOW,
          number(limit),
          ClearSpan.of(in(inches)));
    }
  }

  /** Every wood that today's values hold. */
  static Stream<Arguments> woods() {
    return everyWord().filter(Wood::isHeld).map(Arguments::of);
  }

  private static Stream<Wood> everyWord() {
    return Arrays.stream(Species.values())
        .flatMap(
            species ->
                Arrays.stream(Grade.values())
                    .flatMap(
                        grade ->
                            Arrays.stream(LumberSize.values())
                                .map(size -> new Wood(species, grade, size))));
  }

  @ParameterizedTest
  @MethodSource("woods")
  void atItsSpan_whatGovernsIsUsedUpExactly(Wood wood) {
    for (double dead : new double[] {0, 10, 20, 60}) {
      RafterSpan span = wood.span(24, 50, dead, 240);
      RafterCheck check = wood.check(24, 50, dead, 240, span.span().value());
      boolean bends = span.governs().value() == Governs.BENDING;
      double governing = (bends ? check.bending() : check.deflection()).ratio().value();
      double other = (bends ? check.deflection() : check.bending()).ratio().value();
      assertThat(governing).isCloseTo(1, within(LAST_BITS));
      assertThat(other).isLessThanOrEqualTo(1 + LAST_BITS);
    }
  }

  @ParameterizedTest
  @MethodSource("woods")
  void span_fallsWithLoadSpacingAndStiffness(Wood wood) {
    double span = wood.inches(16, 30, 10, 180);
    assertThat(wood.inches(16, 31, 10, 180)).isLessThan(span);
    assertThat(wood.inches(19.2, 30, 10, 180)).isLessThan(span);
    assertThat(wood.inches(16, 30, 11, 180)).isLessThanOrEqualTo(span);
    assertThat(wood.inches(16, 30, 10, 240)).isLessThanOrEqualTo(span);
  }

  @ParameterizedTest
  @MethodSource("woods")
  void span_growsWithDepth(Wood wood) {
    int next = wood.size().ordinal() + 1;
    if (next == LumberSize.values().length) {
      return;
    }
    Wood deeper = new Wood(wood.species(), wood.grade(), LumberSize.values()[next]);
    if (deeper.isHeld()) {
      assertThat(deeper.inches(16, 30, 10, 180)).isGreaterThan(wood.inches(16, 30, 10, 180));
    }
  }

  @ParameterizedTest
  @MethodSource("woods")
  void span_dependsOnSpacingTimesLoadAlone(Wood wood) {
    // Both below 24 in, so that the repetitive factor is the same.
    assertThat(wood.inches(12, 40, 20, 180))
        .isCloseTo(wood.inches(24, 20, 10, 180), within(LAST_BITS * 400));
  }

  @ParameterizedTest
  @MethodSource("woods")
  void bendingSpan_halvesUnderFourTimesTheLoad(Wood wood) {
    // Dead load alone makes bending govern in both.
    RafterSpan light = wood.span(24, 5, 25, 180);
    RafterSpan heavy = wood.span(24, 20, 100, 180);
    assertThat(light.governs().value()).isEqualTo(Governs.BENDING);
    assertThat(heavy.governs().value()).isEqualTo(Governs.BENDING);
    assertThat(light.span().value() / heavy.span().value()).isCloseTo(2, within(LAST_BITS));
  }

  @ParameterizedTest
  @MethodSource("woods")
  void ratios_growWithThePowersOfTheSpan(Wood wood) {
    RafterCheck shorter = wood.check(16, 30, 10, 180, 60);
    RafterCheck longer = wood.check(16, 30, 10, 180, 120);
    assertThat(ratio(longer.bending(), shorter.bending())).isCloseTo(4, within(LAST_BITS));
    assertThat(ratio(longer.shear(), shorter.shear())).isCloseTo(2, within(LAST_BITS));
    assertThat(ratio(longer.bearing(), shorter.bearing())).isCloseTo(2, within(LAST_BITS));
    assertThat(ratio(longer.deflection(), shorter.deflection())).isCloseTo(8, within(LAST_BITS));
  }

  private static double ratio(sheathwright.figure.Check one, sheathwright.figure.Check other) {
    return one.ratio().value() / other.ratio().value();
  }
}
