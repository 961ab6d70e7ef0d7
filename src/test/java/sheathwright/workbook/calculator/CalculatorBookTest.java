package sheathwright.workbook.calculator;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.job.solve.Solver;
import sheathwright.workbook.book.Cells;

/** What stands in the calculators, and how one gets from page to page. */
class CalculatorBookTest {

  private static final int LONGEST_TAB_NAME = 31;

  private static XSSFWorkbook workbook;

  @BeforeAll
  static void open() {
    workbook = Cells.opened(CalculatorBook.ofAll());
  }

  @AfterAll
  static void close() throws IOException {
    workbook.close();
  }

  @Test
  void everyFunction_hasAPageThatTheContentsLeadTo_orIsSaidToBeSolved() {
    XSSFSheet contents = workbook.getSheet("Contents");
    List<String> links =
        contents.getHyperlinkList().stream().map(XSSFHyperlink::getLocation).toList();

    for (Card card : Catalog.shipped().cards()) {
      Calculator calculator = Calculator.of(card);
      assertThat(texts(contents)).as(card.name()).contains(card.name());
      if (calculator.isLive()) {
        assertThat(links).contains("'" + calculator.title() + "'!A1");
        assertThat(workbook.getSheet(calculator.title()).getHyperlink(2, 0).getLocation())
            .isEqualTo("'Contents'!A1");
      } else {
        assertThat(workbook.getSheet(calculator.title())).as(card.name()).isNull();
        assertThat(texts(contents))
            .anyMatch(text -> text.startsWith("./sheathwright explain " + card.name() + " "));
      }
    }
    for (Solver solver : Solver.values()) {
      assertThat(texts(contents))
          .contains("./sheathwright solve %s table.csv".formatted(solver.word()));
    }
  }

  @Test
  void theForecasts_areSolved_andNothingElse() {
    assertThat(
            Catalog.shipped().cards().stream()
                .filter(card -> !Calculator.of(card).isLive())
                .map(Card::name))
        .containsExactlyInAnyOrder(
            "bad_sheet_forecast",
            "most_bad_sheets",
            "chance_of_more",
            "included_sheets",
            "ceiling_charge",
            "fixed_deck_price",
            "patch_or_redeck",
            "fail_rate");
  }

  @Test
  void tabNames_areAsLongAsAProgramTakes() {
    List<String> names =
        IntStream.range(0, workbook.getNumberOfSheets()).mapToObj(workbook::getSheetName).toList();

    assertThat(names).doesNotHaveDuplicates();
    assertThat(names).allMatch(name -> name.length() <= LONGEST_TAB_NAME);
  }

  @Test
  void everyInput_offersItsWords_orIsHeldToItsRange() {
    List<String> wrong = new ArrayList<>();
    for (OpenPage page : CalculatorsFollowTest.pages(workbook)) {
      for (int i = 0; i < page.card().parameters().size(); i++) {
        Parameter parameter = page.card().parameters().get(i);
        Cell input = page.inputs().get(i);
        OpenPage.Held held = page.held(input);
        boolean isHeld =
            parameter.options() != null
                ? held.words().equals(parameter.words())
                : !held.words().isEmpty() || held.least() < held.most();
        Limits limits = parameter.limits();
        boolean isNoWider =
            !held.words().isEmpty()
                || !limits.exist()
                || held.least() >= limits.least() && held.most() <= limits.most();
        if (!isHeld || !isNoWider || input.getCellStyle().getLocked()) {
          wrong.add(page.card().name() + " " + parameter.column());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void aPage_takesFromAnother_onlyWhatItShowsItself() {
    List<String> elsewhere = new ArrayList<>();
    for (OpenPage page : CalculatorsFollowTest.pages(workbook)) {
      page.sheet()
          .forEach(
              row ->
                  row.forEach(
                      cell -> {
                        String written =
                            cell.getCellType() == CellType.FORMULA ? cell.getCellFormula() : "";
                        String own = "'?" + page.sheet().getSheetName() + "'?!";
                        String formula = written.replaceAll(own, "");
                        if (formula.contains("!") && !formula.matches("'?[^'!]+'?![$A-Z0-9]+")) {
                          elsewhere.add(Cells.address(cell) + ": " + formula);
                        }
                      }));
    }
    assertThat(elsewhere).isEmpty();
  }

  @Test
  void someFunctions_standInTheOrderInWhichTheyAreNamed_andNoOther() throws IOException {
    List<Card> cards =
        List.of(named("sheets_by_area"), named("rafter_check"), named("sheets_by_area"));

    try (XSSFWorkbook some = Cells.opened(CalculatorBook.of(cards))) {
      assertThat(IntStream.range(0, some.getNumberOfSheets()).mapToObj(some::getSheetName))
          .containsExactly("Contents", "Sheets by area", "Rafter check", "Tables", "Names");
      assertThat(texts(some.getSheet("Contents")))
          .contains("rafter_check")
          .doesNotContain("slope_factor", "cut_sheets");
    }
  }

  @Test
  void whereNothingIsLive_thereIsNoWorkbook() {
    List<Card> cards = List.of(named("fail_rate"));

    assertThatThrownBy(() -> CalculatorBook.of(cards))
        .isInstanceOf(RefusedException.class)
        .hasMessage(
            "fail_rate is solved, which no cell can do; run ./sheathwright explain fail_rate, or fill it down a table");
  }

  private static Card named(String name) {
    return Catalog.shipped().named(name);
  }

  private static List<String> texts(XSSFSheet sheet) {
    List<String> texts = new ArrayList<>();
    sheet.forEach(
        row ->
            row.forEach(
                cell -> {
                  if (cell.getCellType() == CellType.STRING) {
                    texts.add(cell.getStringCellValue());
                  }
                }));
    return texts;
  }
}
