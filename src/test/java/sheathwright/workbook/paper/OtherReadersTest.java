package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.JobText;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.told.Photos;

/**
 * The papers for supplier, building official and covering's maker: what each asks for, no price.
 */
class OtherReadersTest {

  private static final String INSPECTIONS =
      """
      what,required,found,unit,sense,evidence,by,on,result,code
      Nails on panel edges,6,6,in,at-most,tape,I. Corvane,2027-06-02,pass,the schedule
      gap between sheets,0.125,0.0625,in,at-least,feeler,I. Corvane,2027-06-02,fail,
      """;

  private static void hasNoPrice(byte[] file) {
    Texts said = Texts.of(file);
    said.tabs().forEach(tab -> assertThat(String.join(" ", said.on(tab))).doesNotContain("$"));
  }

  @Test
  void theOrderList_saysWhatIsSoldAndHowMany() {
    byte[] file = OrderListBook.of(new Estimate(Job.of(Samples.tables("tallow-end")))).bytes();

    SheetsOfPaper.areFew(file, 1);
    hasNoPrice(file);
    assertThat(Texts.of(file).on("Order list"))
        .contains("2x6 12 ft", "stick", "Deliver to", "Taken, date")
        .doesNotContain("nothing needed");
  }

  @Test
  void theInspectionRecord_saysWhatWasAskedFoundAndNotChecked() {
    Job job = LifeJob.with(Map.of("inspections", INSPECTIONS));

    byte[] file = InspectionRecordBook.of(new Estimate(job), Photos.none()).bytes();

    SheetsOfPaper.areFew(file, 2);
    hasNoPrice(file);
    List<String> said = Texts.of(file).on("Inspection record");
    assertThat(said)
        .contains("IRC 2018", "at most 6 in; the schedule", "at least 1/8 in", "1/16 in", "fail")
        .contains("June 2, 2027", "I. Corvane", "feeler", "Building official, date");
    assertThat(said)
        .filteredOn(text -> text.startsWith("Asked for, and not in the list of what was looked at"))
        .singleElement()
        .asString()
        .contains("Nails in the field")
        .doesNotContain("Nails on panel edges");
  }

  @Test
  void anInspectionThatNobodyMade_isSaidToBeMissing() {
    byte[] file =
        InspectionRecordBook.of(new Estimate(LifeJob.with(Map.of())), Photos.none()).bytes();

    assertThat(Texts.of(file).on("Inspection record")).contains("Nothing is in the record yet.");
  }

  @Test
  void theMakersRecord_saysWhatIsAskedAndWhatIsThere() {
    JobText job =
        JobText.demo("cinder-brook").with("maker", "at-most,1/4,3/16", "at-most,1/4,5/16");

    byte[] file = MakerRecordBook.of(new Estimate(job.job()), Photos.none()).bytes();

    SheetsOfPaper.areFew(file, 1);
    hasNoPrice(file);
    assertThat(Texts.of(file).on("Maker's record"))
        .containsSubsequence("dip over 10 ft", "at most 1/4 in", "5/16 in", "NOT met")
        .contains("thinnest deck panel", "at least 15/32 in", "met", "stamp in photo 5");
  }

  @Test
  void theMakersRecord_saysWhoWasAskedAndWhatWasAnswered_andWhatNobodyHasShown() {
    JobText job =
        JobText.demo("cinder-brook")
            .withTable(
                "maker",
                """
                requirement,unit,sense,required,found,evidence,asked_of,asked_on,answered_on,document
                strapping under clips,count,at-least,1,,,R. Ostrander,2027-05-05,2027-05-11,letter of May 11
                gap between panels,in,at-most,1/8,1/16,gauge,R. Ostrander,2027-05-05,,
                """);

    List<String> said =
        Texts.of(MakerRecordBook.of(new Estimate(job.job()), Photos.none()).bytes())
            .on("Maker's record");

    assertThat(said)
        .containsSubsequence("strapping under clips", "not shown yet", "gap between panels", "met")
        .containsSubsequence(
            "strapping under clips",
            "R. Ostrander",
            "May 5, 2027",
            "May 11, 2027",
            "letter of May 11")
        .contains("not answered yet");
    assertThat(new Estimate(job.job()).ties())
        .filteredOn(tie -> tie.what().contains("covering's maker asks"))
        .singleElement()
        .matches(tie -> tie.holds().holds());
  }

