package sheathwright.workbook.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.workbook.part.CellStyle.Height;
import sheathwright.workbook.part.CellStyle.Line;
import sheathwright.workbook.part.CellStyle.Side;

/** Looks as Apache POI reads them. */
class StylesTest {

  private static final Font PLAIN = new Font("Arial", 10, "102030");

  private final Styles styles = new Styles(PLAIN);

  private XSSFCellStyle read(CellStyle style) throws IOException {
    try (XSSFWorkbook workbook = WrittenParts.opened(styles, new Sheet("A", styles, 10), "")) {
      return workbook.getCellStyleAt(style.number());
    }
  }

  @Test
  void everythingThatWasSaid_isRead() throws IOException {
    CellStyle said = styles.style();
    said.font(PLAIN.tall(16.5).in("9A2F1C").bold().underlined());
    said.format("$#,##0.00");
    said.fill("FBF3DC");
    said.edge(Side.TOP, Line.HAIR, "000001");
    said.edge(Side.BOTTOM, Line.DOUBLE, "000002");
    said.edge(Side.LEFT, Line.THIN, "000003");
    said.edge(Side.RIGHT, Line.MEDIUM, "000004");
    said.height(Height.BOTTOM);
    said.atTheRight(true);
    said.broken(true);
    said.shrunk(true);
    said.indent(2);
    said.unlock();
    said.quote();
    XSSFCellStyle style = read(said);

    assertThat(style.getFont().getFontHeight()).isEqualTo((short) 330); // twentieths of a point
    assertThat(style.getFont().getXSSFColor().getARGBHex()).isEqualTo("FF9A2F1C");
    assertThat(style.getFont().getBold()).isTrue();
    assertThat(FontUnderline.valueOf(style.getFont().getUnderline()))
        .isEqualTo(FontUnderline.SINGLE);
    assertThat(style.getDataFormatString()).isEqualTo("$#,##0.00");
    assertThat(style.getFillPattern()).isEqualTo(FillPatternType.SOLID_FOREGROUND);
    assertThat(style.getFillForegroundXSSFColor().getARGBHex()).isEqualTo("FFFBF3DC");
    assertThat(style.getBorderTop()).isEqualTo(BorderStyle.HAIR);
    assertThat(style.getTopBorderXSSFColor().getARGBHex()).isEqualTo("FF000001");
    assertThat(style.getBorderBottom()).isEqualTo(BorderStyle.DOUBLE);
    assertThat(style.getBottomBorderXSSFColor().getARGBHex()).isEqualTo("FF000002");
    assertThat(style.getBorderLeft()).isEqualTo(BorderStyle.THIN);
    assertThat(style.getLeftBorderXSSFColor().getARGBHex()).isEqualTo("FF000003");
    assertThat(style.getBorderRight()).isEqualTo(BorderStyle.MEDIUM);
    assertThat(style.getRightBorderXSSFColor().getARGBHex()).isEqualTo("FF000004");
    assertThat(style.getVerticalAlignment()).isEqualTo(VerticalAlignment.BOTTOM);
    assertThat(style.getAlignment()).isEqualTo(HorizontalAlignment.RIGHT);
    assertThat(style.getWrapText()).isTrue();
    assertThat(style.getShrinkToFit()).isTrue();
    assertThat(style.getIndention()).isEqualTo((short) 2);
    assertThat(style.getLocked()).isFalse();
    assertThat(style.getQuotePrefixed()).isTrue();
  }

  @Test
  void aPlainLook_isPlain() throws IOException {
    XSSFCellStyle style = read(styles.style());

    assertThat(style.getFont().getFontName()).isEqualTo("Arial");
    assertThat(style.getFont().getBold()).isFalse();
    assertThat(FontUnderline.valueOf(style.getFont().getUnderline())).isEqualTo(FontUnderline.NONE);
    assertThat(style.getFillPattern()).isEqualTo(FillPatternType.NO_FILL);
    assertThat(style.getBorderTop()).isEqualTo(BorderStyle.NONE);
    assertThat(style.getAlignment()).isEqualTo(HorizontalAlignment.LEFT);
    assertThat(style.getVerticalAlignment()).isEqualTo(VerticalAlignment.CENTER);
    assertThat(style.getWrapText()).isFalse();
    assertThat(style.getShrinkToFit()).isFalse();
    assertThat(style.getLocked()).isTrue();
    assertThat(style.getQuotePrefixed()).isFalse();
  }

  /** ECMA-376, 18.8.30, for those without a number of the file's own. */
  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "General, 0",
        "`#,##0`, 3",
        "`#,##0.00`, 4",
        "# ??/??, 13",
        "@, 49",
        "0.000, 164",
        "`\"yes\";\"yes\";\"no\"`, 164"
      })
  void aFormat_hasItsNumber(String format, short number) throws IOException {
    CellStyle said = styles.style();
    said.format(format);
    XSSFCellStyle style = read(said);

    assertThat(style.getDataFormat()).isEqualTo(number);
    assertThat(style.getDataFormatString()).isEqualTo(format);
  }

  @Test
  void aLookLikeAnother_isLikeItInAll_untilItIsChanged() throws IOException {
    CellStyle first = styles.style();
    first.fill("EEEBE2");
    first.edge(Side.TOP, Line.THIN, "3B4A3F");
    first.unlock();
    first.indent(1);
    CellStyle second = styles.like(first);
    second.broken(true);
    XSSFCellStyle one = read(first);
    XSSFCellStyle other = read(second);

    assertThat(other.getFillForegroundXSSFColor().getARGBHex()).isEqualTo("FFEEEBE2");
    assertThat(other.getBorderTop()).isEqualTo(BorderStyle.THIN);
    assertThat(other.getLocked()).isFalse();
    assertThat(other.getIndention()).isEqualTo((short) 1);
    assertThat(other.getWrapText()).isTrue();
    assertThat(one.getWrapText()).isFalse();
  }

  @Test
  void lettersFillsAndSides_thatAreTheSame_standInTheFileOnce() throws IOException {
    for (int i = 0; i < 3; i++) {
      CellStyle each = styles.style();
      each.font(PLAIN.bold());
      each.fill("EEEBE2");
    }
    try (XSSFWorkbook workbook = WrittenParts.opened(styles, new Sheet("A", styles, 10), "")) {
      assertThat(workbook.getNumberOfFonts()).isEqualTo(2);
      assertThat(workbook.getStylesSource().getFills()).hasSize(3); // none, gray, ours
      assertThat(workbook.getNumCellStyles()).isEqualTo(4);
    }
  }
}
