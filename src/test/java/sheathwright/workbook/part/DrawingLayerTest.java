package sheathwright.workbook.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.util.List;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFGraphicFrame;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetLineDashVal;
import sheathwright.workbook.part.Anchor.Corner;
import sheathwright.workbook.part.ShapeGroup.Frame;
import sheathwright.workbook.part.ShapeGroup.Label;
import sheathwright.workbook.part.ShapeGroup.Outline;

/** What is drawn on a sheet as Apache POI reads it. */
class DrawingLayerTest {

  private static final Words WORDS = new Words("Map 1", "A map", "what is \"on\" it");

  private final Styles styles = new Styles(new Font("Arial", 10, "102030"));
  private final Sheet sheet = new Sheet("A", styles, 10, 10, 10);

  private XSSFWorkbook opened() {
    return WrittenParts.opened(styles, sheet, "");
  }

  private static List<XSSFShape> shapes(XSSFWorkbook workbook) {
    return workbook.getSheetAt(0).getDrawingPatriarch().getShapes();
  }

  @Test
  void aGroup_isRead_withItsPlaceItsWordsAndItsShapes() throws IOException {
    ShapeGroup group = sheet.layer().group(Anchor.ofCells(4, 3, 10), WORDS, 1_000, 500);
    Outline outline = new Outline(200, 100);
    outline.moveTo(0, 0);
    outline.lineTo(200, 0);
    outline.lineTo(200, 100);
    outline.close();
    Ink ink = new Ink("F3EDDD", "3B4A3F", 1.5, true);
    group.areas(new Frame(10, 20, 200, 100), outline, ink);
    group.lines(new Frame(10, 20, 200, 100), outline, ink);
    group.label(new Frame(300, 40, 90, 30), new Label("1-1 & more", "Arial", 8, "1F2A24"));
    try (XSSFWorkbook workbook = opened()) {
      XSSFShapeGroup read = (XSSFShapeGroup) shapes(workbook).get(0);
      XSSFClientAnchor anchor = (XSSFClientAnchor) read.getAnchor();
      assertThat(List.of(anchor.getCol1(), anchor.getCol2())).containsExactly((short) 0, (short) 3);
      assertThat(List.of(anchor.getRow1(), anchor.getRow2())).containsExactly(4, 14);
      var said = read.getCTGroupShape().getNvGrpSpPr().getCNvPr();
      assertThat(said.getName()).isEqualTo("Map 1");
      assertThat(said.getDescr()).isEqualTo("what is \"on\" it");
      List<XSSFSimpleShape> inside =
          workbook.getSheetAt(0).getDrawingPatriarch().getShapes(read).stream()
              .map(XSSFSimpleShape.class::cast)
              .toList();
      assertThat(inside).hasSize(3);
      CTShapeProperties area = inside.get(0).getCTShape().getSpPr();
      assertThat(area.getXfrm().getExt().getCx()).isEqualTo(200);
      var path = area.getCustGeom().getPathLst().getPathArray(0);
      assertThat(path.sizeOfMoveToArray()).isEqualTo(1);
      assertThat(path.sizeOfLnToArray()).isEqualTo(2);
      assertThat(path.sizeOfCloseArray()).isEqualTo(1);
      assertThat(area.getSolidFill().getSrgbClr().getVal()).containsExactly(0xF3, 0xED, 0xDD);
      assertThat(area.getLn().getW()).isEqualTo(19_050); // 1.5 points of 12,700
      assertThat(area.getLn().getPrstDash().getVal()).isEqualTo(STPresetLineDashVal.DASH);
      CTShapeProperties lines = inside.get(1).getCTShape().getSpPr();
      assertThat(lines.isSetNoFill()).isTrue();
      assertThat(inside.get(2).getText()).isEqualTo("1-1 & more");
      assertThat(inside.stream().map(XSSFSimpleShape::getShapeId).distinct()).hasSize(3);
    }
  }

