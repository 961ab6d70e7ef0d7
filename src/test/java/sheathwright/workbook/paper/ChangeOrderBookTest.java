package sheathwright.workbook.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.Job;
import sheathwright.job.table.Moment;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.found.Found;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.page.OverwrittenCells;
import sheathwright.workbook.told.Photos;

/** A change order says on its pages what the tables come to, and misses whatever is changed. */
class ChangeOrderBookTest {

  private static final String WITH_VENT =
      LifeJob.OPTIONS + "vent,A ridge vent,4,ft,31.25,yes,2027-05-18\n";

  private static byte[] book;
  private static Texts texts;

  @TempDir Path folder;

  @BeforeAll
  static void written() {
    book = LifeBooks.changeOrder(LifeJob.with(Map.of()), LifeJob.found());
    texts = Texts.of(book);
  }

  /** 1.5 more at 117, 6 at 8, 24 ft at 1.05, worked out by hand: 175.50, 48.00, 25.20. */
  @Test
  void byHalf_itComesToWhatWasWorkedOutByHand() {
    assertThat(Cells.byPoi(book)).isEqualTo(Cells.written(book));
    assertThat(texts.number("change_usd")).isEqualTo(248.70);
    assertThat(texts.number("new_total_usd")).isEqualTo(11_121.70);
    assertThat(texts.number("last_payment_usd")).isEqualTo(4_685.20);
    assertThat(texts.number("sheets_left_below_ceiling")).isEqualTo(45.5);
  }

  /** 2 more at 117, 6 at 8, 24 ft at 1.05. */
  @Test
  void byPlace_itComesToWhatWasWorkedOutByHand() {
    Map<String, String> byPlace =
        Map.of("agreed", LifeJob.AGREED.replace("sheet,half", "sheet,place"));

    Texts said = Texts.of(LifeBooks.changeOrder(LifeJob.with(byPlace), LifeJob.found(1)));

    assertThat(said.number("change_usd")).isEqualTo(307.20);
    assertThat(said.number("new_total_usd")).isEqualTo(11_180.20);
    assertThat(said.number("last_payment_usd")).isEqualTo(4_743.70);
  }

  @Test
  void theFirstPage_saysWhatAndWhyAndWhoAndByWhen() {
    assertThat(texts.on("Change order"))
        .contains(
            "Replace (south side, at the ridge, right; north side, at the ridge, middle): rot, not measured.")
        .contains(
            "Odalys Brackenridge-Plume (555 0143, by voice or text), within 4 hours of receipt.")
        .contains("Owner, date and time")
        .contains("Contractor, date and time");
    assertThat(String.join(" ", texts.on("Change order")))
        .contains("up to 6 sheets and $500.00 over all");
  }

  @Test
  void oneSheet_isNotSheets() {
    String one = LifeJob.AGREED.replace("pre-agreed,,500,,,6", "pre-agreed,,500,,,1");

    Texts said =
        Texts.of(LifeBooks.changeOrder(LifeJob.with(Map.of("agreed", one)), LifeJob.found()));

    assertThat(String.join(" ", said.on("Change order"))).contains("up to 1 sheet and $500.00");
    assertThat(said.on("Change order")).contains("This order stays within that", "no");
  }

  @Test
  void withATime_theFirstPageSaysUntilWhen() {
    assertThat(Moment.read("2027-05-18T14:30").after(sheathwright.figure.Amounts.hours(4)))
        .isEqualTo("by 6:30 PM on May 18, 2027");
  }

  /**
   * One of the six that were ordered is taken back: 8 dollars go back, and nothing else is asked.
   */
  @Test
  void whatWasOrderedAndIsTakenBack_makesANegativeLine() {
    List<Found> found = new ArrayList<>(LifeJob.found());
    Found last = found.remove(10);
    found.add(10, LifeJob.takenBack(last));

    Texts said = Texts.of(LifeBooks.changeOrder(LifeJob.with(LifeJob.CLOSED), found));

    assertThat(said.number("change_usd")).isEqualTo(-8);
    assertThat(said.number("new_total_usd")).isEqualTo(11_113.70);
    assertThat(said.on("Change order"))
        .contains("North side, half way up, right: taken back; it was ordered before.");
  }

