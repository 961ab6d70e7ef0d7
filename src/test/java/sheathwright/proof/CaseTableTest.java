package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.ProblemsException;

/** A table of cases is read as any table is, and what does not hold is told where it stands. */
class CaseTableTest {

  /** 9 in 12 is the triangle of 3, 4 and 5: 5 ÷ 4. */
  private static final String HEADINGS =
      "case,class,kind,source,tolerance,within,rise_in_12,slope_factor\n";

  private static Tested tested(String function, String text) {
    Card card = Catalog.shipped().named(function);
    return new Tested(card, CaseTable.of(card, CsvFile.parse("mine.csv", text)).outcomes());
  }

  private static Tested slope(String line) {
    return tested("slope_factor", HEADINGS + line + "\n");
  }

  @Test
  void aCaseHolds() {
    Tested tested = slope("1,ordinary,limit,triangle of 3 4 5,1e-12,,9,1.25");
    assertThat(tested.problems()).isEmpty();
    assertThat(tested.holds()).isTrue();
    assertThat(tested.kinds()).containsOnly(java.util.Map.entry(CaseKind.LIMIT, 1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1,ordinary,limit,triangle,1e-12,,9,1.26   | mine.csv, line 2, column slope_factor: 1.25 was given, 1.26 is expected; they differ by 0.01, and 0.0000000000013 is allowed
          1,ordinary,limit,triangle,0,0.009,9,1.26  | mine.csv, line 2, column slope_factor: 1.25 was given, 1.26 is expected; they differ by 0.01, and 0.009 is allowed
          """)
  void aWrongNumber_isTold(String line, String told) {
    assertThat(slope(line).problems()).extracting(String::valueOf).containsExactly(told);
  }

  @Test
  void theWiderOfBothTolerances_counts() {
    assertThat(slope("1,,,triangle,1e-12,0.02,9,1.26").holds()).isTrue();
    assertThat(slope("1,,,triangle,0.02,1e-9,9,1.26").holds()).isTrue();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1,ordinary,limit,triangle,1.5,,9,1.25   | line 2, column tolerance: tolerance is 1.5; it must be from 0 to 1
          1,ordinary,limit,triangle,,-1,9,1.25    | line 2, column within: within is -1; it must be from 0
          1,ordinary,limit,triangle,,,9,1.25      | line 2, column tolerance: it is blank, and so is within
          1,ordinary,limit,,1e-9,,9,1.25          | line 2, column source: it is blank; say who
          1,usual,limit,triangle,1e-9,,9,1.25     | line 2, column class: class is "usual"
          1,end,guess,triangle,1e-9,,9,1.25       | line 2, column kind: kind is "guess"
          1,end,limit,triangle,1e-9,,9,much 1     | line 2, column slope_factor: "much 1" is not a number
          1,end,limit,triangle,1e-9,,9,           | line 2: nothing is expected of this case
          """)
  void whatCannotBeRead_isTold(String line, String told) {
    assertThatThrownBy(() -> slope(line))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("mine.csv, " + told);
  }

  @Test
  void aTableThatExpectsNothing_isRefused() {
    assertThatThrownBy(() -> tested("slope_factor", "source,tolerance,rise_in_12\nhand,0,9\n"))
        .hasMessageContaining(
            "no column holds an expected result; slope_factor gives slope_factor");
  }

  @Test
  void aColumnThatIsNone_isTold() {
    assertThatThrownBy(
            () -> tested("slope_factor", "source,tolerance,rise,slope_factor\nhand,0,9,1.25\n"))
        .hasMessageContaining("line 1, column rise: this column is not known");
  }

  /**
   * A panel's kind stands behind the case's own: 15/32 of plywood weighs 1.5 lb on a foot, 48 of
   * 32.
   */
  @Test
  void aNameThatIsWantedTwice_standsTwice() {
    String headings = "kind,source,within,category,kind,";
    Card card = Catalog.shipped().named("panel_weight");
    String result = card.results().get(0).column();
    assertThat(
            tested("panel_weight", headings + result + "\nprinted,hand,1e6,15/32,plywood,48\n")
                .kinds())
        .containsOnlyKeys(CaseKind.PRINTED);
  }

  @Test
  void aCaseThatIsRefused_doesNotHold() {
    Tested tested = slope("1,ordinary,limit,triangle,1e-12,,25,1.25");
    assertThat(tested.holds()).isFalse();
    assertThat(tested.problems())
        .extracting(String::valueOf)
        .first()
        .asString()
        .startsWith(
            "mine.csv, line 2, column rise_in_12: rise_in_12 is 25; it must be from 0 to 24");
  }

  @Test
  void words_mustBeTheSame() {
    String headings = "source,tolerance,rafter_center_in,joint_in,ok\n";
    assertThat(
            tested("joint_bearing", headings + "hand,0,96,96,yes\n").outcomes().get(0).problems())
        .as("the right sheet has 5/8 in, 1/2 is asked for")
        .isEmpty();
    assertThat(tested("joint_bearing", headings + "hand,0,96,96,no\n").problems())
        .extracting(String::valueOf)
        .containsExactly("mine.csv, line 2, column ok: \"yes\" was given, \"no\" is expected");
  }
}
