package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.page.JobBook;

/** What became of a change order may be changed in the workbook: what was found beyond follows. */
class OrderStatusTest {

  private static JobText ordered(String status) {
    return JobText.demo("quince-hollow")
        .with("job", "planned_sheets,3", "planned_sheets,1")
        .withTable("marks", "mark,plane,finding,sheet\n1,A,rot,A-1-2\n2,A,rot,A-1-3\n")
        .withTable(
            "agreed",
            "item,unit,usd,included,credit_usd,most,words\nsheet,half,117,1,80,,a sheet\ntotal,,10000,,,,the agreement\n")
        .withTable("orders", "order,on,status\nCO-1,2027-05-20,%s\n".formatted(status))
        .withTable(
            "order_lines", "order,item,unit,quantity,usd,marks\nCO-1,sheet,half,1,117,2: 1\n");
  }

  private static byte[] book(String status) {
    return JobBook.estimate(new Estimate(ordered(status).job())).bytes();
  }

  @Test
  void theSettlement_followsWhatBecameOfAnOrder() throws IOException {
    try (Engine edited = Engine.of(refused(book("offered")))) {
      Following.assertFollows("an order refused", edited, book("refused"));
    }
  }

  private static byte[] refused(byte[] file) throws IOException {
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      int changed = 0;
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING
                && cell.getStringCellValue().equals("offered")) {
              cell.setCellValue("refused");
              changed++;
            }
          }
        }
      }
      assertThat(changed).as("where what became of it stands").isEqualTo(1);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      return bytes.toByteArray();
    }
  }
}
