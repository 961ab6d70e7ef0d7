package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
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

  private static final Path FINISHED = Path.of("workbooks");
  private static final Path LIFE = Path.of("demo-data", "whole-life");

  /** What an office reads, of which a tab may take more than a sheet. */
  private static final Pattern OFFICE = Pattern.compile("estimate|letterhead|survey|crew");

  private static final int MOST_SHEETS_OF_AN_ESTIMATE = 22;
  private static final long MOST_SHEETS_OF_A_QUOTE = 4;

  @TempDir private Path folder;

  /** Quotes, change orders, invoices and all other papers of every demo job, printed in one go. */
  @Test
  void everyTabOfWhatLeavesTheHouse_isOneSheet_andWhatIsKeptBackTakesNone() throws Exception {
    List<Path> papers = new ArrayList<>();
    for (Path from : List.of(WORKBOOKS, FINISHED, LIFE)) {
      try (Stream<Path> files = Files.walk(from)) {
        for (Path file : files.filter(PagesLibreOfficeCheck::leavesTheHouse).sorted().toList()) {
          papers.add(Files.copy(file, folder.resolve(file.toString().replace('/', '-'))));
        }
      }
    }
    Path estimate = WORKBOOKS.resolve("quince-hollow-estimate.xlsx");
    List<Path> all = new ArrayList<>(papers);
    all.add(estimate);

    LibreOffice.print(all, folder);

    for (Path file : papers) {
      try (XSSFWorkbook workbook = Cells.opened(Files.readAllBytes(file))) {
        assertThat(pages(file)).as(file.toString()).isEqualTo(workbook.getNumberOfSheets());
        if (file.toString().contains("quote")) {
          assertThat(pages(file)).as(file.toString()).isBetween(3L, MOST_SHEETS_OF_A_QUOTE);
        }
      }
    }
    assertThat(papers.toString())
        .contains("kettle-reach-change-order-01", "6-closed-invoice", "life-deck-record")
        .contains("tallow-end-quote", "cinder-brook-quote");
    assertThat(pages(estimate)).isLessThanOrEqualTo(MOST_SHEETS_OF_AN_ESTIMATE);
  }

  private static boolean leavesTheHouse(Path file) {
    String name = file.toString();
    boolean isOfAJob = !file.startsWith(WORKBOOKS) || name.matches(".*(-quote|/life-[^/]*)\\.xlsx");
    return name.endsWith(".xlsx")
        && isOfAJob
        && !file.getParent().endsWith("sent")
        && !OFFICE.matcher(name).find();
  }

  private long pages(Path workbook) throws Exception {
    String name = workbook.getFileName().toString().replace(".xlsx", ".pdf");
    String printed =
        new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.ISO_8859_1);
    return PAGE.matcher(printed).results().count();
  }
}
