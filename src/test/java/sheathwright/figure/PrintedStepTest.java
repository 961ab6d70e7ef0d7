package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static sheathwright.figure.StepParts.A;
import static sheathwright.figure.StepParts.B;
import static sheathwright.figure.StepParts.C;
import static sheathwright.figure.StepParts.GAP;
import static sheathwright.figure.StepParts.GOOD;
import static sheathwright.figure.StepParts.KIND;
import static sheathwright.figure.StepParts.OTHER;
import static sheathwright.figure.StepParts.PLANES;
import static sheathwright.figure.StepParts.SIZE;
import static sheathwright.figure.StepParts.WOOD;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Quantity.Length;

/** Each kind of step as it is printed in symbols; written out by hand, as an estimator reads it. */
class PrintedStepTest {

  static Stream<Arguments> numbers() {
    return Stream.of(
        Arguments.of(A.same(), "a"),
        Arguments.of(A.power(B), "a^b"),
        Arguments.of(A.power(B.plus(C)), "a^(b + c)"),
        Arguments.of(A.power(B).power(C), "(a^b)^c"),
        Arguments.of(A.times(B.power(C)), "a × b^c"),
        Arguments.of(A.cubed(), "a^3"),
        Arguments.of(A.plus(B).cubeRoot(), "(a + b)^(1/3)"),
        Arguments.of(A.plus(B).logarithm(), "log(a + b)"),
        Arguments.of(A.plus(B).arctangent(), "arctan(a + b)"),
        Arguments.of(A.max(B.plus(C)), "the greater of a and b + c"),
        Arguments.of(A.plus(B).roundedUp(), "⌈a + b⌉"),
        Arguments.of(A.plus(B).roundedDown(), "⌊a + b⌋"),
        Arguments.of(A.rounded(), "a to the nearest whole"),
        Arguments.of(Amounts.usd(2).plus(Amounts.usd(3)), "$2.00 + $3.00"),
        Arguments.of(A.toCents(), "a to the cent"),
        Arguments.of(GAP.in(Units.FOOT), "gap"),
        Arguments.of(A.within("x", Units.RATIO, Limits.between(0, 9, "")), "a"),
        Arguments.of(A.plus(B).onlyIf(A.isAtMost(B), "too much"), "a + b"));
  }

  static Stream<Arguments> truths() {
    Condition isMore = A.isMoreThan(B);
    return Stream.of(
        Arguments.of(A.plus(B).isAtMost(C), "a + b ≤ c"),
        Arguments.of(A.isLessThan(B), "a < b"),
        Arguments.of(A.isAtLeast(B), "a ≥ b"),
        Arguments.of(isMore, "a > b"),
        Arguments.of(A.isTheSameAs(B), "a = b"),
        Arguments.of(GAP.isMeasured(), "gap is measured"),
        Arguments.of(KIND.is("oak"), "wood kind is oak"),
        Arguments.of(KIND.isTheSameAs(OTHER), "wood kind is other kind"),
        Arguments.of(Condition.all(isMore, A.isAtMost(C)), "a > b and a ≤ c"),
        Arguments.of(Figure.choose(isMore, A.plus(B), C), "a + b if a > b, else c"),
        Arguments.of(Choice.choose(isMore, YesNo.YES, YesNo.NO), "yes if a > b, else no"));
  }

