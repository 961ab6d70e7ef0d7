package sheathwright.workbook.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/** A sheet around its lines as Apache POI reads it. */
class SheetTest {

  private final Styles styles = new Styles(new Font("Arial", 10, "102030"));
  private final Sheet sheet = new Sheet("Bob's & Co", styles, 30, 12, 7);

  private XSSFWorkbook opened() {
    return WrittenParts.opened(
        styles, sheet, "<row r=\"1\"><c r=\"A1\" t=\"str\"><v>a</v></c></row>");
  }

  @Test
  void whatIsSaidOfItsCells_isRead() throws IOException {
    sheet.merge(4, 0, 2);
    sheet.freeze(3);
    sheet.filled(9, 2);
    sheet.link(5, 1, "'Bob''s & Co'!$A$1", "Go to \"Bob's\"");
    sheet.redIf(CellRangeAddress.valueOf("B2"), "LEFT(B2,4)=\"STOP\"");
    sheet.whiteIf(CellRangeAddress.valueOf("A3:C8"), "$A3=\"none\"");
    try (XSSFWorkbook workbook = opened()) {
      XSSFSheet read = workbook.getSheetAt(0);

      assertThat(read.getSheetName()).isEqualTo("Bob's & Co");
      assertThat(read.getColumnWidth(0)).isEqualTo(30 * 256);
      assertThat(read.getColumnWidth(2)).isEqualTo(7 * 256);
      assertThat(read.getMergedRegions()).containsExactly(CellRangeAddress.valueOf("A5:C5"));
      assertThat(read.getPaneInformation().getHorizontalSplitTopRow()).isEqualTo((short) 3);
      assertThat(read.getPaneInformation().isFreezePane()).isTrue();
      assertThat(read.getProtect()).isTrue();
      assertThat(read.isFormatColumnsLocked()).isFalse();
      assertThat(read.isFormatRowsLocked()).isFalse();
      assertThat(read.isDisplayGridlines()).isFalse();
      assertThat(read.getDefaultRowHeightInPoints()).isEqualTo((float) Sheet.LINE);
      assertThat(read.getCTWorksheet().getDimension().getRef()).isEqualTo("A1:C10");
      XSSFHyperlink link = read.getHyperlink(5, 1);
      assertThat(link.getLocation()).isEqualTo("'Bob''s & Co'!$A$1");
      assertThat(link.getTooltip()).isEqualTo("Go to \"Bob's\"");
      var rules = read.getSheetConditionalFormatting();
      assertThat(rules.getNumConditionalFormattings()).isEqualTo(2);
      ConditionalFormattingRule red = rules.getConditionalFormattingAt(0).getRule(0);
      assertThat(red.getFormula1()).isEqualTo("LEFT(B2,4)=\"STOP\"");
      assertThat(red.getFontFormatting().getFontColorIndex())
          .isEqualTo(IndexedColors.DARK_RED.index);
      ConditionalFormattingRule white = rules.getConditionalFormattingAt(1).getRule(0);
      assertThat(white.getFontFormatting().getFontColorIndex())
          .isEqualTo(IndexedColors.WHITE.index);
      assertThat(white.getPriority()).isEqualTo(2);
    }
  }

  @Test
  void howItIsPrinted_isRead() throws IOException {
    Printing print = sheet.printing();
    print.margins(0.5, 0.6, 0.7);
    print.fit(1, 2);
    print.upright(false);
    print.footer("&8ours", "&8page &P of &N");
    print.area(CellRangeAddress.valueOf("A1:C10"));
    print.repeat(0, 1);
    try (XSSFWorkbook workbook = opened()) {
      XSSFSheet read = workbook.getSheetAt(0);

      assertThat(read.getFitToPage()).isTrue();
      assertThat(read.getMargin(PageMargin.LEFT)).isEqualTo(0.5);
      assertThat(read.getMargin(PageMargin.TOP)).isEqualTo(0.6);
      assertThat(read.getMargin(PageMargin.BOTTOM)).isEqualTo(0.7);
      PrintSetup setup = read.getPrintSetup();
      assertThat(setup.getPaperSize()).isEqualTo(PrintSetup.LETTER_PAPERSIZE);
      assertThat(setup.getLandscape()).isTrue();
      assertThat(setup.getFitWidth()).isEqualTo((short) 1);
      assertThat(setup.getFitHeight()).isEqualTo((short) 2);
      assertThat(read.getFooter().getLeft()).isEqualTo("&8ours");
      assertThat(read.getFooter().getRight()).isEqualTo("&8page &P of &N");
      assertThat(workbook.getPrintArea(0)).isEqualTo("'Bob''s & Co'!$A$1:$C$10");
      assertThat(read.getRepeatingRows()).isEqualTo(CellRangeAddress.valueOf("1:2"));
    }
  }

  @Test
  void aSizeOfItsOwn_andItsBreaks_areRead() throws IOException {
    sheet.printing().at(87);
    sheet.breakBelow(41);
    sheet.breakBelow(20);
    try (XSSFWorkbook workbook = opened()) {
      XSSFSheet read = workbook.getSheetAt(0);

      assertThat(read.getFitToPage()).isFalse();
      assertThat(read.getPrintSetup().getScale()).isEqualTo((short) 87);
      assertThat(read.getPrintSetup().getLandscape()).isFalse();
      assertThat(read.getRowBreaks()).containsExactly(20, 41);
    }
  }

  /** A column of so many characters has so many dots, in the program's plain letters. */
  @Test
  void aColumn_isAsWideAsPoiMeasuresIt() throws IOException {
    try (XSSFWorkbook workbook = opened()) {
      for (int column = 0; column < 5; column++) {
        assertThat(sheet.dots(column))
            .isCloseTo(workbook.getSheetAt(0).getColumnWidthInPixels(column), within(0.01));
      }
    }
  }
}
