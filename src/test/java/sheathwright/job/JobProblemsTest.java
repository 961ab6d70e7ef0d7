package sheathwright.job;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.JobText;

/**
 * Whatever is wrong with a job's tables is said in one line: where, what was given, what may be.
 */
class JobProblemsTest {

  @Test
  void job_withNothingWrongIsRead() {
    assertThat(JobText.small().problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0}.csv: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // not a number
        "job|valid_days,30|valid_days,soon|job.csv, line 8, column value: valid_days: \"soon\" is not a number",
        "rates|tax_pct,5|tax_pct,five|rates.csv, line 5, column value: tax_pct: \"five\" is not a number",
        "job|valid_days,30|valid_days,NaN|job.csv, line 8, column value: valid_days: \"NaN\" is not a number",
        // out of its range, either side
        "job|valid_days,30|valid_days,0|job.csv, line 8, column value: valid_days is 0; it must be from 1 to 365",
        "job|valid_days,30|valid_days,366|job.csv, line 8, column value: valid_days is 366; it must be from 1 to 365",
        "job|valid_days,30|valid_days,1e999|job.csv, line 8, column value: valid_days: \"1e999\" is not a number that can be used",
        "job|support_spacing_in,16|support_spacing_in,5-15/16|job.csv, line 15, column value: support_spacing_in is 5-15/16; it must be from 6 to 96",
        "rates|overhead_pct,20|overhead_pct,201|rates.csv, line 3, column value: overhead_pct is 201; it must be from 0 to 200, on direct cost; write 18 for 18 %",
        "prices|sheet,40|sheet,-40|prices.csv, line 2, column usd: sheet is -40; it must be from 0 to 1000",
        "planes|front,20,|front,501,|planes.csv, line 2, column eave_ft: eave_ft is 501; it must be from 1 to 500",
        // not one of the words
        "job|blocked_edges,no|blocked_edges,maybe|job.csv, line 18, column value: blocked_edges is \"maybe\"; it must be one of yes, no",
        // a length that could be feet or inches
        "planes|front,20,12,|front,20,12-3/8,|planes.csv, line 2, column slope_length_ft: \"12-3/8\" is not a length that can be read: it could be feet or inches here; write 1-0 3/8 or 1' 3/8\", or decimals of a foot",
        // missing and empty
        "job|valid_days,30,|valid_days,,|job.csv, line 8, column value: valid_days is missing; give from 1 to 365",
        "job|valid_days,30,\\n||job.csv: valid_days is missing: Price good for, days",
        "prices|nail,0.02,\\n||prices.csv: nail is missing: Sheet nail",
        "planes|front,20,12,|front,,12,|planes.csv, line 2, column eave_ft: it is empty; a plane takes eave_ft and slope_length_ft, or corners_ft such as 0 0, 40 0, 28 12, 12 12",
        // headings
        "prices|item,usd,note|item,price,note|prices.csv, line 1, column usd: this column is missing; the file has item, price, note",
        "planes|plane,eave_ft,|plane,eave,|planes.csv, line 1, column eave: this column is not known; did you mean eave_ft?",
        "planes|,note|,color|planes.csv, line 1, column color: this column is not known; the table has plane, eave_ft, slope_length_ft, left_lean_ft, right_lean_ft, corners_ft, joint_in, stagger_in, first_course_in, faces, eave_x_ft, eave_y_ft, deck, board_in and note",
        // doubled and unknown columns of two-column tables
        "rates|rate,value,note|rate,value,value|rates.csv, line 1, column value: this column appears twice",
        "rates|rate,value,note|rate,value,valeu|rates.csv, line 1, column valeu: this column is not known; did you mean value?",
        "job|key,value,note|key,value,remark|job.csv, line 1, column remark: this column is not known; the table has key, value and note",
        "planes|ft,note\\nfront,20,12,|ft,,x\\nfront,20,12,,y|planes.csv, line 1: column 4 has no heading; name it, or begin its heading with note",
        // dates
        "job|2027-05-04|soon|job.csv, line 7, column value: quote_date: \"soon\" is not a date of this century; write year-month-day, such as 2027-05-04, or May 4, 2027, or month/day/year",
        // too long
        "planes|front,20|FRONT,20|planes.csv, line 2, column plane: 240 characters are given; at most 60 are allowed",
        "job|two sheets|SHEETS|job.csv, line 9, column value: looked_at: 2,001 characters are given; at most 2,000 are allowed",
        "prices|nail,0.02,|FRONT,0.02,|prices.csv, line 3, column item: 240 characters are given; at most 60 are allowed",
        // unknown and doubled keys
        "prices|nail,0.02,|nale,0.02,|prices.csv, line 3, column item: \"nale\" is not known; did you mean nail?",
        "prices|nail,0.02,|nail,0.02,\\nglue,3,|prices.csv, line 4, column item: \"glue\" is not known; it must be one of sheet, nail, sheet_extras, shim, sister_nail, cover_metal, clip, board_ft",
        "prices|nail,0.02,|nail,0.02,\\nnail,0.03,|prices.csv, line 4, column item: \"nail\" appears twice"
      })
  void job_saysInOneLineWhatIsWrong(String table, String text, String spoiled, String said) {
    assertThat(
            JobText.small()
                .with(table, unescaped(text), spoiled == null ? "" : unescaped(spoiled))
                .problems())
        .contains(said)
        .allSatisfy(problem -> assertThat(problem).doesNotContain("\n"));
  }

  @Test
  void job_saysHowManyKindsOfKeysThereAre() {
    assertThat(JobText.small().withLines("job", "collor,red,").problems())
        .singleElement()
        .asString()
        .matches(
            "job.csv, line 19, column key: \"collor\" is not known; job.csv has \\d+ others, and none is called nearly so: ./sheathwright tables job lists them");
  }

  /** The nearest key, once: what it was taken for is not said to be missing as well. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "customer,|custommer,|custommer|customer",
        "support_spacing_in,|rafter_spacing,|rafter_spacing|support_spacing_in",
        "valid_days,|valid_for_days,|valid_for_days|valid_days",
        "base_roofing_usd,|roof_covering_usd,|roof_covering_usd|base_roofing_usd",
        "credit_usd,|sheet_credit,|sheet_credit|credit_usd",
      })
  void job_saysTheNearestKeyOnce(String key, String written, String given, String meant) {
    assertThat(JobText.small().with("job", key, written).problems())
        .singleElement()
        .asString()
        .endsWith("\"%s\" is not known; did you mean %s?".formatted(given, meant));
  }

  @Test
  void job_saysEverythingThatIsWrongWithAFileAtOnce() {
    JobText five =
        JobText.small()
            .with("job", "valid_days,30", "valid_days,soon")
            .with("job", "permit_usd,100", "permit_usd,-1")
            .with("job", "edge_spacing_in,6", "edge_spacing_in,600")
            .with("job", "blocked_edges,no", "blocked_edges,perhaps")
            .withLines("job", "roof_color,red,");
    assertThat(five.problems()).hasSize(5);
  }

  @Test
  void job_saysEverythingThatIsWrongWithAllFilesAtOnce() {
    JobText four =
        JobText.small()
            .with("job", "valid_days,30", "valid_days,soon")
            .with("planes", "front,20", "front,wide")
            .with("prices", "sheet,40", "sheet,dear")
            .with("rates", "margin_pct,10", "margin_pct,99");
    assertThat(four.problems())
        .hasSize(4)
        .anyMatch(problem -> problem.startsWith("job.csv, line 8,"))
        .anyMatch(problem -> problem.startsWith("planes.csv, line 2,"))
        .anyMatch(problem -> problem.startsWith("prices.csv, line 2,"))
        .anyMatch(problem -> problem.startsWith("rates.csv, line 4,"));
  }

  @Test
  void job_needsAtLeastOnePlane() {
    assertThat(
            JobText.small().withTable("planes", "plane,eave_ft,slope_length_ft,note\n").problems())
        .containsExactly("planes.csv: it has no lines under its heading");
  }

  @Test
  void notes_mayStandInSeveralColumns() {
    assertThat(
            JobText.small()
                .withTable(
                    "prices",
                    "note,item,Notes of the yard,usd,note_2\n,sheet,a,40,b\n,nail,,.02,\n")
                .problems())
        .isEmpty();
  }

  private static String unescaped(String text) {
    return text.replace("\\n", "\n")
        .replace("FRONT", "f".repeat(240))
        .replace("SHEETS", "s".repeat(2_001));
  }
}
