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

import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * Each kind of step as a cell has it: functions, operators and their order as ECMA-376 Part 1,
 * 18.17 states them ({@code ^} before {@code * /} before {@code + -} before {@code &} before {@code
 * = < >} ). Written out by hand; a value with a name stands by its name, any other as it is.
 */
class CellFormulaTest {

  private static final Figure<Length> EAVE = length("eave_ft", Units.FOOT);
  private static final Figure<Length> RAKE = length("rake_ft", Units.FOOT);

  private static Figure<Length> length(String name, Unit<Length> unit) {
    return Figure.input(name, 3, unit, Limits.NONE, Source.GIVEN);
  }

  private static Written written(Traced operand) {
    if (operand.isNamed()) {
      return Written.whole(operand.name());
    }
    if (!operand.step().isGiven()) {
      return operand.step().cell(CellFormulaTest::written);
    }
    String plain = operand.plain();
    return Written.whole(operand instanceof Figure<?> ? plain : "\"" + plain + "\"");
  }

  static Stream<Arguments> operators() {
    return Stream.of(
        Arguments.of(A.same(), "a"),
        Arguments.of(A.plus(B).plus(C), "a+b+c"),
        Arguments.of(A.plus(B.minus(C)), "a+b-c"),
        Arguments.of(A.minus(B).minus(C), "a-b-c"),
        Arguments.of(A.minus(B.minus(C)), "a-(b-c)"),
        Arguments.of(A.minus(B.plus(C)), "a-(b+c)"),
        Arguments.of(A.plus(B).times(C), "(a+b)*c"),
        Arguments.of(A.times(B.minus(C)), "a*(b-c)"),
        Arguments.of(A.times(B).plus(C), "a*b+c"),
        Arguments.of(A.dividedBy(B).dividedBy(C), "a/b/c"),
        Arguments.of(A.dividedBy(B.dividedBy(C)), "a/(b/c)"),
        Arguments.of(A.dividedBy(B.times(C)), "a/(b*c)"),
        Arguments.of(A.power(B), "(a)^(b)"),
        Arguments.of(A.plus(B).power(C.minus(A)), "(a+b)^(c-a)"),
        Arguments.of(A.squared(), "(a)^(2)"),
        Arguments.of(A.cubed(), "(a)^(exponent_3)"),
        Arguments.of(A.power(B).power(C), "((a)^(b))^(c)"),
        Arguments.of(A.times(B.power(C)), "a*(b)^(c)"),
        Arguments.of(A.plus(B).squareRoot(), "SQRT(a+b)"),
        Arguments.of(A.plus(B).cubeRoot(), "(a+b)^(1/exponent_3)"),
        Arguments.of(A.plus(B).logarithm(), "LOG10(a+b)"),
        Arguments.of(A.plus(B).arctangent(), "ATAN(a+b)"),
        Arguments.of(A.plus(B).min(C), "MIN(a+b,c)"),
        Arguments.of(A.max(B.plus(C)), "MAX(a,b+c)"),
        Arguments.of(A.plus(B).roundedUp(), "ROUNDUP(ROUND(a+b,6),0)"),
        Arguments.of(A.plus(B).roundedDown(), "ROUNDDOWN(ROUND(a+b,6),0)"),
        Arguments.of(A.plus(B).rounded(), "ROUND(a+b,0)"),
        Arguments.of(A.plus(B).toCents(), "ROUND(a+b,2)"));
  }

  static Stream<Arguments> conversions() {
    Figure<Ratio> pitch =
        Figure.input("rise_in_12", 6, Units.RISE_IN_12, Limits.NONE, Source.GIVEN);
    return Stream.of(
        Arguments.of(EAVE.in(Units.INCH), "eave_ft*12"), // a foot holds 12 in
        Arguments.of(GAP.in(Units.FOOT), "gap_in/12"),
        Arguments.of(pitch.in(Units.PERCENT), "rise_in_12*25/3"), // 6 in 12 is 6 × 25 ÷ 3 = 50 %
        Arguments.of(EAVE.plus(RAKE).in(Units.INCH), "(eave_ft+rake_ft)*12"),
        Arguments.of(EAVE.times(A).in(Units.INCH), "eave_ft*a*12"),
        Arguments.of(EAVE.plus(GAP), "eave_ft+gap_in/12"),
        Arguments.of(EAVE.minus(GAP.plus(GAP)), "eave_ft-(gap_in+gap_in)/12"),
        Arguments.of(A.counting(Units.SHEET), "a"),
        Arguments.of(A.counting(Units.SHEET).dividedBy(A.plus(B).counting(Units.SHEET)), "a/(a+b)"),
        Arguments.of(GAP.roundedUpTo(Amounts.in(16)), "ROUNDUP(ROUND(gap_in/16,6),0)*16"));
  }

  static Stream<Arguments> guards() {
    Limits ifMeasured = new Limits(0, 6, Limits.Kind.IF_MEASURED, "");
    return Stream.of(
        Arguments.of(
            A.plus(B).within("x", Units.RATIO, Limits.between(0.5, 48, "")),
            "IF(AND(a+b>=0.5,a+b<=48),a+b,NA())"),
        Arguments.of(
            A.within("x", Units.RATIO, Limits.whole(1, 4, "")),
            "IF(AND(a>=1,a<=4,a=ROUND(a,0)),a,NA())"),
        Arguments.of(
            A.within("x", Units.RATIO, Limits.either(2, 240, "")), "IF(OR(a=2,a=240),a,NA())"),
        Arguments.of(
            A.within("x", Units.RATIO, ifMeasured), "IF(OR(AND(a>=0,a<=6),1-ISNUMBER(a)),a,NA())"));
  }

