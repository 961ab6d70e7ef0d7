package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.MadeFunctions.Wood;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.published.LoadEdition;

/** What is said of a cell, with a tab on either side of it. */
class TypedCellTest {

  private static final Limits UP_TO_ONE = Limits.between(0, 1, "a gap");
  private static final String DATE = "; a spreadsheet program may have made a date of it: ";

  /** Words that are no more than their names. */
  enum Plain {
    ON,
    OFF
  }

  private static TypedCell cell(String text) {
    return new TypedCell("gap_in", "\t" + text + "\t");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gap_in | gap_in: too wide | too wide",
        "gap_in | edge_in: too wide | edge_in: too wide",
        "gap_in | the gap_in: too wide | the gap_in: too wide",
      })
  void message_losesTheColumnThatStandsBeforeIt(String column, String message, String said) {
    assertThat(TypedCell.under(column, message)).isEqualTo(said);
  }

  @Test
  void number_isHeldAgainstItsLimits() {
    assertThat(cell("0.5").number(Units.INCH, UP_TO_ONE)).isEqualTo(0.5);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("5").number(Units.INCH, UP_TO_ONE))
        .withMessage("gap_in is 5; it must be from 0 to 1, a gap");
  }

  @Test
  void number_thatIsTooLargeForAnyIsRefused() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("1e999").number(Units.INCH, Limits.NONE))
        .withMessage("gap_in: \"1e999\" is not a number that can be used");
  }

  @ParameterizedTest
  @CsvSource({"soft, SOFT", "Hard Maple, HARD_MAPLE", "HARD_MAPLE, HARD_MAPLE"})
  void option_isTheOneThatIsNamed(String text, Wood wood) {
    assertThat(cell(text).option(Wood.class)).isEqualTo(wood);
  }

  @Test
  void option_thatIsNoneIsRefusedWithTheNearest() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("sofa").option(Wood.class))
        .withMessage("gap_in is \"sofa\" (did you mean soft?); it must be one of soft, hard-maple");
  }

  @Test
  void option_thatBecameADateIsSaidAsItIsWritten() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("16-Jul").option(LoadEdition.class))
        .withMessage(
            "gap_in is \"16-Jul\"; it must be one of asce7-10, asce7-16, asce7-22%s",
            DATE + "write asce7-16");
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("16-Jul").option(Plain.class))
        .withMessage(
            "gap_in is \"16-Jul\"; it must be one of ON, OFF%s",
            DATE + "format the column as text and type it again");
  }

  @Test
  void number_thatBecameADateIsSaid() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> cell("16-Jul").number(Units.RATIO, Limits.NONE))
        .withMessage(
            "gap_in: \"16-Jul\" is not a number%s",
            DATE + "format the column as text and type it again");
  }

  @Test
  void nothing_isMissing() {
    assertThat(TypedCell.missing("gap_in", Units.INCH, UP_TO_ONE))
        .hasMessage("gap_in is missing; give from 0 to 1 inches, a gap");
    assertThat(TypedCell.missing("wood", Wood.class))
        .hasMessage("wood is missing; give one of soft, hard-maple");
  }
}
