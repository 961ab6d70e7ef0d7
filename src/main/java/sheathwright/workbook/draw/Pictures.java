package sheathwright.workbook.draw;

import sheathwright.workbook.book.Tab;
import sheathwright.workbook.part.Anchor;
import sheathwright.workbook.part.Anchor.Corner;
import sheathwright.workbook.part.Picture;
import sheathwright.workbook.part.Sheet;
import sheathwright.workbook.part.Words;

/**
 * Photographs in cells: as large as fits, in their own shape, each with words for whoever sees
 * none.
 */
public final class Pictures {

  /** Left of a picture and above it. */
  private static final int AIR = 3 * Anchor.UNITS_A_POINT;

  private Pictures() {}

  /**
   * Puts a photograph into some columns' width and several lines' height.
   *
   * @param words said in its place where it cannot be seen
   */
  public static void place(
      Tab tab, Photograph photograph, int line, int lines, int first, int last, String words) {
    Sheet sheet = tab.sheet();
    double each = Sheet.LINE * Anchor.UNITS_A_POINT;
    double wide = -2 * AIR;
    for (int column = first; column <= last; column++) {
      wide += sheet.dots(column) * Anchor.UNITS_A_DOT;
    }
    double high = lines * each - 2 * AIR;
    double scale = Math.min(wide / photograph.wide(), high / photograph.high());
    double right = AIR + photograph.wide() * scale;
    int column = first;
    while (right > sheet.dots(column) * Anchor.UNITS_A_DOT && column < last) {
      right -= sheet.dots(column++) * Anchor.UNITS_A_DOT;
    }
    double bottom = AIR + photograph.high() * scale;
    int down = (int) (bottom / each);
    Anchor anchor =
        new Anchor(
            new Corner(first, line, AIR, AIR),
            new Corner(column, line + down, (int) right, (int) (bottom - down * each)));
    Words said = new Words("Photograph, " + words, "Photograph, " + words, words);
    sheet.layer().picture(anchor, said, new Picture(photograph.bytes()));
  }
}