  static Stream<Arguments> choices() {
    Condition isMore = A.isMoreThan(B);
    return Stream.of(
        Arguments.of(A.plus(B).isAtMost(C), "a+b<=c"),
        Arguments.of(A.isLessThan(B.minus(C)), "a<b-c"),
        Arguments.of(A.isAtLeast(B), "a>=b"),
        Arguments.of(isMore, "a>b"),
        Arguments.of(A.isTheSameAs(B), "a=b"),
        Arguments.of(A.isMeasured(), "ISNUMBER(a)"),
        Arguments.of(KIND.is("oak"), "wood_kind=\"oak\""),
        Arguments.of(KIND.isTheSameAs(OTHER), "wood_kind=other_kind"),
        Arguments.of(Condition.all(isMore, A.isAtMost(C)), "AND(a>b,a<=c)"),
        Arguments.of(Condition.any(isMore, A.isAtMost(C)), "OR(a>b,a<=c)"),
        Arguments.of(Figure.choose(isMore, A.plus(B), C), "IF(a>b,a+b,c)"),
        Arguments.of(Choice.choose(isMore, YesNo.YES, YesNo.NO), "IF(a>b,\"yes\",\"no\")"),
        Arguments.of(A.plus(B).onlyIf(isMore, "too much"), "IF(a>b,a+b,NA())"),
        Arguments.of(KIND.onlyIf(isMore, "too much"), "IF(a>b,wood_kind,NA())"));
  }

  static Stream<Arguments> tablesAndLists() {
    return Stream.of(
        Arguments.of(
            WOOD.number(Units.PSI, "bending_psi", KIND, GOOD),
            "INDEX(wood_bending_psi,MATCH(wood_kind&\"|\"&\"good\",wood_key,0))"),
        Arguments.of(
            WOOD.numberAt(Units.RATIO, SIZE, KIND, GOOD),
            "INDEX(wood_body,MATCH(wood_kind&\"|\"&\"good\",wood_key,0),MATCH(stick_size,wood_head,0))"),
        Arguments.of(PLANES.sum("deck_area_sf", Units.SQUARE_FOOT), "SUM(planes_deck_area_sf)"),
        Arguments.of(
            PLANES.gathered(Gather.GREATEST, "deck_area_sf", Units.SQUARE_FOOT),
            "MAX(planes_deck_area_sf)"),
        Arguments.of(
            PLANES.gathered(Gather.LEAST, "deck_area_sf", Units.SQUARE_FOOT),
            "MIN(planes_deck_area_sf)"),
        Arguments.of(
            Choice.firstMarked(PLANES, "wet", "plane", "look at ", " again"),
            "\"look at \"&INDEX(planes_plane,MATCH(1,planes_wet,0))&\" again\""));
  }

  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of(
            Choice.feetAndInches(GAP),
            "ROUNDDOWN(gap_in/12,0)&\"-\"&(gap_in-12*ROUNDDOWN(gap_in/12,0))"),
        Arguments.of(
            Choice.feetAndInches(GAP.plus(GAP)),
            "ROUNDDOWN((gap_in+gap_in)/12,0)&\"-\"&((gap_in+gap_in)-12*ROUNDDOWN((gap_in+gap_in)/12,0))"),
        Arguments.of(
            Choice.sentence(Choice.literal("cut "), A.plus(B), Choice.literal(" of "), KIND),
            "\"cut \"&a+b&\" of \"&wood_kind"),
        Arguments.of(Choice.sentence(A.isMoreThan(B), KIND), "(a>b)&wood_kind"));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource({"operators", "conversions", "guards", "choices", "tablesAndLists", "texts"})
  void cell_isTheFormulaThatASpreadsheetReads(Traced made, String formula) {
    assertThat(made.step().cell(CellFormulaTest::written).text()).isEqualTo(formula);
  }

  /** What is put into a larger formula is bracketed by how tightly it holds together. */
  @Test
  void cell_isBracketedWhereALargerFormulaTakesItUp() {
    assertThat(bracketed(Choice.feetAndInches(GAP), Written.COMPARISON)).startsWith("ROUNDDOWN");
    assertThat(bracketed(Choice.feetAndInches(GAP), Written.SUM)).startsWith("(ROUNDDOWN");
    assertThat(bracketed(KIND.is("oak"), Written.SUM)).isEqualTo("(wood_kind=\"oak\")");
    assertThat(bracketed(KIND.isTheSameAs(OTHER), Written.SUM)).isEqualTo("(wood_kind=other_kind)");
    assertThat(bracketed(EAVE.in(Units.INCH), Written.PRODUCT)).isEqualTo("eave_ft*12");
    assertThat(bracketed(EAVE.in(Units.INCH), Written.POWER)).isEqualTo("(eave_ft*12)");
    assertThat(bracketed(A.isMeasured(), Written.WHOLE)).isEqualTo("ISNUMBER(a)");
  }

  private static String bracketed(Traced made, int wanted) {
    return made.step().cell(CellFormulaTest::written).atLeast(wanted);
  }

  @Test
  void whatWasGivenOrFound_hasNoFormula() {
    Reading reading = new Reading();
    reading.number("gap", GAP, Units.INCH);
    Figure<Length> found =
        reading.solution("cuts").figure("cut_in", 5, Units.INCH, Source.ARITHMETIC);
    Function<Traced, Written> asked = value -> value.step().cell(CellFormulaTest::written);
    assertThatIllegalStateException()
        .isThrownBy(() -> asked.apply(GAP))
        .withMessage("a given value has no formula");
    assertThatIllegalStateException()
        .isThrownBy(() -> asked.apply(found))
        .withMessage("a solved value has no formula");
  }
}
