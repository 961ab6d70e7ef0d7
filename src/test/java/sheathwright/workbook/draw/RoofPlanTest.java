package sheathwright.workbook.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.page.Samples;

/** The plan of the whole roof can be read: no plane's name lies under a number of a mark. */
class RoofPlanTest {

  private record Words(String text, Rectangle2D place) {

    boolean isNumber() {
      return text.matches("\\d+");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"cinder-brook", "kettle-reach"})
  void aPlanesName_standsWhereNoNumberLies(String job) throws IOException {
    List<Words> all = words(HomeBook.of(new Estimate(Job.of(Samples.tables(job)))).bytes());

    assertThat(all).anyMatch(words -> !words.isNumber());
    for (Words name : all) {
      for (Words other : all) {
        if (!name.isNumber() && other != name) {
          assertThat(name.place().intersects(other.place())).as("%s, %s", name, other).isFalse();
        }
      }
    }
  }

  private static List<Words> words(byte[] quote) throws IOException {
    List<Words> all = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(quote)) {
      XSSFDrawing drawing = workbook.getSheet("What we found").getDrawingPatriarch();
      for (XSSFShape group : drawing.getShapes()) {
        if (group instanceof XSSFShapeGroup each) {
          for (XSSFShape shape : drawing.getShapes(each)) {
            if (shape instanceof XSSFSimpleShape words && !words.getText().isBlank()) {
              var at = words.getCTShape().getSpPr().getXfrm();
              all.add(
                  new Words(
                      words.getText().strip(),
                      new Rectangle2D.Double(
                          number(at.getOff().getX()),
                          number(at.getOff().getY()),
                          at.getExt().getCx(),
                          at.getExt().getCy())));
            }
          }
        }
      }
    }
    return all;
  }

  private static double number(Object coordinate) {
    return Double.parseDouble(coordinate.toString());
  }
}
