package sheathwright.workbook.draw;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;

/**
 * A photograph as it may leave the house: upright, at most 1,200 dots long, and newly written, so
 * that nothing of where, when and with what it was taken is left in it. The same file always makes
 * the same bytes.
 *
 * @param bytes of a JPEG
 * @param wide in dots
 * @param high in dots
 */
public record Photograph(byte[] bytes, int wide, int high) {

  /** No file larger than this is read. */
  public static final int LARGEST_FILE = 20_000_000;

  /** What to set on a phone whose pictures cannot be read. */
  static final String ASKED = "set the phone's camera to save as JPEG, and save this one as JPEG";

  /** What to do about a drawing that cannot be read. */
  private static final String ASKED_OF_A_DRAWING = "save it as PNG or JPEG, and name that file";

  private static final int LONGEST = 1_200;
  private static final float QUALITY = 0.8f;
  private static final Set<String> READ = Set.of("jpeg", "png");

  /** Begins the dots of a JPEG, and ends them (ITU-T T.81, from memory). */
  private static final int SCAN = 0xDA;

  private static final int END = 0xD9;

  /** How files of a phone's own kind begin, from their fifth byte on. */
  private static final String PHONES_OWN = "ftyp";

  /**
   * The photograph in a file.
   *
   * @throws RefusedException if it is too large, of a kind that is not read, or broken: with what
   *     to do about it
   */
  public static Photograph of(byte[] file) {
    return of(file, ASKED);
  }

  /**
   * A picture that no camera made, such as a logo.
   *
   * @throws RefusedException as of a photograph
   */
  public static Photograph drawn(byte[] file) {
    return of(file, ASKED_OF_A_DRAWING);
  }

  private static Photograph of(byte[] file, String asked) {
    if (file.length > LARGEST_FILE) {
      throw tooLarge(file.length);
    }
    if (isPhonesOwn(file)) {
      throw new RefusedException("it is of a kind that only some phones read (HEIC); " + asked);
    }
    BufferedImage read = read(file, asked);
    BufferedImage upright = upright(smaller(read), Upright.of(file));
    return new Photograph(written(upright), upright.getWidth(), upright.getHeight());
  }

  /** Says that a file of so many bytes is not read. */
  public static RefusedException tooLarge(long bytes) {
    return new RefusedException(
        Shown.text(
            "it has %.1f MB; a picture may have up to %s MB, so save it smaller",
            bytes / 1e6, LARGEST_FILE / 1_000_000));
  }

  private static boolean isPhonesOwn(byte[] file) {
    return file.length > 12
        && new String(file, 4, PHONES_OWN.length(), StandardCharsets.ISO_8859_1).equals(PHONES_OWN);
  }

  /**
   * Where a mark of the JPEG format stands last; none of them is ever part of the picture's dots.
   */
  private static int last(byte[] file, int mark) {
    for (int i = file.length - 2; i >= 0; i--) {
      if ((file[i] & 0xFF) == 0xFF && (file[i + 1] & 0xFF) == mark) {
        return i;
      }
    }
    return -1;
  }

  /** The picture, already thinned out where it has many more dots than will be left of it. */
  private static BufferedImage read(byte[] file, String asked) {
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw new RefusedException("it is neither a JPEG nor a PNG; " + asked);
      }
      ImageReader reader = readers.next();
      try {
        String kind = reader.getFormatName().toLowerCase(Locale.ROOT);
        if (!READ.contains(kind)) {
          throw new RefusedException("it is neither a JPEG nor a PNG; " + asked);
        }
        if (kind.equals("jpeg") && last(file, SCAN) > last(file, END)) {
          throw new RefusedException("it breaks off in the middle; copy it from the phone anew");
        }
        reader.setInput(in, true, true);
        int longest = Math.max(reader.getWidth(0), reader.getHeight(0));
        int each = Math.max(1, longest / (2 * LONGEST));
        ImageReadParam thinned = reader.getDefaultReadParam();
        thinned.setSourceSubsampling(each, each, 0, 0);
        return reader.read(0, thinned);
      } finally {
        reader.dispose();
      }
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException broken) {
      throw new RefusedException("it cannot be read, the file is broken or unusual; " + asked);
    }
  }

  /** Halved as often as that leaves enough dots, then brought to its size. */
  private static BufferedImage smaller(BufferedImage read) {
    BufferedImage made = read;
    int longest = Math.max(read.getWidth(), read.getHeight());
    for (int now = longest; now > 2 * LONGEST; now /= 2) {
      made = drawn(made, 0.5);
    }
    longest = Math.max(made.getWidth(), made.getHeight());
    return drawn(made, Math.min(1, (double) LONGEST / longest));
  }

  private static BufferedImage drawn(BufferedImage image, double scale) {
    int wide = Math.max(1, (int) Math.round(image.getWidth() * scale));
    int high = Math.max(1, (int) Math.round(image.getHeight() * scale));
    BufferedImage drawn = blank(wide, high);
    Graphics2D pen = pen(drawn);
    pen.drawImage(image, 0, 0, wide, high, null);
    pen.dispose();
    return drawn;
  }

  private static BufferedImage upright(BufferedImage image, Upright turned) {
    int wide = image.getWidth();
    int high = image.getHeight();
    BufferedImage drawn = turned.isOnItsSide() ? blank(high, wide) : blank(wide, high);
    Graphics2D pen = pen(drawn);
    pen.drawImage(image, turned.turning(wide, high), null);
    pen.dispose();
    return drawn;
  }

  private static BufferedImage blank(int wide, int high) {
    return new BufferedImage(wide, high, BufferedImage.TYPE_INT_RGB);
  }

  /** Draws on white, which is what shines through a picture that lets anything through. */
  private static Graphics2D pen(BufferedImage on) {
    Graphics2D pen = on.createGraphics();
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, on.getWidth(), on.getHeight());
    return pen;
  }

  private static byte[] written(BufferedImage image) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(QUALITY);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (var out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), how);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
