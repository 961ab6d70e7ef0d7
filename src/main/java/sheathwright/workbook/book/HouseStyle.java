package sheathwright.workbook.book;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javax.xml.namespace.QName;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.model.ThemesTable;
import org.apache.poi.xssf.usermodel.XSSFFactory;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlCursor;

/**
 * What a cell looks like that nobody gave a look, and the colors and letters that a spreadsheet
 * program offers for whatever somebody adds to a workbook of ours.
 */
final class HouseStyle {

  private static final String THEME = "/sheathwright/workbook/theme.xml";

  /** What every program calls the look of a cell without one (ECMA-376, 18.8.7). */
  private static final String PLAIN = "Normal";

  private HouseStyle() {}

  /** Gives both to a workbook in which nothing stands yet. */
  static void set(XSSFWorkbook workbook) {
    XSSFFont plain = workbook.getFontAt(0);
    plain.setFontName(Look.FONT);
    plain.setFontHeightInPoints((short) 10);
    plain.setColor(Look.INK);
    var theme =
        (ThemesTable) workbook.createRelationship(XSSFRelation.THEME, XSSFFactory.getInstance(), 1);
    try (InputStream ours = HouseStyle.class.getResourceAsStream(THEME)) {
      theme.readFrom(ours);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    name(workbook.getStylesSource());
  }

  /** The part's own classes for this are not among those that POI brings along. */
  private static void name(StylesTable styles) {
    try (XmlCursor at = styles.getCTStylesheet().newCursor()) {
      at.toEndToken();
      at.beginElement(new QName(SheetText.NAMESPACE, "cellStyles"));
      at.insertAttributeWithValue("count", "1");
      at.beginElement(new QName(SheetText.NAMESPACE, "cellStyle"));
      at.insertAttributeWithValue("name", PLAIN);
      at.insertAttributeWithValue("xfId", "0");
      at.insertAttributeWithValue("builtinId", "0");
    }
  }
}
