package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Step;

/** Cells of a table as people fill them. */
class ParameterReadTest {

  private static final String DATE =
      "; a spreadsheet program may have made a date of it: format the column as text and type it"
          + " again";
  private static final String INCHES =
      " is not a length that can be read: inches are written 1-3/8, 9 1/4 or 13.5, feet and inches"
          + " 16' 9-1/4\"";

  private static Parameter parameter(String function, String column) {
    return Catalog.shipped().named(function).parameter(column);
  }

  @ParameterizedTest(name = "{1}: {2} is {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rafter_check     | spacing_in    | 19.2         | 19.2",
        "rafter_check     | spacing_in    | 1' 4\"       | 16", // 12 + 4
        "sister_stock     | sag_in        | 1-3/8        | 1.375", // 1 + 3 ÷ 8
        "sister_stock     | sag_in        | 1 3/8\"      | 1.375",
        "sister_stock     | span_ft       | 16-9         | 16.75", // 16 + 9 ÷ 12
        "sister_stock     | span_ft       | 16' 9\"      | 16.75",
        "sister_stock     | span_ft       | 16’ 9”       | 16.75",
        "sister_stock     | span_ft       | 16.75        | 16.75",
        "sheets_by_area   | deck_area_sf  | 1,408.72     | 1408.72",
        "sheets_by_area   | deck_area_sf  | ` 1408.72 `  | 1408.72",
        "sheets_by_area   | waste_pct     | 5 %          | 5",
        "sheets_by_area   | waste_pct     | 5%           | 5",
        "sheets_by_area   | waste_pct     | 5            | 5",
        "sheet_unit_price | sheet_usd     | $38.50       | 38.5",
        "sheet_unit_price | sheet_usd     | $1,038.50    | 1038.5",
        "sheet_unit_price | nail_usd      | 2e-2         | 0.02",
        "sheet_unit_price | margin_pct    | -3           | -3",
        "sheet_unit_price | margin_pct    | 7-1/2 %      | 7.5",
        "sheet_unit_price | margin_pct    | 12 1/2       | 12.5",
        "sheet_unit_price | margin_pct    | -1/2         | -0.5",
        "sheet_unit_price | nail_usd      | 1/8          | 0.125",
        "sheet_unit_price | sheet_usd     | $3 1/2       | 3.5",
        "sister_stock     | sag_in        | 3/4          | 0.75",
        "sister_stock     | sag_in        | ½            | 0.5",
        "sister_stock     | sag_in        | 1⅜           | 1.375",
        "sister_stock     | span_ft       | 16-9 ¼       | 16.770833333333332",
        "sheet_unit_price | margin_pct    | 7½ %         | 7.5",
      })
  void read_takesNumbersAsPeopleTypeThem(
      String function, String column, String cell, double number) {
    Figure<?> read = (Figure<?>) parameter(function, column).read(cell, Source.GIVEN);
    assertThat(read.value()).isEqualTo(number);
    assertThat(read.unit()).isEqualTo(parameter(function, column).unit());
  }

  @ParameterizedTest
  @CsvSource({
    "species, spruce-pine-fir, spruce-pine-fir",
    "species, Spruce Pine Fir, spruce-pine-fir",
    "species, SPRUCE_PINE_FIR, spruce-pine-fir",
    "grade,   No 2,            no-2",
    "grade,   No 1&Btr,        no-1-and-better",
    "size,    2X6,             2x6",
    "load,    ' snow ',        snow",
  })
  void read_takesWordsWithoutRegardToCaseAndHyphens(String column, String cell, String word) {
    Choice<?> read = (Choice<?>) parameter("rafter_check", column).read(cell, Source.GIVEN);
    assertThat(read.shown()).isEqualTo(word);
  }

  @Test
  void read_makesAnInputThatKnowsItsPlace() {
    Source place = Source.given("cases.csv, line 3, column sag_in");
    Figure<?> read = (Figure<?>) parameter("sister_stock", "sag_in").read("1-3/8", place);
    assertThat(read.name()).isEqualTo("sag_in");
    assertThat(read.source()).isEqualTo(place);
    assertThat(((Step.Given) read.step()).role()).isEqualTo(Step.Given.Role.INPUT);
  }

  @ParameterizedTest(name = "{1}: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rafter_check     | spacing_in       | ``    |"
            + " spacing_in is missing; give from 4 to 48 inches, center to center; 16 and 24 are usual",
        "sister_stock     | span_ft          | ``    |"
            + " span_ft is missing; give from 2 to 40 feet, bearing to bearing along the rafter",
        "sister_stock     | rafter_count     | ``    |"
            + " rafter_count is missing; give a number of pieces",
        "rafter_check     | deflection_limit | ` `   | deflection_limit is missing; give a number",
        "nails_per_sheet  | blocked_edges    | maybe |"
            + " blocked_edges is \"maybe\"; it must be one of yes, no",
        "rafter_check     | species          | oak   |"
            + " species is \"oak\"; it must be one of douglas-fir-larch, douglas-fir-larch-north, hem-fir,"
            + " hem-fir-north, southern-pine, spruce-pine-fir, spruce-pine-fir-south, ponderosa-pine,"
            + " eastern-hemlock, redwood, western-cedars, western-woods, unknown",
        "rafter_check     | load             | ``    |"
            + " load is missing; give one of roof-live, snow",
        "rafter_check     | live_psf         | wet   | live_psf: \"wet\" is not a number",
        "rafter_check     | live_psf         | $20   | live_psf: \"$20\" is not a number",
        "rafter_check     | live_psf         | 0,140 | live_psf: \"0,140\" is not a number",
        "rafter_check     | live_psf         | 1,40  | live_psf: \"1,40\" is not a number",
        "sheet_unit_price | sheet_usd        | 5 %   | sheet_usd: \"5 %\" is not a number",
      })
  void read_saysWhatWasGivenAndWhatIsAllowed(
      String function, String column, String cell, String message) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter(function, column).read(cell, Source.GIVEN))
        .withMessage("%s", message);
  }

  @ParameterizedTest
  @CsvSource({"16-Jul", "3/8/2026", "Jul-16", "2026-03-08", "2026-03-08 00:00:00", "8.3.2026"})
  void read_saysWhenADateArrives(String date) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("sister_stock", "sag_in").read(date, Source.GIVEN))
        .withMessage("%s", "sag_in: \"" + date + "\"" + INCHES + DATE);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("rafter_check", "live_psf").read(date, Source.GIVEN))
        .withMessage("%s", "live_psf: \"" + date + "\" is not a number" + DATE);
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("nails_per_sheet", "blocked_edges").read(date, Source.GIVEN))
        .withMessage("%s", "blocked_edges is \"" + date + "\"; it must be one of yes, no" + DATE);
  }

  /** What spreadsheet programs make of 7-16, 7-10 and 7-22. */
  @ParameterizedTest
  @CsvSource({
    "16-Jul, asce7-16",
    "Jul-16, asce7-16",
    "7/16/2026, asce7-16",
    "2026-07-16 00:00:00, asce7-16",
    "10-Jul, asce7-10",
    "22-Jul, asce7-22"
  })
  void read_saysHowToWriteAnEditionThatBecameADate(String date, String word) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("sheathing_uplift", "edition").read(date, Source.GIVEN))
        .withMessage(
            "%s",
            "edition is \"%s\"; it must be one of asce7-10, asce7-16, asce7-22; a spreadsheet program may have made a date of it: write %s"
                .formatted(date, word));
  }

  @ParameterizedTest
  @CsvSource({"7-16, asce7-16", "ASCE7-16, asce7-16", "asce7_22, asce7-22", "7-10, asce7-10"})
  void read_takesAnEditionEitherWay(String cell, String word) {
    Choice<?> read = (Choice<?>) parameter("sheathing_uplift", "edition").read(cell, Source.GIVEN);
    assertThat(read.shown()).isEqualTo(word);
  }

  @Test
  void read_takesABareFractionInFeetForNoDate() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("sister_stock", "span_ft").read("1-3/8", Source.GIVEN))
        .withMessage(
            "span_ft: \"1-3/8\" is not a length that can be read: it could be feet or inches here;"
                + " write 1-0 3/8 or 1' 3/8\", or decimals of a foot");
  }

  @Test
  void read_saysNothingOfDatesWhereNoneIs() {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> parameter("sister_stock", "sag_in").read("deep", Source.GIVEN))
        .withMessage("%s", "sag_in: \"deep\"" + INCHES);
  }
}
