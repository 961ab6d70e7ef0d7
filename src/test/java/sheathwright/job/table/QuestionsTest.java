package sheathwright.job.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Job;
import sheathwright.job.JobFields;

/** What is allowed but hardly meant is asked about; what firms give is not. */
class QuestionsTest {

  /** A job that asks nothing. */
  private static JobText usual() {
    return JobText.small().with("rates", "waste_pct,0", "waste_pct,5");
  }

  private static List<String> questions(JobText text) {
    return text.job().questions().stream().map(Problem::toString).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "quince-hollow",
        "mistwater-cottage",
        "tallow-end",
        "cinder-brook",
        "gannet-spit",
        "kettle-reach",
        "dunmarrow-hall",
        "whole-life/3-quoted",
        "whole-life/6-closed"
      })
  void theDemoJobs_askNothing(String name) {
    assertThat(questions(JobText.demo(name))).isEmpty();
  }

  @Test
  void nothing_isAskedOfTheUsual() {
    assertThat(questions(usual())).isEmpty();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rates|margin_pct,10|margin_pct,0.15|rates.csv, line 4, column value: margin_pct: 0.15 is given, but from 3 to 60 % is usual; did you mean 15?",
        "rates|overhead_pct,20|overhead_pct,.07|rates.csv, line 3, column value: overhead_pct: .07 is given, but from 1 to 100 % is usual, or 0; did you mean 7?",
        "rates|margin_pct,10|margin_pct,2|rates.csv, line 4, column value: margin_pct: 2 is given, but from 3 to 60 % is usual; is that what you mean?",
        "rates|margin_pct,10|margin_pct,0|rates.csv, line 4, column value: margin_pct: 0 is given, but from 3 to 60 % is usual; is that what you mean?",
        "rates|waste_pct,5|waste_pct,0|rates.csv, line 6, column value: waste_pct: 0 is given, but from 1 to 50 % is usual; is that what you mean?",
        "rates|overhead_pct,20|overhead_pct,0.20|rates.csv, line 3, column value: overhead_pct: 0.20 is given, but from 1 to 100 % is usual, or 0; did you mean 20?",
        "prices|sheet,40|sheet,0|prices.csv, line 2, column usd: sheet: 0 is given, but from 5 to 300 $/sheet is usual; is that what you mean?",
        "job|blocked_edges,no,|blocked_edges,no,\\nprice_until,2027-05-20,|job.csv, line 19, column value: price_until: prices hold until May 20, 2027, but the quote is good until June 3, 2027; is that what you mean?",
        "rates|margin_pct,10|margin_pct,75|rates.csv, line 4, column value: margin_pct: 75 is given, but from 3 to 60 % is usual; is that what you mean?",
        "rates|labor_usd_per_h,50|labor_usd_per_h,5|rates.csv, line 2, column value: labor_usd_per_h: 5 is given, but from 10 to 250 $/h is usual; is that what you mean?",
        "prices|nail,0.02|nail,0|prices.csv, line 3, column usd: nail: 0 is given, but from 0.001 to 1 $/nail is usual; is that what you mean?"
      })
  void whatNoFirmMeans_isAsked(String table, String text, String other, String question) {
    assertThat(questions(usual().with(table, text, other.replace("\\n", "\n"))))
        .containsExactly(question);
  }

  @Test
  void aShareForAPercentage_isAskedOfAMarkToo() {
    JobText marked =
        JobText.small()
            .withTable(
                "marks", "mark,plane,finding,sheet,moisture_pct\n1,front,rot,front-1-1,0.19\n");
    assertThat(questions(marked))
        .contains(
            "marks.csv, line 2, column moisture_pct: 0.19 is given, but from 4 to 100 % is usual; did you mean 19?");
  }

  /** Sheets are whole and never fewer than none: that is refused, not asked. */
  @ParameterizedTest
  @ValueSource(strings = {"-1", "2.5"})
  void includedSheets_areCounted(String sheets) {
    assertThat(
            JobText.small().with("job", "planned_sheets,2", "planned_sheets," + sheets).problems())
        .singleElement()
        .asString()
        .startsWith("job.csv, line 13, column value: planned_sheets is " + sheets + ";");
  }

  @Test
  void aDate_standsAsYearMonthDay() {
    Job job = JobText.small().with("job", "2027-05-04", "\"May 4, 2027\"").job();
    assertThat(job.fact(JobFields.QUOTE_DATE).value()).isEqualTo("2027-05-04");
  }

  /** Read by the rule of the house, the month first, and said where it could be otherwise. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "10/4/2027, '10/4/2027 is read as October 4, 2027, the month first; write 2027-10-04 to be sure'",
    "10/14/2027, ''",
    "4/4/2027, ''",
  })
  void aDateInNumbers_isSaid(String date, String said) {
    List<String> questions = questions(usual().with("job", "2027-05-04", date));
    if (said.isEmpty()) {
      assertThat(questions).isEmpty();
    } else {
      assertThat(questions).containsExactly("job.csv, line 7, column value: quote_date: " + said);
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "13/4/2027, write 2027-04-13",
    "10/4/27, write 2027-10-04 or 2027-04-10",
    "10.04.2027, write 2027-10-04 or 2027-04-10",
    "4.4.2027, write 2027-04-04",
    "2/29/2027, 'write year-month-day, such as 2027-05-04'",
    "31/31/2027, 'write year-month-day, such as 2027-05-04'",
  })
  void aDateThatIsNotRead_isSaidAsItIsWritten(String date, String write) {
    assertThat(JobText.small().with("job", "2027-05-04", date).problems())
        .singleElement()
        .asString()
        .endsWith("quote_date: \"%s\" is not a date of this century; %s".formatted(date, write));
  }
}