  /** By hand: 186 and 150 lb, on the average 168; what the maker asks, 160, one of them missed. */
  @Test
  void theMakersRecord_saysWhatScrewsHeld() {
    JobText job =
        JobText.demo("cinder-brook")
            .with(
                "maker", "screws in a clip,count,at-least,2,2", "a screw holds,lb,at-least,160,160")
            .withTable(
                "pull_tests",
                """
                plane,sheet,screw,lb,broke,on,by
                porch,,no. 10,186,wood,2027-05-18,I. Corvane
                porch,,no. 10,150,none,,
                """);

    List<String> said =
        Texts.of(MakerRecordBook.of(new Estimate(job.job()), Photos.none()).bytes())
            .on("Maker's record");

    assertThat(said)
        .containsSubsequence("no. 10", "porch", "186 lb", "the wood", "I. Corvane, May 18, 2027")
        .contains("nothing, so far");
    assertThat(said)
        .filteredOn(text -> text.startsWith("2 screws pulled"))
        .singleElement()
        .asString()
        .contains("least held 150 lb", "average 168 lb", "160 lb is asked; 1 held less");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "nowhere,,no. 10,186,wood|pull_tests.csv, line 2, column plane: \"nowhere\" is not a plane",
        "porch,,no. 10,9000,wood|pull_tests.csv, line 2, column lb: lb is 9000; it must be from 0 to 5000",
        "porch,,no. 10,186,glue|pull_tests.csv, line 2, column broke: broke is \"glue\"; it must be one of wood, screw, none",
        "porch,,,186,wood|pull_tests.csv, line 2, column screw: ",
        "porch,porch-90-1,no. 10,186,wood|pull_tests.csv, line 2, column sheet: "
      })
  void aPulledScrew_thatCannotBeRead_isSaidInOneLine(String line, String said) {
    JobText job =
        JobText.demo("cinder-brook")
            .withTable("pull_tests", "plane,sheet,screw,lb,broke\n" + line + "\n");

    assertThatThrownBy(() -> new Estimate(job.job())).hasMessageStartingWith(said);
  }

  @Test
  void anAnswerBeforeItWasAskedFor_isRefused() {
    JobText job =
        JobText.demo("cinder-brook")
            .withTable(
                "maker",
                """
                requirement,unit,sense,required,asked_on,answered_on
                gap,in,at-most,1/8,2027-05-05,2027-05-04
                """);

    assertThat(job.problems())
        .singleElement()
        .asString()
        .startsWith("maker.csv, line 2, column answered_on: 2027-05-04 is given");
  }

  /** Clips 24 in apart in the field as the maker has it, and closer where the wind pulls harder. */
  @Test
  void theMakersRecord_saysHowCloseClipsStand_andHowFlatTheDeckLies() {
    byte[] file =
        MakerRecordBook.of(new Estimate(Job.of(Samples.tables("tallow-end"))), Photos.none())
            .bytes();

    assertThat(Texts.of(file).on("Maker's record"))
        .contains("in the field of the roof", "along its edges", "at its corners", "by maker")
        .contains("Deepest off the string", "Before", "As meant", "not read again yet");
  }

  /** A-3 lay 5/8 in below the string; it is told what it lies at now, and that B was not read. */
  @Test
  void theMakersRecord_tellsWhatWasReadWhenTheRaftersWereDone() {
    String readings =
        """
        plane,rafter,drop_in,done_in,done_on
        A,A-1,0,,
        A,A-2,3/8,,
        A,A-3,5/8,-3/16,2027-06-01
        B,B-1,1/2,,
        """;
    Map<String, RowSource> tables = new HashMap<>(Samples.tables("mistwater-cottage").files());
    tables.put("readings", CsvFile.parse("readings.csv", readings));

    String said =
        Texts.of(
                MakerRecordBook.of(new Estimate(Job.of(new JobTables(tables))), Photos.none())
                    .bytes())
            .on("Maker's record")
            .toString();

    assertThat(said).contains("3/16 in", "at 1 of 3 places", "not read again yet");
  }

  @ParameterizedTest
  @ValueSource(strings = {"quince-hollow", "cinder-brook", "tallow-end", "mistwater-cottage"})
  void theOrderList_isOneSheetOfPaper(String job) {
    SheetsOfPaper.areFew(OrderListBook.of(new Estimate(Job.of(Samples.tables(job)))).bytes(), 1);
  }
}