  @Test
  void rain_isSpokenOfOnlyWhereSomethingWasAgreedInAdvance() {
    String without = LifeJob.AGREED.replaceAll("(?m)^pre-agreed.*\\n", "");

    Texts said =
        Texts.of(LifeBooks.changeOrder(LifeJob.with(Map.of("agreed", without)), LifeJob.found()));

    assertThat(String.join(" ", said.on("Change order"))).doesNotContain("rain");
  }

  /**
   * A vent of 4 ft at $31.25 was chosen when the deck lay open: $125.00 more than the marks'
   * $248.70. Whatever is typed over in its line is seen.
   */
  @Test
  void anOptionChosenSince_standsOnBothPagesAndInTheSum() throws Exception {
    byte[] paper =
        LifeBooks.changeOrder(LifeJob.with(Map.of("options", WITH_VENT)), LifeJob.found());

    Texts said = Texts.of(paper);
    assertThat(Cells.byPoi(paper)).isEqualTo(Cells.written(paper));
    assertThat(said.on("Change order"))
        .contains("Chosen: A ridge vent, in ft", "You chose it on May 18, 2027: A ridge vent.");
    assertThat(said.on("What was found"))
        .contains("Chosen since it was agreed", "A ridge vent", "You chose it on May 18, 2027");
    assertThat(said.number("chosen_quantity")).isEqualTo(4);
    assertThat(said.number("chosen_price_usd")).isEqualTo(31.25);
    assertThat(said.number("chosen_amount_usd")).isEqualTo(125);
    assertThat(said.number("change_usd")).isEqualTo(373.70);
    assertThat(said.number("new_total_usd")).isEqualTo(11_246.70);
    assertThat(said.number("last_payment_usd")).isEqualTo(4_810.20);
    SheetsOfPaper.areFew(paper, 6);
    OverwrittenCells.eachIsSeen(
        paper,
        List.of(
            "change_usd",
            "new_total_usd",
            "last_payment_usd",
            "shown_option_vent",
            "shown_option_vent_each_usd",
            "shown_option_vent_amount_usd",
            "chosen_quantity",
            "chosen_price_usd",
            "chosen_amount_usd"),
        List.of("change_usd", "new_total_usd", "last_payment_usd"),
        SheetsOfPaper::changed);
  }

  /** Nothing was found that is to be paid for: no photograph is asked for. */
  @Test
  void anOptionAlone_isAChangeOrder() {
    byte[] paper = LifeBooks.changeOrder(LifeJob.with(Map.of("options", WITH_VENT)), List.of());

    Texts said = Texts.of(paper);
    assertThat(Cells.byPoi(paper)).isEqualTo(Cells.written(paper));
    assertThat(said.number("change_usd")).isEqualTo(125);
    assertThat(said.on("What was found")).contains("No photograph.");
  }

  @Test
  void everyTab_isOneSheetOfPaper_andNotShrunkBelow70Percent() {
    SheetsOfPaper.areFew(book, 6);
  }

  /** Nothing in it is not the owner's: what he is asked, what was found, maps and photographs. */
  @Test
  void itHolds_whatTheOwnerReads_andNothingElse() {
    assertThat(texts.tabs())
        .containsExactly("Change order", "What was found", "Maps", "Photographs");
  }

  /**
   * Ninety marks go on on further sheets, each line under its headings, and add up all the same.
   */
  @Test
  void manyMarks_goOnOnFurtherSheets() {
    List<Found> many = new ArrayList<>(LifeJob.found());
    for (int i = 13; i <= 90; i++) {
      many.add(LifeJob.refastened("" + i, "B-3-" + i));
    }

    byte[] paper = LifeBooks.changeOrder(LifeJob.with(Map.of()), many);

    Texts said = Texts.of(paper);
    SheetsOfPaper.areFew(paper, 10);
    assertThat(Cells.byPoi(paper)).isEqualTo(Cells.written(paper));
    // 84 at 8, with 1.5 at 117 and 24 ft at 1.05
    assertThat(said.number("change_usd")).isEqualTo(872.70);
    assertThat(said.tabs()).contains("What was found (2)");
    assertThat(said.on("What was found (2)")).contains("A sheet refastened, going on", "Measured");
  }

