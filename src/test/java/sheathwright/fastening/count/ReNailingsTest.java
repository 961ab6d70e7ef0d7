package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class ReNailingsTest {

  /**
   * The re-roof rule of one state's existing building code of 2007 and later, secondary source, its
   * rows for close smooth nails and for rings from memory: staples and 6d count for nothing; smooth
   * 8d count in the lower wind only, and then 6 in is enough; ring-shank 8d count in both. Framing
   * at 24 in, where 6/12 has 33 nails and 6/6 has 45.
   */
  @ParameterizedTest(name = "{0}: {3}")
  @CsvSource({
    "staples in any wind, no, 6, 45, yes, 45",
    "smooth 8d at 6 in lower wind, yes, 6, 45, no, 0",
    "smooth 8d at 12 in lower wind, yes, 12, 33, yes, 12",
    "smooth 8d at 6 in higher wind, no, 6, 45, yes, 45",
    "ring 8d at 6 in higher wind, yes, 6, 45, no, 0",
    "ring 8d at 12 in higher wind, yes, 12, 33, yes, 12",
    "just over 6 in, yes, 6.01, 44, yes, 1",
    "over 6 in but enough nails, yes, 7, 45, no, 0"
  })
  void reNailing_followsTheRuleThatIsStated(
      String deck, String count, String spacing, String sound, String needed, double nails) {
    Asked rule =
        Asked.of("re_nailing")
            .with("old_nails_count", count)
            .with("old_spacing_in", spacing)
            .with("sound_nails", sound)
            .with("support_spacing_in", "24");
    assertThat(rule.answer("needed")).isEqualTo(needed);
    assertThat(rule.number("nails")).isEqualTo(nails);
  }

  /** By hand: 45 nails are wanted at 6 in; where the old ones stand close enough no more are. */
  @Test
  void whereOldNailsAreEnough_noneAreAdded_howeverFewWereCounted() {
    Asked rule =
        Asked.line(
            "re_nailing: old_nails_count=yes, old_spacing_in=6, sound_nails=40,"
                + " support_spacing_in=24");
    assertThat(rule.number("nails")).isZero();
    assertThat(rule.answer("needed")).isEqualTo("no");
  }

  @Test
  void anEnoughSpacingOfNothing_isNeverEnough() {
    assertThat(
            Asked.of("re_nailing")
                .with("old_nails_count", "yes")
                .with("old_spacing_in", "6")
                .with("enough_spacing_in", "0")
                .with("sound_nails", "40")
                .with("support_spacing_in", "24")
                .number("nails"))
        .isEqualTo(5);
  }

  /** By hand: 400 crossings want 800. */
  @Test
  void boardNails_lackWhatIsNotThere() {
    Asked boards = Asked.of("board_nails").with("crossings", "400").with("sound_nails", "690");
    assertThat(boards.number("nails")).isEqualTo(110);
    assertThat(boards.with("sound_nails", "801").number("nails")).isZero();
    assertThat(boards.with("nails_each", "3").number("nails")).isEqualTo(510);
  }
}
