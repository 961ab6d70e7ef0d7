package sheathwright.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;

import org.junit.jupiter.api.Test;

/** What a check comes to: two inches of three hold, four do not, and of none nobody can say. */
class CheckTest {

  private static Check of(Figure<Quantity.Length> demand) {
    return Check.of("depth of the cut", "cut_ratio", demand, in(3));
  }

  @Test
  void outcome_isOneOfThree() {
    assertThat(of(in(2)).outcome()).isInstanceOf(Check.Holds.class);
    assertThat(of(in(4)).outcome()).isInstanceOf(Check.Fails.class);
    assertThat(of(Figure.missing("cut_in", Units.INCH, Limits.NONE)).outcome())
        .isInstanceOf(Check.NotLooked.class);
  }

  @Test
  void onlyWhatIsKnownToHold_isSound() {
    assertThat(of(in(2)).outcome().isSound()).isTrue();
    assertThat(of(in(4)).outcome().isSound()).isFalse();
    assertThat(of(Figure.missing("cut_in", Units.INCH, Limits.NONE)).outcome().isSound()).isFalse();
  }

  @Test
  void whatNobodyLookedAt_saysWhatIsMissing() {
    assertThat(of(Figure.missing("cut_in", Units.INCH, Limits.NONE)).outcome().words())
        .startsWith("not looked at: ")
        .contains("cut_in");
  }
}
