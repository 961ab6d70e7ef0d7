import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.io.File;
import java.io.IOException;

/**
 * Writes how wide letters are, in thousandths of the letters' size: what a test measures the texts
 * of workbooks by on a machine that has no such font.
 *
 * <p>Called as {@code java LetterWidths.java REGULAR BOLD > widths.csv} with two font files whose
 * letters are as wide as Arial's: Liberation Sans, or Nimbus Sans, which was made as wide as
 * Helvetica.
 */
final class LetterWidths {

  private static final int SIZE = 1000;
  private static final int FIRST = 32;
  private static final int LAST = 0xFF;
  private static final int BEHIND_LATIN = 0x7F;
  private static final int LATIN_AGAIN = 0xA0;
  private static final String FURTHER = "–—‘’“”…≤≥−×½¼¾";

  private LetterWidths() {}

  public static void main(String[] arguments) throws IOException, FontFormatException {
    Font regular = font(arguments[0]);
    Font bold = font(arguments[1]);
    System.out.println("# Advance widths in thousandths of the size: " + regular.getFontName());
    System.out.println("# and " + bold.getFontName() + ", by src/build/java/LetterWidths.java");
    System.out.println("letter,regular,bold");
    for (int letter = FIRST; letter <= LAST; letter++) {
      if (letter < BEHIND_LATIN || letter >= LATIN_AGAIN) {
        line(letter, regular, bold);
      }
    }
    FURTHER.chars().filter(letter -> letter > LAST).forEach(letter -> line(letter, regular, bold));
  }

  private static Font font(String file) throws IOException, FontFormatException {
    return Font.createFont(Font.TRUETYPE_FONT, new File(file)).deriveFont((float) SIZE);
  }

  private static void line(int letter, Font regular, Font bold) {
    System.out.println(letter + "," + width(letter, regular) + "," + width(letter, bold));
  }

  private static long width(int letter, Font font) {
    var context = new FontRenderContext(new AffineTransform(), true, true);
    return Math.round(font.getStringBounds(Character.toString(letter), context).getWidth());
  }
}
