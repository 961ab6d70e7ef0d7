package sheathwright.workbook.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/**
 * Stand-ins for photographs, drawn and not taken: boards with a dark stain in the upper left, and
 * what a phone notes beside a picture.
 */
public final class DrawnPictures {

  /** A name that a phone might leave in a picture. */
  public static final String OWNER = "a phone of somebody's";

  private static final int APP1 = 0xFFE1;
  private static final short ORIENTATION = 0x0112;
  private static final short ARTIST = 0x013B;
  private static final short TEXT = 2;
  private static final short SHORT = 3;

  private DrawnPictures() {}

  /** Boards across, the upper left corner stained. */
  public static BufferedImage stained(int wide, int high, Color stain) {
    BufferedImage image = new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(0xD9, 0xC8, 0xA0));
    pen.fillRect(0, 0, wide, high);
    pen.setColor(new Color(0x9A, 0x86, 0x60));
    for (int y = high / 6; y < high; y += Math.max(1, high / 6)) {
      pen.drawLine(0, y, wide, y);
    }
    pen.setColor(stain);
    pen.fillRect(0, 0, wide / 2, high / 2);
    pen.dispose();
    return image;
  }

  /** A picture as a camera stores it that was held in one of the eight ways, 1 upright. */
  public static byte[] jpeg(BufferedImage upright, int orientation) {
    byte[] bare = file(stored(upright, orientation), "jpeg");
    byte[] noted = noted(orientation);
    ByteBuffer made = ByteBuffer.allocate(bare.length + 4 + noted.length);
    made.put(bare, 0, 2).putShort((short) APP1).putShort((short) (noted.length + 2));
    return made.put(noted).put(bare, 2, bare.length - 2).array();
  }

  /** The same without a note. */
  public static byte[] png(BufferedImage image) {
    return file(image, "png");
  }

  private static byte[] file(BufferedImage image, String kind) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, kind, bytes);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** Where each stored row and column is seen: TIFF 6.0, tag 274, which EXIF takes over. */
  private static BufferedImage stored(BufferedImage seen, int orientation) {
    int wide = seen.getWidth();
    int high = seen.getHeight();
    boolean isOnItsSide = orientation > 4;
    int columns = isOnItsSide ? high : wide;
    int rows = isOnItsSide ? wide : high;
    BufferedImage stored = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int x =
            switch (orientation) {
              case 1, 4 -> column;
              case 2, 3 -> wide - 1 - column;
              case 5, 8 -> row;
              default -> wide - 1 - row;
            };
        int y =
            switch (orientation) {
              case 1, 2 -> row;
              case 3, 4 -> high - 1 - row;
              case 5, 6 -> column;
              default -> high - 1 - column;
            };
        stored.setRGB(column, row, seen.getRGB(x, y));
      }
    }
    return stored;
  }

  private static byte[] noted(int orientation) {
    byte[] owner = (OWNER + "\0").getBytes(StandardCharsets.US_ASCII);
    int entries = 2;
    int behind = 8 + 2 + 12 * entries + 4;
    ByteBuffer noted = ByteBuffer.allocate(6 + behind + owner.length);
    noted.put("Exif\0\0MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42).putInt(8);
    noted.putShort((short) entries);
    noted.putShort(ORIENTATION).putShort(SHORT).putInt(1).putShort((short) orientation);
    noted.putShort((short) 0);
    noted.putShort(ARTIST).putShort(TEXT).putInt(owner.length).putInt(behind);
    return noted.putInt(0).put(owner).array();
  }
}