  @Test
  void anOverwrittenNumber_isSeen_whereverItStands() throws Exception {
    List<String> told = List.of("change_usd", "new_total_usd", "last_payment_usd");
    List<String> all =
        List.of(
            "change_usd",
            "agreed_usd",
            "new_total_usd",
            "last_payment_usd",
            "sheets_left_below_ceiling",
            "shown_sheet",
            "shown_refasten",
            "sheet_ordered",
            "agreed_sheet_usd",
            "sheet_amount_usd",
            "refasten_amount_usd",
            "asked_sheet_quantity",
            "asked_refasten_quantity",
            "asked_relief_quantity");
    OverwrittenCells.eachIsSeen(book, all, told, SheetsOfPaper::changed);
  }

  @Test
  void aDeletedLine_isSeen() throws Exception {
    for (String list : List.of("asked_refasten_quantity", "asked_sheet_quantity")) {
      try (XSSFWorkbook workbook = Cells.opened(book)) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        assertThat(SheetsOfPaper.changed(workbook, evaluator)).isZero();
        String first = workbook.getName(list).getRefersToFormula().split(":")[0];
        OverwrittenCells.at(workbook, first).getRow().forEach(Cell::setBlank);
        evaluator.clearAllCachedResultValues();
        assertThat(SheetsOfPaper.changed(workbook, evaluator)).as(list).isEqualTo(1);
      }
    }
  }

  @Test
  void photographs_standWithTheirWords_andAMissingOneIsSaid() throws Exception {
    try (XSSFWorkbook workbook = Cells.opened(book)) {
      List<XSSFPicture> pictures =
          workbook.getSheet("Photographs").getDrawingPatriarch().getShapes().stream()
              .filter(XSSFPicture.class::isInstance)
              .map(XSSFPicture.class::cast)
              .toList();
      assertThat(pictures)
          .extracting(each -> each.getCTPicture().getNvPicPr().getCNvPr().getDescr())
          .contains(
              "No. 4, south side, at the ridge, right: photo 1, before, May 18, 2027, eave behind the gutter")
          .hasSize(7);
      assertThat(workbook.getAllPictures())
          .extracting(XSSFPictureData::getMimeType)
          .containsOnly("image/jpeg");
    }
    assertThat(texts.on("Photographs"))
        .contains(
            "No. 5, north side, at the ridge, middle: photo 7, open, May 18, 2027: missing, there is no file photos/lost.jpg");
  }

  @Test
  void billedMarksWithoutPhotographs_areCountedAndNamed() {
    // eight marks are billed: 4 is seen before and open, 5 only before, 6 to 12 not at all
    assertThat(texts.on("What was found"))
        .contains(
            "7 photographs (3 before, 2 open, 1 after, 1 of a stamp); not seen both before and open: marks 5, 6, 7, 8, 9, 10, 11, 12.");
  }

  /** A cracked web is in no sum, and is not passed over in silence. */
  @Test
  void whatStopsInTheFraming_isSaidToWait() {
    String reports =
        """
        report,seen,where,evidence
        F-1,split,rafter 9 of plane B,photo 14
        """;

    Texts said =
        Texts.of(LifeBooks.changeOrder(LifeJob.with(Map.of("reports", reports)), LifeJob.found()));

    assertThat(said.on("What was found"))
        .contains("What waits")
        .anyMatch(
            text ->
                text.contains("rafter 9 of plane B")
                    && text.endsWith("a separate order comes after that is decided."));
    assertThat(said.number("change_usd")).isEqualTo(248.70);
  }

  @Test
  void aPictureOfAPhonesOwnKind_isRefusedWithItsLine() throws IOException {
    Job job = LifeJob.with(Map.of());
    LifeJob.photos(job, folder);
    byte[] own = new byte[32];
    System.arraycopy("ftypheic".getBytes(StandardCharsets.US_ASCII), 0, own, 4, 8);
    Files.write(folder.resolve("photos").resolve("lost.jpg"), own);

    assertThatExceptionOfType(ProblemsException.class)
        .isThrownBy(() -> Photos.of(job, folder))
        .withMessageContaining("photos.csv, line 8, column photo: photos/lost.jpg")
        .withMessageContaining("save as JPEG")
        .withMessageNotContaining("\n");
  }
}
