package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What limits say of what is missing or wrong, and which limits lie within others. */
class LimitsTextTest {

  private static final Limits RANGE = Limits.between(4, 48, "16 is usual");
  private static final Limits WHOLE = Limits.whole(1, 4, "");
  private static final Limits EITHER = Limits.either(180, 240, "");
  private static final Limits OPEN = new Limits(0, 6, Limits.Kind.IF_MEASURED, "");

  private static String missing(Limits limits, Unit<?> unit) {
    return limits.missing("it", unit).reason();
  }

  @Test
  void missing_saysWhatMayBeGiven() {
    assertThat(missing(RANGE, Units.INCH))
        .isEqualTo("it is missing; give from 4 to 48 inches, 16 is usual");
    assertThat(missing(WHOLE, Units.SHEET))
        .isEqualTo("it is missing; give a whole number from 1 to 4 sheets");
    assertThat(missing(EITHER, Units.RATIO)).isEqualTo("it is missing; give 180 or 240");
    assertThat(missing(OPEN, Units.FOOT)).isEqualTo("it is missing; give from 0 to 6 feet");
    assertThat(missing(Limits.NONE, Units.USD))
        .isEqualTo("it is missing; give a number of dollars");
    assertThat(missing(Limits.NONE, Units.PSF)).isEqualTo("it is missing; give a number of psf");
    assertThat(missing(Limits.NONE, Units.RATIO)).isEqualTo("it is missing; give a number");
  }

  @Test
  void refusal_showsInchesAsATapeDoes() {
    assertThat(RANGE.refusal("gap_in", 1.375, Units.INCH).reason())
        .isEqualTo("gap_in is 1-3/8; it must be from 4 to 48, 16 is usual");
    assertThat(OPEN.refusal("gap_ft", 6.375, Units.FOOT).reason())
        .isEqualTo("gap_ft is 6.375; it must be from 0 to 6");
  }

  @Test
  void ends_standWithTheirUnit() {
    assertThat(RANGE.ends(Units.INCH)).isEqualTo("4 in to 48 in");
    assertThat(WHOLE.ends(Units.SHEET)).isEqualTo("1 to 4");
    assertThat(EITHER.ends(Units.PSF)).isEqualTo("180 psf or 240 psf");
  }

  @Test
  void exist_whereOneEndIsEnough() {
    double far = Double.POSITIVE_INFINITY;
    assertThat(Limits.between(0, far, "").exist()).isTrue();
    assertThat(Limits.between(-far, 0, "").exist()).isTrue();
    assertThat(Limits.between(-far, far, "").exist()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "0, 1.5, true", // the same
    "0.1, 1.4, true",
    "-0.1, 1.5, false",
    "0, 1.6, false"
  })
  void aNarrowerRange_liesWithin(double least, double most, boolean isWithin) {
    assertThat(Limits.between(least, most, "").lieWithin(Limits.between(0, 1.5, "")))
        .isEqualTo(isWithin);
  }

  @Test
  void aRange_neverLiesWithinWholeNumbers() {
    assertThat(Limits.between(2, 3, "").lieWithin(WHOLE)).isFalse();
    assertThat(Limits.whole(2, 3, "").lieWithin(WHOLE)).isTrue();
    assertThat(Limits.whole(2, 3, "").lieWithin(Limits.between(1, 4, ""))).isTrue();
    assertThat(Limits.either(1, 4, "").lieWithin(WHOLE)).isFalse();
    assertThat(WHOLE.lieWithin(Limits.NONE)).isTrue();
  }

  @Test
  void and_keepsWholeNumbersWhole() {
    assertThat(WHOLE.and(Limits.between(2, 9, "another's"))).isEqualTo(Limits.whole(2, 4, ""));
    assertThat(Limits.between(2, 9, "its own").and(WHOLE)).isEqualTo(Limits.whole(2, 4, "its own"));
    assertThat(Limits.between(2, 9, "its own").and(Limits.between(1, 3, "")))
        .isEqualTo(Limits.between(2, 3, "its own"));
  }

  @Test
  void aNumberThatNobodyMeasured_hasTheSameRange() {
    assertThat(OPEN.inWords()).isEqualTo("from 0 to 6");
    assertThat(OPEN.allow(6)).isTrue();
    assertThat(OPEN.allow(6.1)).isFalse();
    assertThat(OPEN.allow(-0.1)).isFalse();
  }

  /** The guard behind gives way to one that allows no more, under the same name. */
  @Test
  void aNarrowerGuard_takesThePlaceOfTheWiderOne() {
    Figure<Quantity.Length> wide =
        Amounts.in(7).within("first_gap_in", Units.INCH, Limits.between(0, 100, "wide"));
    Figure<Quantity.Length> narrow =
        wide.symbol("g").within("gap_in", Units.INCH, Limits.between(0, 6, "narrow"));
    assertThat(narrow).hasToString("refused: first_gap_in is 7; it must be from 0 to 6, narrow");
    assertThat(narrow.name()).isEqualTo("first_gap_in");
    assertThat(narrow.symbol()).isEqualTo("g");
    assertThat(narrow.step().operands()).isEqualTo(wide.step().operands());
  }

  @Test
  void anotherGuard_standsOnTopOfTheFirst() {
    Limits narrow = Limits.between(0, 6, "");
    Figure<Quantity.Length> wide =
        Amounts.in(5).within("gap_in", Units.INCH, Limits.between(0, 10, ""));
    assertThat(wide.within("width_in", Units.INCH, narrow).step().operands()).containsExactly(wide);
    assertThat(wide.within("gap_in", Units.INCH, Limits.between(0, 11, "")).step().operands())
        .containsExactly(wide);
    Figure<Quantity.Length> overhang =
        Amounts.in(5).within("overhang_in", Units.INCH, Limits.between(0, 10, ""));
    assertThat(overhang.within("hang_in", Units.INCH, narrow).step().operands())
        .containsExactly(overhang);
    assertThat(wide.within("gap_in", Units.FOOT, narrow).step().operands())
        .allMatch(each -> each.step().isConversion());
  }

  @Test
  void and_takesNothingFromWhatIsNotLimited() {
    assertThat(OPEN.and(Limits.NONE)).isEqualTo(OPEN);
    assertThat(Limits.NONE.and(OPEN)).isEqualTo(OPEN);
    assertThat(EITHER.and(Limits.NONE)).isEqualTo(EITHER);
  }
}
