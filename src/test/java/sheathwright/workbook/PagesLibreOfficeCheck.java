package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.workbook.book.Cells;

/**
 * How many sheets of paper the documents take that the ordinary tests left behind, printed by a
 * program that we did not write. It runs in the gate, after them.
 */
class PagesLibreOfficeCheck {

  private static final Path WORKBOOKS = Path.of("target", "workbooks");

  /** How a page begins in a file of pages. */
  private static final Pattern PAGE = Pattern.compile("/Type\\s*/Page\\b(?!s)");

  private static final List<String> TAB_A_PAGE =
      List.of(
          "quince-hollow-quote",
          "cinder-brook-quote",
          "life-change-order",
          "life-invoice",
          "life-deck-record",
          "life-order-list",
          "life-inspection-record");

  @TempDir private Path folder;

  @Test
  void everyTabOfWhatLeavesTheHouse_isOneSheet_andWhatIsKeptBackTakesNone() throws Exception {
    List<Path> files = TAB_A_PAGE.stream().map(name -> WORKBOOKS.resolve(name + ".xlsx")).toList();
    Path estimate = WORKBOOKS.resolve("quince-hollow-estimate.xlsx");

    LibreOffice.print(files, folder);
    LibreOffice.print(List.of(estimate), folder);

    for (Path file : files) {
      try (XSSFWorkbook workbook = Cells.opened(Files.readAllBytes(file))) {
        assertThat(pages(file)).as(file.toString()).isEqualTo(workbook.getNumberOfSheets());
      }
    }
    assertThat(pages(estimate)).isLessThanOrEqualTo(22);
  }

  private long pages(Path workbook) throws Exception {
    String name = workbook.getFileName().toString().replace(".xlsx", ".pdf");
    String printed =
        new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.ISO_8859_1);
    return PAGE.matcher(printed).results().count();
  }
}
