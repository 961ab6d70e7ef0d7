package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pct;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/** The working with bare numbers put in, as it is keyed into a calculator; by hand. */
class PlainWorkingTest {

  private static final Working.Manner PLAIN = new Working.Manner(true, false);
  private static final Figure<Length> EAVE = feet("eave_ft", 3);
  private static final Figure<Length> RAKE = feet("rake_ft", 4);
  private static final Figure<Ratio> A = ratio("a", 3);
  private static final Figure<Ratio> B = ratio("b", -2);

  private static Figure<Length> feet(String name, double number) {
    return Figure.input(name, number, Units.FOOT, Limits.NONE, Source.GIVEN);
  }

  private static Figure<Ratio> ratio(String name, double number) {
    return Figure.input(name, number, Units.RATIO, Limits.NONE, Source.GIVEN);
  }

  private static String plain(Traced result) {
    return Working.of(List.of(result), "", PLAIN, 200);
  }

  @Test
  void aShareInPercent_standsAsTheNumberThatItIs() {
    Figure<Ratio> waste = pct(5).within("waste_pct", Units.PERCENT, Limits.between(0, 100, ""));
    Figure<?> order =
        Amounts.sqft(1000)
            .within("deck_sf", Units.SQUARE_FOOT, Limits.NONE)
            .times(number(1).plus(waste))
            .as("order_sf", Units.SQUARE_FOOT);
    assertThat(plain(order))
        .isEqualTo(
            """
            order = deck × (1 + waste)
                  = 1000 × (1 + 0.05)
                  = 1,050 sq ft""");
  }

  /** 3 ft and 4 ft are 84 in, and half of it is 42 in; 6 in and 3 in are 0.75 ft, or 9 in. */
  @Test
  void aUnitThatChanges_showsByWhatItDoes() {
    assertThat(plain(EAVE.plus(RAKE).in(Units.INCH).as("both_in", Units.INCH)))
        .isEqualTo(
            """
            both = eave + rake
                 = (3 + 4) × 12
                 = 84 in""");
    Figure<Length> gap = Figure.input("gap_in", 6, Units.INCH, Limits.NONE, Source.GIVEN);
    assertThat(plain(gap.plus(in(3)).as("gap_ft", Units.FOOT)))
        .isEqualTo(
            """
            gap = gap + 3 in
                = (6 + 3) ÷ 12
                = 0' 9\"""");
    Figure<Ratio> pitch =
        Figure.input("rise_in_12", 6, Units.RISE_IN_12, Limits.NONE, Source.GIVEN);
    assertThat(plain(pitch.plus(pitch).as("grade_pct", Units.PERCENT)))
        .isEqualTo(
            """
            grade = rise + rise
                  = (6 + 6) × 25 ÷ 3
                  = 100 %"""); // 12 in 12 is as far up as along
  }

  @Test
  void whatIsOnlyCounted_staysAsItIs() {
    assertThat(plain(A.plus(number(1)).counting(Units.SHEET).as("sheets", Units.SHEET)))
        .isEqualTo(
            """
            sheets = a + 1
                   = 3 + 1
                   = 4 sheets""");
  }

  /** (−2)² is 4, and −2² would be −4; 1 ÷ 3 to seven digits. */
  @Test
  void aNumberBelowZero_isBracketedUnderAPower() {
    assertThat(plain(B.squared().as("square", Units.RATIO)))
        .isEqualTo(
            """
            square = b^2
                   = (-2)^2
                   = 4""");
    assertThat(plain(ratio("none", 0).squared().as("square", Units.RATIO)))
        .contains("\n       = 0^2\n");
    Figure<?> third = number(1).dividedBy(A).as("third", Units.RATIO);
    assertThat(plain(third.times(A).as("whole", Units.RATIO)))
        .isEqualTo(
            """
            third = 1 ÷ a
                  = 1 ÷ 3
                  = 0.3333
            whole = third × a
                  = 0.3333333 × 3
                  = 1""");
  }

  @Test
  void aWord_staysAWord() {
    Choice<String> kind = Choice.input("wood_kind", "oak", Source.GIVEN);
    assertThat(plain(Condition.all(kind.is("oak"), A.isMoreThan(B))))
        .isEqualTo(
            """
            answer = wood kind is oak and a > b
                   = wood kind is oak and 3 > -2
                   = yes""");
    assertThat(plain(Choice.sentence(Choice.literal("cut "), A, Choice.literal(" of "), kind)))
        .isEqualTo(
            """
            answer = cut a of wood kind
                   = cut 3 of oak""");
  }

  @Test
  void whatIsNotMeasured_keepsItsName() {
    Figure<Length> sag = Figure.notMeasured("sag_in", Units.INCH, Source.GIVEN);
    assertThat(plain(Condition.any(sag.isMeasured(), A.isMoreThan(B))))
        .isEqualTo(
            """
            answer = sag is measured or a > b
                   = sag is measured or 3 > -2
                   = yes""");
  }
}
