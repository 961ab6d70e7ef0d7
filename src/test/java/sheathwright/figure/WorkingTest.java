package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pct;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;

/** The working of small calculations, each written out by hand. */
class WorkingTest {

  private static final Figure<Ratio> ONE = number(1);
  private static final Source PRACTICE = Source.COMMON_PRACTICE;
  private static final Source CLAUSE = Source.read("Standard 2020").at("4.2");

  @Test
  void of_showsSymbolsThenNumbersThenTheAnswer() {
    Figure<Area> deck =
        Figure.input("deck_area_sf", 1000, Units.SQUARE_FOOT, Limits.NONE, Source.GIVEN);
    Figure<Ratio> waste = pct(5).within("waste_pct", Units.PERCENT, Limits.between(0, 100, ""));
    Figure<?> order = deck.times(ONE.plus(waste)).as("order_sf", Units.SQUARE_FOOT, CLAUSE);

    // 1000 × 1.05 = 1050; the source stands from column 64 on.
    assertThat(Working.of(order))
        .isEqualTo(
            """
            order = deck area × (1 + waste)
                  = 1,000 sq ft × (1 + 5 %)
                  = 1,050 sq ft                                             Standard 2020, 4.2""");
  }

  @Test
  void of_putsAStepAfterTheStepsThatItNeeds() {
    Figure<Length> span = in(96).plus(in(4)).as("span_in", Units.INCH).symbol("L");
    Figure<LineForce> load = Figure.of(3, Units.POUND_PER_INCH);
    Figure<?> reaction =
        load.times(span).dividedBy(number(2)).as("reaction_lb", Units.POUND).symbol("R");
    Figure<?> half = reaction.dividedBy(number(4)).as("each_lb", Units.POUND, PRACTICE);

    // 96 + 4 = 100; 3 × 100 ÷ 2 = 150; 150 ÷ 4 = 37.5.
    assertThat(Working.of(half))
        .isEqualTo(
            """
            L = 96 in + 4 in
              = 100 in
            R = 3 lb/in × L ÷ 2
              = 3 lb/in × 100 in ÷ 2
              = 150 lb
            each = R ÷ 4
                 = 150 lb ÷ 4
                 = 37.5 lb                                                  common practice, no source""");
  }

  @Test
  void of_foldsTheBranchThatIsNotTaken() {
    Figure<Length> gap = in(0.5).within("gap_in", Units.INCH, Limits.between(0, 1, ""));
    Figure<Length> bearing =
        Figure.choose(gap.isLessThan(in(1)), in(0.75).minus(gap), in(2)).as("left_in", Units.INCH);

    assertThat(Working.of(bearing))
        .isEqualTo(
            """
            left = 3/4 in − gap
                 = 3/4 in − 1/2 in
                 = 1/4 in
                   since gap < 1 in (1/2 in < 1 in): the other branch is not taken""");
    assertThat(Working.symbols(bearing)).isEqualTo("3/4 in − gap if gap < 1 in, else 2 in");
  }

  @Test
  void of_saysWhyAConditionInsideAStepDoesNotHold() {
    Figure<Length> gap = in(0.5).within("gap_in", Units.INCH, Limits.between(0, 1, ""));
    Figure<Length> twice =
        number(2)
            .times(Figure.choose(gap.isMoreThan(in(1)), in(9), in(2)))
            .as("twice_in", Units.INCH);

    assertThat(Working.of(twice))
        .isEqualTo(
            """
            twice = 2 × 2 in
                  = 4 in
                    since it is not so that gap > 1 in (1/2 in > 1 in): the other branch is not taken""");
  }

  @Test
  void of_keepsToAWidth() {
    Figure<Area> deck =
        Figure.input("deck_area_sf", 1000, Units.SQUARE_FOOT, Limits.NONE, Source.GIVEN);
    Source named = Source.read("Standard 2020, a clause that has a title of its own");
    Figure<?> order = deck.times(ONE).as("order_sf", Units.SQUARE_FOOT, named);

    assertThat(Working.of(List.of(order), 50))
        .isEqualTo(
            """
            order = deck area × 1
                  = 1,000 sq ft × 1
                  = 1,000 sq ft
                    Standard 2020, a clause that has a title
                      of its own""");
  }