  static Stream<Arguments> tablesAndLists() {
    return Stream.of(
        Arguments.of(
            WOOD.number(Units.PSI, "bending_psi", KIND, GOOD),
            "bending in wood values [wood kind, good]"),
        Arguments.of(
            WOOD.numberAt(Units.RATIO, SIZE, KIND, GOOD),
            "wood values [wood kind, good, stick size]"),
        Arguments.of(
            PLANES.sum("deck_area_sf", Units.SQUARE_FOOT),
            "the sum of deck area in the roof planes"),
        Arguments.of(
            PLANES.gathered(Gather.GREATEST, "deck_area_sf", Units.SQUARE_FOOT),
            "the greatest deck area in the roof planes"),
        Arguments.of(
            PLANES.gathered(Gather.LEAST, "deck_area_sf", Units.SQUARE_FOOT),
            "the least deck area in the roof planes"),
        Arguments.of(
            Choice.firstMarked(PLANES, "wet", "plane", "look at ", " again"),
            "the first one marked in the roof planes"),
        Arguments.of(Choice.feetAndInches(GAP), "gap as feet-inches"),
        Arguments.of(
            Choice.sentence(Choice.literal("cut "), A, Choice.literal(" of "), KIND),
            "cut a of wood kind"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource({"numbers", "truths", "tablesAndLists"})
  void words_areTheFormulaInSymbols(Traced made, String printed) {
    assertThat(Working.symbols(made)).isEqualTo(printed);
  }

  @Test
  void whatIsFoundByASolver_saysSo() {
    Reading reading = new Reading();
    reading.number("gap", GAP, Units.INCH);
    Solution cuts = reading.solution("rafter_cuts");
    Figure<Length> found = cuts.figure("cut_in", 5, Units.INCH, Source.ARITHMETIC);
    Choice<String> word = cuts.word("cut_state", "clean", Source.ARITHMETIC);
    assertThat(Working.symbols(found)).isEqualTo("found by solving for rafter cuts");
    assertThat(Working.symbols(word)).isEqualTo("found by solving for rafter cuts");
    assertThat(found.step().operands()).containsExactly(GAP);
  }

  @Test
  void whatIsGiven_hasNoFormula() {
    assertThat(Working.symbols(GAP)).isEmpty();
    assertThatIllegalStateException()
        .isThrownBy(() -> GAP.step().words(Working::symbol))
        .withMessage("a given value has no formula");
  }

  /** A comparison, and whatever tells one of two, stands in brackets inside a sum. */
  @Test
  void words_areBracketedWhereALargerFormulaTakesThemUp() {
    Condition isMore = A.isMoreThan(B);
    Stream.of(
            isMore,
            GAP.isMeasured(),
            KIND.is("oak"),
            KIND.isTheSameAs(OTHER),
            Condition.all(isMore, isMore),
            Figure.choose(isMore, A, B))
        .forEach(
            each -> {
              Written printed = each.step().words(Working::symbol);
              assertThat(printed.atLeast(Written.COMPARISON)).isEqualTo(printed.text());
              assertThat(printed.atLeast(Written.SUM)).isEqualTo("(" + printed.text() + ")");
            });
    assertThat(A.plus(Figure.choose(isMore, B, C)).step().words(Working::symbol).text())
        .isEqualTo("a + (b if a > b, else c)");
  }

  @Test
  void steps_knowWhatTheyAreMadeFrom() {
    Condition isMore = A.isMoreThan(B);
    Condition isLess = A.isLessThan(C);
    assertThat(A.plus(B).step().operands()).containsExactly(A, B);
    assertThat(GAP.in(Units.FOOT).step().operands()).containsExactly(GAP);
    assertThat(A.within("x", Units.RATIO, Limits.NONE).step().operands()).containsExactly(A);
    assertThat(A.onlyIf(isMore, "too much").step().operands()).containsExactly(isMore, A);
    assertThat(Figure.choose(isMore, B, C).step().operands()).containsExactly(isMore, B, C);
    assertThat(isMore.step().operands()).containsExactly(A, B);
    assertThat(Condition.any(isMore, isLess).step().operands()).containsExactly(isMore, isLess);
    assertThat(GAP.isMeasured().step().operands()).containsExactly(GAP);
    assertThat(KIND.is("oak").step().operands()).containsExactly(KIND);
    assertThat(KIND.isTheSameAs(OTHER).step().operands()).containsExactly(KIND, OTHER);
    assertThat(Choice.feetAndInches(GAP).step().operands()).containsExactly(GAP);
    assertThat(Choice.sentence(KIND, A).step().operands()).containsExactly(KIND, A);
    assertThat(Choice.firstMarked(PLANES, "wet", "plane", "", "").step().operands())
        .isEqualTo(PLANES.cellsOf("wet"))
        .hasSize(2);
  }

  @Test
  void steps_knowWhatKindTheyAre() {
    Figure<Length> constant = Figure.constant("two_in", 2, Units.INCH, Source.GIVEN);
    Figure<Length> literal = Amounts.in(2);
    Figure<Length> guarded = GAP.within("x_in", Units.INCH, Limits.between(0, 9, ""));
    Figure<?> looked = WOOD.number(Units.PSI, "bending_psi", KIND, GOOD);
    assertThat(Stream.of(GAP, constant, literal).map(each -> each.step().isInput()))
        .containsExactly(true, false, false);
    assertThat(Stream.of(GAP, constant, literal).map(each -> each.step().isConstant()))
        .containsExactly(false, true, false);
    assertThat(Stream.of(GAP, constant, literal).map(each -> each.step().isLiteral()))
        .containsExactly(false, false, true);
    assertThat(Stream.of(GAP, guarded, looked).map(each -> each.step().isGiven()))
        .containsExactly(true, false, false);
    assertThat(Stream.of(GAP, guarded, looked).map(each -> each.step().isValueOnly()))
        .containsExactly(true, false, false);
    assertThat(Stream.of(GAP, GAP.in(Units.FOOT)).map(each -> each.step().isConversion()))
        .containsExactly(false, true);
    assertThat(GAP.step().guard()).isEmpty();
    assertThat(guarded.step().guard()).map(Step.Guarded::argument).containsSame(GAP);
    assertThat(guarded.step().limits()).isEqualTo(Limits.between(0, 9, ""));
    assertThat(A.plus(B).step().limits()).isEqualTo(Limits.NONE);
    assertThat(looked.step().lookedUpIn()).containsSame(WOOD);
    assertThat(GAP.step().lookedUpIn()).isEmpty();
    Solution cuts = new Reading().solution("cuts");
    assertThat(cuts.figure("cut_in", 5, Units.INCH, Source.GIVEN).step().solution())
        .containsSame(cuts);
    assertThat(cuts.figure("cut_in", 5, Units.INCH, Source.GIVEN).step().isValueOnly()).isTrue();
    assertThat(GAP.step().solution()).isEmpty();
  }
}
