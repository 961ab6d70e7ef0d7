package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/** Numbers as the trade says them are read, or refused with what to write. */
class SpokenNumberTest {

  private static final Map<String, Unit<?>> UNITS =
      Map.ofEntries(
          Map.entry("rise_in_12", Units.RISE_IN_12),
          Map.entry("deflection_limit", Units.RATIO),
          Map.entry("valid_days", Units.RATIO),
          Map.entry("vent_baffles", Units.RATIO),
          Map.entry("answer_within_h", Units.HOUR),
          Map.entry("planned_sheet_h", Units.HOURS_PER_SHEET),
          Map.entry("wind_mph", Units.MPH),
          Map.entry("live_psf", Units.PSF),
          Map.entry("planned_sheets", Units.SHEET),
          Map.entry("gap_in", Units.INCH),
          Map.entry("eave_ft", Units.FOOT));

  private static double read(String column, String text) {
    return new TypedCell(column, text).number(UNITS.get(column), Limits.NONE);
  }

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvSource({
    "rise_in_12, 8:12, 8",
    "rise_in_12, 8/12, 8",
    "rise_in_12, 4.5:12, 4.5",
    "rise_in_12, ' 8:12 ', 8",
    "rise_in_12, 8 IN 12, 8",
    "rise_in_12, 8 in 12, 8",
    "rise_in_12, 8-in-12, 8",
    "rise_in_12, 6/12 pitch, 6",
    "deflection_limit, L/240, 240",
    "deflection_limit, l / 360, 360",
    "valid_days, 30 days, 30",
    "valid_days, 1 day, 1",
    "valid_days, 30 d, 30",
    "valid_days, 30 days., 30",
    "vent_baffles, 12 baffles, 12",
    "vent_baffles, 1 baffle, 1",
    "valid_days, 4 weeks, 28",
    "answer_within_h, 48 h, 48",
    "answer_within_h, 48 hours, 48",
    "answer_within_h, 90 min, 1.5",
    "planned_sheet_h, 0.55 h, 0.55",
    "planned_sheet_h, 0.55 hours, 0.55",
    "wind_mph, 115 mph, 115",
    "live_psf, 20 PSF, 20",
    "planned_sheets, 3 sheets, 3",
    "planned_sheets, 1 sheet, 1",
    "gap_in, 1/8 inch, 0.125",
    "gap_in, 1-1/2 inches, 1.5",
    "eave_ft, 42 feet, 42",
    "eave_ft, 1 foot, 1",
  })
  void whatIsSaid_isRead(String column, String text, double number) {
    assertThat(read(column, text)).isEqualTo(number, within(1e-12));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rise_in_12|4:6|\"4:6\" is not a rise in 12; write how many inches the roof rises in 12, such as 8 or 8:12",
        "rise_in_12|34°|\"34°\" is not a rise in 12; write how many inches the roof rises in 12, such as 8 or 8:12",
        "valid_days|1 month|\"1 month\" could be more days or fewer; write days, such as 30",
        "answer_within_h|2 days|\"2 days\" could be hours of the clock or of work; write hours, such as 48",
        "live_psf|20 kPa|\"20 kPa\" is not a number; write the number alone, in psf",
        "live_psf|` 20 kPa `|\"20 kPa\" is not a number; write the number alone, in psf",
        "live_psf|20 hours|\"20 hours\" is not a number; write the number alone, in psf",
        "live_psf|20 days|\"20 days\" is not a number; write the number alone, in psf",
        "live_psf|20 inches|\"20 inches\" is not a number; write the number alone, in psf",
        "live_psf|20 feet|\"20 feet\" is not a number; write the number alone, in psf",
        "live_psf|L/240|\"L/240\" is not a number",
        "valid_days|30 kPa|\"30 kPa\" is not a number; write the number alone",
        "valid_days|1..2 days|\"1..2 days\" is not a number",
        "answer_within_h|2 kPa|\"2 kPa\" is not a number; write the number alone, in h",
        "rise_in_12|34 deg|\"34 deg\" is not a rise in 12; write how many inches the roof rises in 12, such as 8 or 8:12",
        "rise_in_12|steep|\"steep\" is not a number",
        "gap_in|3 feet|\"3 feet\" is not a length that can be read: inches are written 1-3/8, 9 1/4 or 13.5, feet and inches 16' 9-1/4\"",
        "gap_in|3 yards|\"3 yards\" is not a length that can be read: inches are written 1-3/8, 9 1/4 or 13.5, feet and inches 16' 9-1/4\"",
        "eave_ft|3 yards|\"3 yards\" is not a length that can be read: feet are written 16-9 1/4, 16' 9-1/4\" or 16.77",
        "deflection_limit|a third|\"a third\" is not a number",
      })
  void whatCouldBeOtherwise_isRefusedWithWhatToWrite(String column, String text, String said) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> read(column, text))
        .withMessage("%s", column + ": " + said);
  }
}
