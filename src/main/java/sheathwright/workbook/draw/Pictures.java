package sheathwright.workbook.draw;

import java.util.Arrays;
import java.util.List;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPictureData;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.workbook.book.Tab;

/**
 * Photographs in cells: as large as fits, in their own shape, each with words for whoever sees
 * none.
 */
public final class Pictures {

  private static final int UNITS_A_DOT = Units.EMU_PER_PIXEL;

  /** Left of a picture and above it. */
  private static final int AIR = 3 * Units.EMU_PER_POINT;

  private Pictures() {}

  /**
   * Puts a photograph into some columns' width and several lines' height.
   *
   * @param words said in its place where it cannot be seen
   */
  public static void place(
      Tab tab, Photograph photograph, int line, int lines, int first, int last, String words) {
    XSSFSheet sheet = tab.sheet();
    double each = sheet.getDefaultRowHeightInPoints() * Units.EMU_PER_POINT;
    double wide = -2 * AIR;
    for (int column = first; column <= last; column++) {
      wide += sheet.getColumnWidthInPixels(column) * UNITS_A_DOT;
    }
    double high = lines * each - 2 * AIR;
    double scale = Math.min(wide / photograph.wide(), high / photograph.high());
    double right = AIR + photograph.wide() * scale;
    int column = first;
    while (right > sheet.getColumnWidthInPixels(column) * UNITS_A_DOT && column < last) {
      right -= sheet.getColumnWidthInPixels(column++) * UNITS_A_DOT;
    }
    double bottom = AIR + photograph.high() * scale;
    int down = (int) (bottom / each);
    XSSFClientAnchor anchor =
        new XSSFClientAnchor(
            AIR, AIR, (int) right, (int) (bottom - down * each), first, line, column, line + down);
    Layer.picture(
        sheet,
        anchor,
        number(sheet, photograph),
        new Layer.Words("Photograph, " + words, "Photograph, " + words, words));
  }

  /** A photograph that is shown twice stands in the file once. */
  private static int number(XSSFSheet sheet, Photograph photograph) {
    XSSFWorkbook workbook = sheet.getWorkbook();
    List<XSSFPictureData> all = workbook.getAllPictures();
    for (int i = 0; i < all.size(); i++) {
      if (Arrays.equals(all.get(i).getData(), photograph.bytes())) {
        return i;
      }
    }
    return workbook.addPicture(photograph.bytes(), XSSFWorkbook.PICTURE_TYPE_JPEG);
  }
}
