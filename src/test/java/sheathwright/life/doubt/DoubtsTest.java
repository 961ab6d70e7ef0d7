package sheathwright.life.doubt;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.Estimate;
import sheathwright.job.life.LifeText;
import sheathwright.job.table.JobText;
import sheathwright.workbook.page.JobBook;

/** What only the job as a whole shows to be hardly meant. */
class DoubtsTest {

  private static final String MARKED =
      """
      mark,plane,finding,sheet
      M-1,front,rot,front-1-1
      M-2,front,rot,front-1-2
      M-3,back,rot,back-1-1
      """;

  private static Estimate marked(int planned) {
    return new Estimate(
        JobText.small()
            .withTable("marks", MARKED)
            .with("rates", "waste_pct,0", "waste_pct,5")
            .with("job", "planned_sheets,2", "planned_sheets," + planned)
            .job());
  }

  @Test
  void rule30_fewerSheetsThanAreMarked_areAskedAbout() throws IOException {
    String question =
        "job.csv, line 13, column value: planned_sheets: 2 sheets are in the price, but the marks call for 3 sheets already; is that what you mean?";
    assertThat(Doubts.of(marked(2)).lines()).containsExactly(question);
    assertThat(firstPage(JobBook.estimate(marked(2)).bytes())).contains(question);
  }

  @Test
  void asManySheetsAsAreMarked_areNot() {
    assertThat(Doubts.of(marked(3)).lines()).isEmpty();
  }

  @Test
  void aCoveringThatStays_isAskedAboutOnceTheDeckIsOpen() {
    JobText opened = LifeText.opened();
    JobText stays = opened.withLines("job", "covering_off,no,");
    assertThat(Doubts.of(new Estimate(stays.job())).lines())
        .anySatisfy(
            line ->
                assertThat(line)
                    .startsWith("job.csv, line ")
                    .endsWith(
                        "covering_off: it is no, but the job is opened, and a deck is seen only with the covering off; is that what you mean?"));
    assertThat(Doubts.of(new Estimate(opened.withLines("job", "covering_off,yes,").job())).lines())
        .noneMatch(line -> line.contains("covering_off"));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"2027-06-03, false", "2027-06-04, true"})
  void aPriceThatIsNoLongerGood_isSaid(LocalDate today, boolean isSaid) {
    var said = Doubts.outdated(JobText.small().job(), today);
    assertThat(said.isPresent()).isEqualTo(isSaid);
    said.ifPresent(
        problem ->
            assertThat(problem)
                .hasToString(
                    "job.csv, line 7, column value: quote_date: the price was good until June 3, 2027, which has passed; --issue --on DATE gives it a new day"));
  }

  private static List<String> firstPage(byte[] file) throws IOException {
    List<String> texts = new ArrayList<>();
    DataFormatter shown = new DataFormatter();
    try (XSSFWorkbook book = new XSSFWorkbook(new java.io.ByteArrayInputStream(file))) {
      book.getSheetAt(0)
          .forEach(row -> row.forEach(cell -> texts.add(shown.formatCellValue(cell))));
    }
    return texts;
  }
}
