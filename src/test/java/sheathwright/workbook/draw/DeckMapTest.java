package sheathwright.workbook.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.CourseLayout;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.PatchRules;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.page.Sections;

/** The drawing of a plane, read back. */
class DeckMapTest {

  private static final Plane PLANE =
      Plane.trapezoid("south", ft(40), ft(14), ft(8), ft(0)).without(ft(22), ft(6), ft(3), ft(2));
  private static final Supports SUPPORTS = Supports.every(in(24), in(3));
  private static final List<Mark> MARKS =
      List.of(
          mark("m1", Finding.ROT, 60, 10, 30, 14),
          mark("m2", Finding.SOFT, 300, 60, 20, 20),
          mark("m3", Finding.LOOSE, 380, 100, 60, 30));

  private static Mark mark(
      String key, Finding finding, double along, double up, double width, double height) {
    return Mark.of(key, Choice.literal(finding), in(along), in(up), in(width), in(height));
  }

  private static byte[] drawn() {
    Book book = new Book(Particulars.of("A test", ""));
    Tab page = Sections.tab(book, "Map", "a plane");
    CourseLayout layout = Layouts.courses(PLANE, SUPPORTS, LayoutRules.USUAL.asLaid());
    DeckMap.draw(
        page,
        "South",
        layout,
        MARKS,
        Layouts.patches(Layouts.places(PLANE), SUPPORTS, LayoutRules.USUAL, PatchRules.USUAL, MARKS)
            .list());
    return book.finished(Sections.workingTab(book, "a plane"), Sections.tablesTab(book, "a plane"));
  }

  /** Each place of the old deck has its key in it, and its plane's key says how to read that. */
  @Test
  void theOldDeck_isDrawnWithItsKeys() throws IOException {
    Book book = new Book(Particulars.of("A test", ""));
    Tab page = Sections.tab(book, "Map", "a plane");
    PlaceMap map = Layouts.places(PLANE);
    DeckMap.draw(page, "South", map, SUPPORTS, List.of(), List.of());
    byte[] bytes =
        book.finished(Sections.workingTab(book, "a plane"), Sections.tablesTab(book, "a plane"));
    List<String> keys =
        map.places(Reading.aside()).stream().map(place -> place.key().onItsPlane()).toList();
    assertThat(keys).hasSizeGreaterThan(15);
    assertThat(words(bytes)).containsAll(keys);
    try (XSSFWorkbook workbook = Cells.opened(bytes)) {
      List<String> cells = new ArrayList<>();
      workbook
          .getSheet("Map")
          .forEach(
              row -> row.forEach(cell -> cells.add(new DataFormatter().formatCellValue(cell))));
      assertThat(cells)
          .anyMatch(text -> text.startsWith("1-1 here is south-1-1 everywhere else"))
          .anyMatch(text -> text.contains("joints assumed"));
    }
  }

  @Test
  void aMap_holdsEverySheetMarkPatchAndBadJoint_withItsLetter() throws IOException {
    byte[] bytes = drawn();
    Samples.keep(Path.of("target", "deck-map.xlsx"), bytes);
    assertThat(words(bytes)).contains("R m1", "S m2", "L m3", "P1", "P2", "eave, 40' 0\"");
  }

  /**
   * A sheet's box at a hip reaches beyond the wood, and two marks of it have the same middle. The
   * hip runs from (0, 0) to (8 ft, 8 ft): of a box of 4 ft at the lower left only the half right of
   * it is wood, with its middle a third in from its sides.
   */
  @Test
  void aMarkAtAHip_endsAtIt_andLabelsStandBelowEachOther() throws IOException {
    Plane hip = Plane.trapezoid("hip", ft(24), ft(8), ft(8), ft(8));
    List<Mark> both =
        List.of(
            mark("h1", Finding.LOOSE, 0, 0, 48, 48), mark("h2", Finding.UNSUPPORTED, 0, 0, 48, 48));
    Book book = new Book(Particulars.of("A test", ""));
    Tab page = Sections.tab(book, "Map", "a plane");
    DeckMap.draw(page, "Hip", Layouts.places(hip), SUPPORTS, both, List.of());
    byte[] bytes =
        book.finished(Sections.workingTab(book, "a plane"), Sections.tablesTab(book, "a plane"));

    List<XSSFSimpleShape> shapes = shapes(bytes);
    int eave = foot(named(shapes, "eave, 24' 0\""));
    XSSFSimpleShape first = named(shapes, "L h1");
    XSSFSimpleShape second = named(shapes, "U h2");
    assertThat(foot(first)).isLessThanOrEqualTo(top(second)).isLessThan(eave);
    List<XSSFSimpleShape> boxes =
        shapes.stream()
            .filter(shape -> shape.getCTShape().getSpPr().getLn() != null)
            .filter(shape -> shape.getCTShape().getSpPr().getLn().isSetPrstDash())
            .filter(shape -> shape.getCTShape().getSpPr().isSetCustGeom())
            .filter(DeckMapTest::isClosed)
            .toList();
    assertThat(boxes).hasSize(2).allMatch(shape -> corners(shape) == 3);
  }

  private static boolean isClosed(XSSFSimpleShape shape) {
    return path(shape).sizeOfCloseArray() > 0;
  }

  private static int corners(XSSFSimpleShape shape) {
    return path(shape).sizeOfMoveToArray() + path(shape).sizeOfLnToArray();
  }

  private static org.openxmlformats.schemas.drawingml.x2006.main.CTPath2D path(
      XSSFSimpleShape shape) {
    return shape.getCTShape().getSpPr().getCustGeom().getPathLst().getPathArray(0);
  }

  private static XSSFSimpleShape named(List<XSSFSimpleShape> shapes, String words) {
    return shapes.stream().filter(shape -> shape.getText().equals(words)).findFirst().orElseThrow();
  }

  private static int top(XSSFSimpleShape shape) {
    return Integer.parseInt(shape.getCTShape().getSpPr().getXfrm().getOff().getY().toString());
  }

  private static int foot(XSSFSimpleShape shape) {
    return top(shape) + (int) shape.getCTShape().getSpPr().getXfrm().getExt().getCy();
  }

  private static List<String> words(byte[] bytes) throws IOException {
    return shapes(bytes).stream().map(XSSFSimpleShape::getText).toList();
  }

  private static List<XSSFSimpleShape> shapes(byte[] bytes) throws IOException {
    List<XSSFSimpleShape> shapes = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(bytes)) {
      for (XSSFShape shape : workbook.getSheet("Map").getDrawingPatriarch().getShapes()) {
        for (XSSFShape part : (XSSFShapeGroup) shape) {
          shapes.add((XSSFSimpleShape) part);
        }
      }
    }
    return shapes;
  }
}
