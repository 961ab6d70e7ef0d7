package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.table.JobText;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.draw.DrawnPictures;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.paper.SheetsOfPaper;
import sheathwright.workbook.told.Photos;

/** The homeowner's page of what was found goes on on further sheets of paper where it must. */
class SeenPagesTest {

  private static final String FIRST = "What we found";

  @TempDir private Path folder;

  /** So many loose sheets, five courses of six on each of the two planes. */
  private static JobText marked(int marks) {
    StringBuilder text = new StringBuilder("mark,plane,finding,sheet\n");
    for (int i = 0; i < marks; i++) {
      String plane = i < 30 ? "A" : "B";
      text.append(
          "M-%d,%s,loose,%s-%d-%d%n".formatted(i + 1, plane, plane, 1 + i % 30 / 6, 1 + i % 6));
    }
    return JobText.demo("quince-hollow").withTable("marks", text.toString());
  }

  @Test
  void fortyFiveMarks_goOnOnASecondSheet_underTheirHeadings() throws Exception {
    byte[] file = HomeBook.of(new Estimate(marked(45).job())).bytes();

    SheetsOfPaper.areFew(file, 4);
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      assertThat(tabs(workbook))
          .containsExactly("Your quote", FIRST, FIRST + " (2)", "What you get");
      assertThat(column(workbook.getSheet(FIRST + " (2)"), 0)).contains("Where");
      List<String> numbers = new ArrayList<>(column(workbook.getSheet(FIRST), 1));
      numbers.addAll(column(workbook.getSheet(FIRST + " (2)"), 1));
      assertThat(numbers).containsSubsequence(upTo(45)).doesNotHaveDuplicates();
      assertThat(drawn(workbook.getSheet(FIRST))).containsAll(upTo(45));
      assertThat(HomeCells.text(workbook, "sums_tie")).startsWith("The amounts add up");
    }
  }

  /** A mark's number in the list is the one that the picture shows in its place. */
  @Test
  void fewMarks_stayOnOneSheet() {
    SheetsOfPaper.areFew(HomeBook.of(new Estimate(marked(3).job())).bytes(), 3);
  }

  @Test
  void photographs_standBelow_eachWithItsNumber_asItLayAndOpened() throws Exception {
    StringBuilder photos = new StringBuilder("photo,mark,report,sheet,view,taken,caption\n");
    Files.createDirectories(folder.resolve("photos"));
    for (int i = 1; i <= 8; i++) {
      for (String view : List.of("before", "open", "after")) {
        String name = "photos/%d-%s.jpg".formatted(i, view);
        photos.append("%s,M-%d,,,%s,2027-05-18,%n".formatted(name, i, view));
        // each of its own color, taken with the phone held upright
        Color color = new Color(20 * i, view.length() * 10, 40);
        Files.write(
            folder.resolve(name), DrawnPictures.jpeg(DrawnPictures.stained(1200, 1600, color), 6));
      }
    }
    Job job = marked(8).withTable("photos", photos.toString()).job();

    byte[] file = HomeBook.of(new Estimate(job), Photos.of(job, folder)).bytes();

    SheetsOfPaper.areFew(file, 5);
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      List<XSSFPicture> pictures = new ArrayList<>();
      for (Sheet sheet : workbook) {
        XSSFDrawing drawing = ((XSSFSheet) sheet).getDrawingPatriarch();
        if (drawing != null) {
          drawing.getShapes().stream()
              .filter(XSSFPicture.class::isInstance)
              .forEach(each -> pictures.add((XSSFPicture) each));
        }
      }
      assertThat(pictures).hasSize(16);
      assertThat(pictures.get(15).getCTPicture().getNvPicPr().getCNvPr().getDescr())
          .isEqualTo("No. 8: photo 23, open, May 18, 2027");
      for (int i = 0; i < pictures.size(); i += 2) {
        // a mark's first photograph begins a row, its second stands beside it
        assertThat(pictures.get(i).getClientAnchor().getCol1()).isZero();
        assertThat(pictures.get(i + 1).getClientAnchor().getRow1())
            .isEqualTo(pictures.get(i).getClientAnchor().getRow1());
      }
      for (XSSFPicture picture : pictures) {
        assertThat(picture.getImageDimension().height).isEqualTo(1200);
        assertThat(picture.getImageDimension().width).isEqualTo(900);
      }
      assertThat(HomeCells.texts(workbook)).contains("No. 1: photo 1, before, May 18, 2027");
    }
  }

  private static List<String> upTo(int last) {
    return IntStream.rangeClosed(1, last).mapToObj(String::valueOf).toList();
  }

  private static List<String> tabs(XSSFWorkbook workbook) {
    List<String> names = new ArrayList<>();
    workbook.forEach(sheet -> names.add(sheet.getSheetName()));
    return names;
  }

  /** What stands in a column in the lines of the list of marks. */
  private static List<String> column(Sheet sheet, int column) {
    List<String> all = new ArrayList<>();
    for (Row row : sheet) {
      Cell cell = row.getCell(column);
      boolean isMark =
          row.getCell(0) != null && row.getCell(0).toString().matches(".* side, .*|Where");
      if (isMark && cell != null && !cell.toString().isEmpty() && !cell.toString().equals("No.")) {
        all.add(cell.toString());
      }
    }
    return all;
  }

  /** The words in the pictures of a page. */
  private static List<String> drawn(XSSFSheet sheet) {
    List<String> all = new ArrayList<>();
    XSSFDrawing drawing = sheet.getDrawingPatriarch();
    for (XSSFShape group : drawing.getShapes()) {
      if (group instanceof XSSFShapeGroup each) {
        for (XSSFShape shape : drawing.getShapes(each)) {
          if (shape instanceof XSSFSimpleShape words) {
            all.add(words.getText().strip());
          }
        }
      }
    }
    return all;
  }
}