  @Test
  void aPicture_isRead() throws IOException {
    byte[] bytes = {1, 2, 3};
    Anchor anchor = new Anchor(new Corner(1, 2, 30, 40), new Corner(2, 8, 50, 60));
    sheet.layer().picture(anchor, WORDS, new Picture(bytes));
    try (XSSFWorkbook workbook = opened()) {
      XSSFPicture read = (XSSFPicture) shapes(workbook).get(0);
      assertThat(read.getPictureData().getData()).isEqualTo(bytes);
      assertThat(read.getClientAnchor().getDx1()).isEqualTo(30);
      assertThat(read.getClientAnchor().getDy2()).isEqualTo(60);
      assertThat(read.getCTPicture().getNvPicPr().getCNvPr().getDescr())
          .isEqualTo("what is \"on\" it");
    }
  }

  private static XDDFChartData chart(XSSFWorkbook workbook) {
    XSSFChart read = workbook.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
    return read.getChartSeries().get(0);
  }

  private static ChartSeries series(String title, Ink ink, String marker) {
    ChartCells words = new ChartCells("A!$A$1:$A$2", List.of("one", "two"));
    ChartCells numbers = new ChartCells("A!$B$1:$B$2", List.of("1.5", "-2.0"));
    return new ChartSeries(title, words, numbers, ink, marker);
  }

  @Test
  void lines_areRead_eachWithItsCellsAndItsMarker() throws IOException {
    Ink ink = new Ink("", "9A2F1C", 1.75, true);
    sheet
        .layer()
        .chart(
            Anchor.ofCells(0, 3, 10),
            WORDS,
            new Chart(
                false,
                ChartAxis.along("along", true),
                ChartAxis.up("up", "0.00", Double.NaN, 0.25, 0.25),
                List.of(series("before", ink, "diamond"), series("after", ink, "square"))));
    try (XSSFWorkbook workbook = opened()) {
      XDDFChartData read = chart(workbook);
      assertThat(read).isInstanceOf(XDDFLineChartData.class);
      assertThat(read.getSeriesCount()).isEqualTo(2);
      var first = read.getSeries(0);
      assertThat(first.getCategoryData().getDataRangeReference()).isEqualTo("A!$A$1:$A$2");
      assertThat(first.getCategoryData().getPointAt(1)).isEqualTo("two");
      assertThat(first.getValuesData().getDataRangeReference()).isEqualTo("A!$B$1:$B$2");
      assertThat(((Number) first.getValuesData().getPointAt(1)).doubleValue()).isEqualTo(-2);
      XSSFChart all = workbook.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
      assertThat(all.getCTChart().isSetLegend()).isTrue();
      var up = all.getCTChart().getPlotArea().getValAxArray(0);
      assertThat(up.getScaling().getMax().getVal()).isEqualTo(0.25);
      assertThat(up.getScaling().isSetMin()).isFalse();
      assertThat(up.getMajorUnit().getVal()).isEqualTo(0.25);
    }
  }

  @Test
  void bars_areRead() throws IOException {
    sheet
        .layer()
        .chart(
            Anchor.ofCells(0, 3, 10),
            WORDS,
            new Chart(
                true,
                ChartAxis.along("along", false),
                ChartAxis.up("share", "0%", 0, Double.NaN, Double.NaN),
                List.of(series("share", new Ink("3B4A3F", "", 0, false), ""))));
    try (XSSFWorkbook workbook = opened()) {
      assertThat(chart(workbook)).isInstanceOf(XDDFBarChartData.class);
      XSSFChart all = workbook.getSheetAt(0).getDrawingPatriarch().getCharts().get(0);
      assertThat(all.getCTChart().isSetLegend()).isFalse();
      assertThat(((XSSFGraphicFrame) shapes(workbook).get(0)).getName()).isEqualTo("Map 1");
      var bars = all.getCTChart().getPlotArea().getBarChartArray(0).getSerArray(0);
      assertThat(bars.getSpPr().getSolidFill().getSrgbClr().getVal())
          .containsExactly(0x3B, 0x4A, 0x3F);
    }
  }

  @Test
  void aDrawingWithoutWords_isNone() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Words("Map", "", "what is on it"));
  }
}
