package sheathwright.job.life;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.table.JobText;

/** What the tables of a job's life say is held against each other: each fault is one line. */
class LifeTablesTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "what,required,found,unit,sense,result\ngap,1/8,5/32,in,at-least,pass\nnails,3 1/2,7-1/4,in,at-least,pass\n",
        "what;required;found;unit;sense;result\ngap;0,125;1/8;in;at-least;pass\n"
      })
  void whatWasInspected_isANumberAsPeopleTypeIt(String inspections) {
    assertThat(LifeText.opened().withTable("inspections", inspections).problems()).isEmpty();
  }

  @Test
  void aJobWithNothingWrong_isRead() {
    assertThat(LifeText.opened().problems()).isEmpty();
  }

  @ParameterizedTest(name = "{0}.csv: {2}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // days
        "job|opened_on,2027-05-10|opened_on,2027-05-05|job.csv, line 23, column value: opened_on: 2027-05-05 is given, but agreed_on is 2027-05-06 (job.csv, line 22); a job is asked for, looked at, quoted, agreed, opened and closed, in that order: give 2027-05-06 or a later day",
        "job|asked_on,2027-04-20|asked_on,2027-04-29|job.csv, line 21, column value: looked_on: 2027-04-28 is given, but asked_on is 2027-04-29 (",
        "job|looked_on,2027-04-28|looked_on,2027-05-05|job.csv, line 7, column value: quote_date: 2027-05-04 is given, but looked_on is 2027-05-05 (",
        "job|agreed_on,2027-05-06|agreed_on,2027-05-03|job.csv, line 22, column value: agreed_on: 2027-05-03 is given, but quote_date is 2027-05-04 (",
        "job|agreed_on,|closed_on,2027-05-09,\\nagreed_on,|job.csv, line 22, column value: closed_on: 2027-05-09 is given, but opened_on is 2027-05-10 (",
        "marks|opened,2027-05-10,refasten|opened,2027-05-09,refasten|marks.csv, line 3, column on: 2027-05-09 is given, but the deck was opened on 2027-05-10 (job.csv, line 23), and the mark is of stage_found opened; give 2027-05-10 or a later day, or surveyed in stage_found",
        "marks|opened,2027-05-10,refasten|,2027-05-09,refasten|marks.csv, line 3, column on: 2027-05-09 is given, but the deck was opened on 2027-05-10 (job.csv, line 23), and the mark is of stage_found opened, which a blank means by now; give ",
        "job|pre_agreed_sheets,2|closed_on,2027-05-10,\\npre_agreed_sheets,2|",
        "orders|signed,2027-05-11|signed,2027-05-09|orders.csv, line 2, column approved_on: 2027-05-09 is given, but the order is of 2027-05-10; nobody approves what is not written yet: give 2027-05-10 or a later day",
        "job|stage,opened|stage,quoted|",
        // what a picture is of
        "photos|a.jpg,a,|a.jpg,z,|photos.csv, line 2, column mark: \"z\" is not a mark of marks.csv; it has a, b, c",
        "photos|F-1|F-9|photos.csv, line 3, column report: \"F-9\" is not a report of reports.csv; it has F-1",
        "photos|a.jpg,a,|a.jpg,,|photos.csv, line 2, column mark: it is empty; a photograph is of a mark, a report or a place on the map: give one of mark, report and sheet",
        // days with a time
        "orders|02,2027-05-12,|02,2027-05-12 9:15,|",
        "orders|01,2027-05-10,90,0.25,approved,Nobody at all,signed,2027-05-11|01,2027-05-11T10:00,90,0.25,approved,Nobody at all,signed,2027-05-11 9:00|orders.csv, line 2, column approved_on: 2027-05-11T09:00 is given, but the order is of 2027-05-11T10:00;",
        "job|opened_on,2027-05-10|opened_on,2027-05-06 7:00|",
        "orders|02,2027-05-12,|02,2027-05-12 25:15,|orders.csv, line 3, column on: \"2027-05-12 25:15\" has a time that no day has",
        // orders
        "order_lines|02,refasten|03,refasten|order_lines.csv, line 3, column order: \"03\" is not an order of orders.csv; it has 01, 02",
        "order_lines|02,refasten|02,scab|order_lines.csv, line 3, column item: \"scab\" is not an item of agreed.csv; it has sheet, refasten, total",
        "order_lines|b: 1|z: 1|order_lines.csv, line 3, column marks: \"z\" is not a mark of marks.csv",
        "orders|Nobody at all,signed,|,signed,|orders.csv, line 2, column approved_by: it is empty, but the order is approved; an approved order says by whom, how and on which day: give text of up to 200 characters, or offered in status",
        "orders|signed,2027-05-11|,2027-05-11|orders.csv, line 2, column approved_how: it is empty, but the order is approved; an approved order says by whom, how and on which day: give one of signed, e-mail, pre-agreed, or offered in status",
        "orders|signed,2027-05-11|signed,|orders.csv, line 2, column approved_on: it is empty, but the order is approved; an approved order says by whom, how and on which day: give a date, such as 2026-05-03, or a date and a time, such as 2026-05-03T14:30, or offered in status",
        "orders|02,|01,|orders.csv, line 3, column order: \"01\" appears twice; give each order one line",
        // what was agreed
        "agreed|90,2,50,10|90,2,91,10|agreed.csv, line 2, column credit_usd: 91 is given, but usd is 90; no more comes back than was paid: give at most that",
        "agreed|90,2,50,10|90,11,50,10|agreed.csv, line 2, column included: 11 is given, but most is 10; what is in the price counts too: give at most that",
        "agreed|refasten,|sheet,|agreed.csv, line 3, column item: \"sheet\" appears twice; give each item one line",
        // payments
        "stages|90,,when|80,,when|stages.csv, line 3, column part_pct: the parts come to 90 %; all payments together are 100 %: the last would be 90",
        "stages|90,,when|90,5,when|stages.csv, line 3, column part_pct: part_pct is given beside usd; a payment is a part of the total or dollars: leave one of the two blank",
        "stages|90,,when|,,when|stages.csv, line 3, column part_pct: it is empty, and usd too; a payment is a part of the total or dollars: give one of the two, such as part_pct 30",
        "stages|deposit,10,,on signing\\nlast,90,|deposit,,200,on signing\\nlast,,900|stages.csv, line 3, column usd: the payments come to $1,100.00, but the owner pays $1,200.00; the last would be $1,000.00",
        "stages|deposit,10,|deposit,,1300|stages.csv, line 3, column part_pct: the payments come to $2,380.00, but the owner pays $1,200.00; those before the last leave nothing for it: make them smaller",
        // zones and inspections
        "zones|1,3,8,6,1|3,1,8,6,1|zones.csv, line 2, column from_course: 3 is given, but to_course is 1; courses are counted up the slope: give at most that",
        "zones|1,3,8,6,1|1,3,8,9,1|zones.csv, line 2, column seen: 9 is given, but places is 8; no more is seen than is there: give at most that",
        "zones|1,3,8,6,1|1,3,8,6,7|zones.csv, line 2, column seen_bad: 7 is given, but seen is 6; only what was seen is known to be bad: give at most that",
        "zones|1,3,8,6,1|1,3,8,,1|zones.csv, line 2, column seen: it is empty, but seen_bad is given; say of how many that were seen, such as 12",
        "zones|attic,front|attic,frunt|zones.csv, line 2, column plane: \"frunt\" is not a plane of planes.csv; it has front, back",
        "inspections|nails,6|nails,many|inspections.csv, line 2, column required: \"many\" is given, but sense is at-most, which is for numbers; give a number with its unit in unit, such as 6 and in, or is in sense"
      })
  void whatDoesNotHold_isOneLine(String table, String text, String spoiled, String said) {
    var problems = LifeText.opened().with(table, unescaped(text), unescaped(spoiled)).problems();
    if (said == null) {
      assertThat(problems).isEmpty();
    } else {
      assertThat(problems)
          .anyMatch(problem -> problem.startsWith(said))
          .noneMatch(problem -> problem.contains("\n"));
    }
  }

  /** Nothing that the owner chose after he agreed is billed or left out in silence. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dip,left as it is,0,yes,2027-05-06|",
        "vent,a ridge vent,125,yes,2027-05-11|",
        "vent,a ridge vent,125,yes,|options.csv, line 2, column chosen_on: it is empty, but the option is chosen and is not in what was agreed on 2027-05-06; give the day on which the owner chose it since, and the next change order asks for it, or no in chosen",
        "vent,a ridge vent,125,yes,2027-05-05|options.csv, line 2, column chosen_on: 2027-05-05 is given, but what was agreed on 2027-05-06 does not have the option; give the day",
        "osb,thicker,125,no,|order_lines.csv, line 4, column marks: \"vent\" is not an option of options.csv; it has osb; an option that was ordered stays there, with no in chosen if it is given up: put it back",
      })
  void anOption_isAgreedOrChosenSince(String option, String said) {
    JobText job =
        LifeText.opened()
            .withLines("agreed", "option-1,job,0,1,,,dip: Plane A is left as it is")
            .withTable("options", "option,item,usd,chosen,chosen_on\n" + option + "\n");
    if (option.startsWith("osb")) {
      job = job.withLines("order_lines", "02,option,job,1,125,vent: 1");
    }
    if (said == null) {
      assertThat(job.problems()).isEmpty();
    } else {
      assertThat(job.problems()).singleElement().asString().startsWith(said);
    }
  }

  private static JobText byTwo(String marks) {
    return LifeText.opened()
        .withTable("marks", "mark,plane,finding,sheet,by,on\n" + marks)
        .withTable("order_lines", "order,item,unit,quantity,usd,marks\n01,sheet,half,1,90,a: 1\n")
        .withTable("photos", "photo,mark,view\na.jpg,a,open\n");
  }

  /** Two phones count for themselves; one does not count one number twice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "`a,front,rot,front-1-2,JT,\n7,front,rot,front-1-1,JT,\n7,back,rot,back-1-1,MK,\n`|",
        "`a,front,rot,front-1-2,JT,\n7,front,rot,front-1-1,JT,\n7,back,rot,back-1-1,JT,\n`|marks.csv, line 4, column mark: \"7\" stands in line 3 too, and both are by JT; give one of them another number",
        "`a,front,rot,front-1-2,JT,\n7,front,rot,front-1-1,,\n7,back,rot,back-1-1,,\n`|marks.csv, line 4, column mark: \"7\" stands in line 3 too, and by says of neither who found it; give one of them another number, or say in by who found which",
        "`a,front,rot,front-1-2,JT,\n7,front,rot,front-1-1,JT,\n7,back,rot,back-1-1,,\n`|marks.csv, line 4, column by: it is empty, and another line has mark \"7\" too; say who found which, or give one of them another number",
        "`a,front,rot,front-1-2,JT,\na,back,rot,back-1-1,MK,\n`|order_lines.csv, line 2, column marks: \"a\" is given, and 2 marks of marks.csv have that number; write \"a (by JT)\" for line 2, \"a (by MK)\" for line 3",
        "`a,front,rot,front-1-2,JT,\na,back,rot,back-1-1,MK,\n`|photos.csv, line 2, column mark: \"a\" is given, and 2 marks of marks.csv have that number; write \"a (by JT)\" for line 2, \"a (by MK)\" for line 3",
      })
  void marksOfTwoPhones_areToldApart(String marks, String said) {
    var problems = byTwo(unescaped(marks)).problems();
    if (said == null) {
      assertThat(problems).isEmpty();
    } else {
      assertThat(problems).anyMatch(problem -> problem.startsWith(said));
    }
  }

  /** A number that only one has may be given with who found it, too; a name may have a comma. */
  @Test
  void aMark_isMeantByItsNumberAndWhoFoundIt() {
    String two = "a,front,rot,front-1-2,\"Plume, J.\",\na,back,rot,back-1-1,MK,\n";
    JobText shared =
        byTwo(two)
            .with("photos", "a.jpg,a,", "a.jpg,a (by MK),")
            .with("order_lines", "a: 1", "\"a (by Plume, J.): 0.5, a (by MK): 0.5\"");
    assertThat(shared.problems()).isEmpty();
    assertThat(
            byTwo("a,front,rot,front-1-2,JT,\n")
                .with("photos", "a.jpg,a,", "a.jpg,a (by JT),")
                .problems())
        .isEmpty();
    assertThat(
            byTwo("a,front,rot,front-1-2,JT,\n")
                .with("photos", "a.jpg,a,", "a.jpg,a (by MK),")
                .problems())
        .singleElement()
        .asString()
        .startsWith(
            "photos.csv, line 2, column mark: \"a (by MK)\" is not a mark of marks.csv; it has a");
  }

  @Test
  void aMarkAfterTheEnd_isSaid() {
    JobText closed =
        LifeText.opened()
            .with("job", "stage,opened", "stage,closed")
            .withLines("job", "closed_on,2027-05-14,");
    assertThat(closed.problems()).isEmpty();
    assertThat(
            closed
                .with(
                    "marks",
                    "b,front,loose,front-2-1,,,,,opened,2027-05-10",
                    "b,front,loose,front-2-1,,,,,opened,2027-05-15")
                .problems())
        .containsExactly(
            "marks.csv, line 3, column on: 2027-05-15 is given, but the job was closed on 2027-05-14 (job.csv, line 26); give 2027-05-14 or an earlier day, or yes in void");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"-1|hours is -1; it must be from 0 to 2000", "two|hours: \"two\" is not a number"})
  void hours_areNotNegative(String hours, String said) {
    assertThat(
            LifeText.opened()
                .withTable("log", "day,task,quantity,hours\n2027-05-10,sheet,3," + hours + "\n")
                .problems())
        .singleElement()
        .asString()
        .startsWith("log.csv, line 2, column hours: " + said.replace("hours: ", ""));
  }

  /** By hand: 2 sheets and $200 were agreed beforehand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "2|180|",
        "3|180|it comes to 3 sheets in all, and pre_agreed_sheets is 2",
        "2|270|it comes to $270.00 in all, and pre_agreed_usd is $200.00",
        "3|270|it comes to 3 sheets in all, and pre_agreed_sheets is 2, and it comes to $270.00 in all, and pre_agreed_usd is $200.00"
      })
  void whatWasAgreedBeforehand_isNotExceeded(String sheets, String usd, String said) {
    JobText job =
        LifeText.opened()
            .with(
                "orders",
                "90,0.25,approved,Nobody at all,signed",
                usd + ",0.25,approved,Nobody at all,pre-agreed")
            .with("order_lines", "half,1,90", "half," + sheets + "," + usd);
    if (said == null) {
      assertThat(job.problems()).isEmpty();
    } else {
      assertThat(job.problems())
          .containsExactly(
              "orders.csv, line 2, column approved_how: pre-agreed is given, but "
                  + said
                  + "; ask who may say yes, then give signed or e-mail, or offered in status");
    }
  }

  @Test
  void theAgreementSaysWhatWasAgreedBeforehand_notTheJob() {
    JobText job =
        LifeText.opened()
            .with("orders", "signed", "pre-agreed")
            .withLines("agreed", "pre-agreed,,50,,,1,without a further yes");
    assertThat(job.problems())
        .singleElement()
        .asString()
        .contains("it comes to $90.00 in all, and pre_agreed_usd is $50.00; ");
  }

  @Test
  void nothingAgreedBeforehand_isNotPreAgreed() {
    JobText job =
        LifeText.opened()
            .with("orders", "signed", "pre-agreed")
            .with("job", "pre_agreed_sheets,2,\npre_agreed_usd,200,\n", "");
    assertThat(job.problems())
        .singleElement()
        .asString()
        .contains("nothing was agreed beforehand (pre_agreed_sheets, pre_agreed_usd); ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "agreed|agreed.csv: this table is missing, but the job is at the stage opened (job.csv, line 19); a job has it from agreed on; agree writes it: put it back, or give stage quoted and run agree",
        "sent|sent.csv: this table is missing, but the job is at the stage opened (job.csv, line 19); a job has it from agreed on; quote --issue writes it: put it back, or give stage quoted and issue the quote",
        "stages|stages.csv: this table is missing, but the job is at the stage opened (job.csv, line 19); a job has it from agreed on; give each payment a line, such as stage deposit, part_pct 10, when on signing",
        "marks|marks.csv: this table is missing, but the job is at the stage opened (job.csv, line 19); a job has it from opened on; if nothing is found yet, its heading alone says so: mark,plane,finding,sheet"
      })
  void aStage_needsItsTables(String table, String said) {
    Map<String, String> tables = new LinkedHashMap<>(LifeText.opened().tables());
    tables.remove(table);
    assertThat(new JobText(tables).problems()).contains(said);
    assertThat(
            new JobText(tables)
                .with("job", "stage,opened", "stage,quoted")
                .with("job", "opened_on,2027-05-10,\n", "")
                .problems())
        .doesNotContain(said);
  }

  @Test
  void anOpenedDeck_wasOpenedOnADay() {
    assertThat(LifeText.opened().with("job", "opened_on,2027-05-10,\n", "").problems())
        .containsExactly(
            "job.csv, line 19, column value: stage: opened is given, but the day is missing on which the deck was opened; give a line opened_on, such as 2027-05-10, or stage agreed");
  }

  /** Nothing found is something to say once the deck is open; before, it is a forgotten table. */
  @Test
  void anEmptyTableOfMarks_isAllowedOnceTheDeckIsOpen() {
    String empty = "mark,plane,finding,sheet\n";
    JobText opened =
        LifeText.opened()
            .withTable("marks", empty)
            .withTable("photos", "photo,report,view\nf.jpg,F-1,wide\n")
            .withTable("orders", "order,on,usd,status\n02,2027-05-12,8,withdrawn\n")
            .withTable(
                "order_lines", "order,item,unit,quantity,usd,marks\n02,refasten,place,1,8,b\n");
    assertThat(opened.problems()).isEmpty();
    assertThat(opened.job().lines(sheathwright.job.JobTable.MARKS)).isEmpty();
    assertThat(JobText.small().withTable("marks", empty).problems())
        .containsExactly("marks.csv: it has no lines under its heading");
    assertThat(opened.withTable("marks", "mark,plane,fnding,sheet\n").problems())
        .anyMatch(problem -> problem.startsWith("marks.csv, line 1, column fnding: "));
  }

  @Test
  void aKnownLeak_isMarkedSomewhere() {
    JobText leaking = JobText.small().withLines("job", "known_leak,yes,");
    assertThat(leaking.problems())
        .containsExactly(
            "job.csv, line 19, column value: known_leak: yes is given, which is for marks.csv or zones.csv, and this job has neither; mark where the water comes in, or make the places under it a zone, or give no");
    assertThat(leaking.withTable("zones", "zone,plane\nattic,front\n").problems()).isEmpty();
    assertThat(leaking.withLines("job", "stage,asked,").problems()).isEmpty();
  }

  private static String unescaped(String text) {
    return text.replace("\\n", "\n");
  }
}
