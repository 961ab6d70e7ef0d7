package sheathwright.workbook.letterhead;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.workbook.LibreOffice;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.home.HomeBook;

/** Another engine comes to the same on a filled letterhead. */
class LetterheadLibreOfficeCheck {

  @TempDir private Path folder;

  @Test
  void filledLetterhead_isRecalculatedToTheSame() throws IOException, InterruptedException {
    Job job = Job.of(JobTables.in(Path.of("demo-data", "quince-hollow")));
    byte[] filled =
        new OfficeLetterhead(LetterKind.QUOTE, "ours.xlsx", OfficeTemplate.with(Map.of()))
            .filled(HomeBook.of(new Estimate(job)).bytes(), Told.ofDraft(job), () -> null);
    Path file = Files.write(folder.resolve("quote.xlsx"), filled);

    LibreOffice.convert(List.of(file), folder.resolve("out"), Recalculation.ALWAYS);

    try (XSSFWorkbook ours = new XSSFWorkbook(Files.newInputStream(file));
        XSSFWorkbook theirs =
            new XSSFWorkbook(Files.newInputStream(folder.resolve("out/quote.xlsx")))) {
      for (String address : List.of("B3", "C3", "B4", "D12", "E12", "E16", "E17", "F15")) {
        assertThat(number(theirs, address)).as(address).isEqualTo(number(ours, address));
      }
    }
  }

  private static double number(XSSFWorkbook workbook, String address) {
    XSSFSheet sheet = workbook.getSheet(OfficeTemplate.TAB);
    var at = new org.apache.poi.ss.util.CellReference(address);
    return sheet.getRow(at.getRow()).getCell(at.getCol()).getNumericCellValue();
  }
}
