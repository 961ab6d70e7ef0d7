package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Numbers are let through the columns of a thing, each under its name and within its limits. */
class ColumnsNumbersTest {

  private static final Limits ALLOWED = Limits.between(1, 96, "a plank is short");
  private static final Columns COLUMNS = Columns.of(Plank.class);

  /** A plank whose guard stands in the tests. */
  public record Plank(
      @Column(value = "length_in", least = 1, most = 96, rule = "a plank is short", symbol = "L")
          Figure<Length> length,
      @Column(value = "nail_usd", unit = "$/nail", preset = "1/4") Figure<Per<Money, Nails>> nail,
      @Column(
              value = "bow_in",
              least = 0,
              most = 3,
              preset = "not measured",
              allowed = Limits.Kind.IF_MEASURED)
          Figure<Length> bow,
      @Column("wood") OneOf<MadeFunctions.Wood> wood,
      Figure<Length> secret) {}

  @Test
  void part_isDescribedByItsColumn() {
    assertThat(COLUMNS.name("length")).isEqualTo("length_in");
    assertThat(COLUMNS.limits("length")).isEqualTo(ALLOWED);
    assertThat(COLUMNS.unit("length")).contains(Units.INCH);
    assertThat(COLUMNS.unit("nail")).contains(Units.USD_PER_NAIL);
    assertThat(COLUMNS.unit("wood")).isEmpty();
    assertThat(COLUMNS.options("wood")).contains(MadeFunctions.Wood.class);
    assertThat(COLUMNS.options("length")).isEmpty();
  }

  @Test
  void part_withoutAColumnIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> COLUMNS.name("secret"))
        .withMessage(Plank.class + " has no column for secret");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> COLUMNS.name("depth"))
        .withMessage(Plank.class + " has no column for depth");
  }

  @Test
  void number_takesNameUnitAndSymbolOfItsPart() {
    Figure<Length> length = COLUMNS.let("length", ft(2));
    assertThat(length.name()).isEqualTo("length_in");
    assertThat(length.value()).isEqualTo(24);
    assertThat(length.symbol()).isEqualTo("L");
    assertThat(length.step().guard().orElseThrow().limits()).isEqualTo(ALLOWED);
  }

  @Test
  void number_outsideTheLimitsIsRefused() {
    assertThat(COLUMNS.let("length", in(97)).refusal().orElseThrow().reason())
        .isEqualTo("length_in is 97; it must be from 1 to 96, a plank is short");
  }

  /** A guard of another kind has let it through, which says nothing here. */
  @Test
  void number_letThroughElsewhereIsRefusedAllTheSame() {
    Figure<Length> elsewhere =
        in(97).within("other_in", Units.INCH, Limits.between(0, 200, "a wall"));
    assertThat(COLUMNS.let("length", elsewhere).refusal().orElseThrow().reason())
        .isEqualTo("length_in is 97; it must be from 1 to 96, a plank is short");
  }

  @Test
  void nothing_isMissingOrThePreset() {
    Figure<Length> length = null;
    assertThat(COLUMNS.let("length", length).refusal().orElseThrow().reason())
        .isEqualTo("length_in is missing; give from 1 to 96 inches, a plank is short");
    Figure<Per<Money, Nails>> nail = null;
    assertThat(COLUMNS.let("nail", nail).value()).isEqualTo(0.25);
    assertThat(COLUMNS.let("nail", nail).name()).isEqualTo("nail_usd");
  }

  @Test
  void nothing_isNotMeasuredWhereThatMayBe() {
    Figure<Length> bow = null;
    assertThat(COLUMNS.let("bow", bow).isAbsent()).isTrue();
    assertThat(COLUMNS.let("bow", bow).shown()).isEqualTo("not measured");
    assertThat(COLUMNS.let("bow", in(2)).value()).isEqualTo(2);
  }

  @Test
  void number_letThroughOnceIsLetThroughAsItIs() {
    Figure<Length> once = COLUMNS.let("length", in(24));
    assertThat(COLUMNS.let("length", once)).isSameAs(once);
  }

  @Test
  void owner_begetsNameAndSymbolOfTheSameNumber() {
    Figure<Length> given = in(24);
    Figure<Length> once = COLUMNS.let("length", given);
    Figure<Length> owned = COLUMNS.of("sister").let("length", once);
    assertThat(owned.name()).isEqualTo("sister_length_in");
    assertThat(owned.symbol()).isEqualTo("L_sister");
    assertThat(owned.step().guard().orElseThrow().argument()).isSameAs(given);
    assertThat(COLUMNS.of("sister").let("bow", in(1)).symbol()).isEqualTo("sister bow");
    assertThat(once.name()).isEqualTo("length_in");
  }

  @Test
  void input_keepsANameThatSaysMore() {
    assertThat(let("sister_length_in").name()).isEqualTo("sister_length_in");
    assertThat(let("span_in").name()).isEqualTo("length_in");
    assertThat(let("wavelength_in").name()).isEqualTo("length_in");
  }

  private static Figure<Length> let(String name) {
    return COLUMNS.let("length", Figure.input(name, 24, Units.INCH, Limits.NONE, Source.GIVEN));
  }

  @Test
  void result_ofAComputationTakesTheColumnsName() {
    Figure<Length> sum = in(20).plus(in(4)).as("sister_length_in", Units.INCH);
    assertThat(COLUMNS.let("length", sum).name()).isEqualTo("length_in");
  }
}