  @Test
  void of_endsWhereSomethingIsRefused() {
    Figure<Ratio> rows = number(0).as("rows", Units.RATIO);
    Figure<?> spacing = in(48).dividedBy(rows).as("spacing_in", Units.INCH);

    assertThat(Working.of(spacing))
        .isEqualTo(
            """
            spacing = 48 in ÷ rows
                    refused: 48 in cannot be divided by rows, which is zero""");
  }

  @Test
  void of_givesEachStepOnceForSeveralResults() {
    Figure<Length> line = in(48).minus(in(0.75)).as("line_in", Units.INCH);
    Figure<?> edge = line.dividedBy(in(6)).in(Units.RATIO).roundedUp().as("edge", Units.RATIO);
    Figure<?> field = line.dividedBy(in(12)).in(Units.RATIO).roundedUp().as("field", Units.RATIO);

    // 47.25 ÷ 6 = 7.875, up to 8; 47.25 ÷ 12 = 3.9375, up to 4.
    assertThat(Working.of(List.of(edge, field)))
        .isEqualTo(
            """
            line = 48 in − 3/4 in
                 = 47-1/4 in
            edge = ⌈line ÷ 6 in⌉
                 = ⌈47-1/4 in ÷ 6 in⌉
                 = 8
            field = ⌈line ÷ 12 in⌉
                  = ⌈47-1/4 in ÷ 12 in⌉
                  = 4""");
  }

  @Test
  void of_bracketsANumberWithItsUnitUnderAPower() {
    Figure<?> modulus =
        in(2)
            .as("thickness_in", Units.INCH)
            .symbol("b")
            .times(in(3).as("depth_in", Units.INCH).symbol("d").squared())
            .dividedBy(number(6))
            .as("section_modulus_in3", Units.CUBIC_INCH)
            .symbol("S");

    // 2 × 3² ÷ 6 = 3; "3 in^2" would read as three square inches.
    assertThat(Working.of(modulus))
        .isEqualTo(
            """
            S = b × d^2 ÷ 6
              = 2 in × (3 in)^2 ÷ 6
              = 3 in³""");
  }

  @Test
  void symbols_bracketOnlyWhatTheyMust() {
    Figure<Ratio> a = named("a");
    Figure<Ratio> b = named("b");
    Figure<Ratio> c = named("c");
    assertThat(Working.symbols(a.minus(b.minus(c)))).isEqualTo("a − (b − c)");
    assertThat(Working.symbols(a.minus(b).minus(c))).isEqualTo("a − b − c");
    assertThat(Working.symbols(a.plus(b.minus(c)))).isEqualTo("a + b − c");
    assertThat(Working.symbols(a.dividedBy(b.dividedBy(c)))).isEqualTo("a ÷ (b ÷ c)");
    assertThat(Working.symbols(a.dividedBy(b.times(c)))).isEqualTo("a ÷ (b × c)");
    assertThat(Working.symbols(a.plus(b).times(c))).isEqualTo("(a + b) × c");
    assertThat(Working.symbols(a.plus(b).power(c))).isEqualTo("(a + b)^c");
    assertThat(Working.symbols(a.plus(b).squareRoot())).isEqualTo("√(a + b)");
    assertThat(Working.symbols(a.min(b))).isEqualTo("the lesser of a and b");
  }

  private static Figure<Ratio> named(String name) {
    return number(2).as(name, Units.RATIO);
  }

  @Test
  void anOrInsideAnAnd_isBracketed() {
    Figure<Quantity.Length> span = Figure.constant("span_ft", 10, Units.FOOT, Source.GIVEN);
    Figure<Quantity.Length> twelve = Amounts.ft(12);
    Condition either = Condition.any(span.isAtMost(twelve), span.isMoreThan(twelve));

    assertThat(Working.symbols(Condition.all(span.isLessThan(twelve), either)))
        .isEqualTo("span < 12' 0\" and (span ≤ 12' 0\" or span > 12' 0\")");
    assertThat(Working.symbols(Condition.any(either, Condition.all(span.isAtMost(twelve)))))
        .isEqualTo("span ≤ 12' 0\" or span > 12' 0\" or span ≤ 12' 0\"");
  }
}
