package sheathwright.workbook.draw;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.geom.AffineTransform;
import java.io.ByteArrayInputStream;
import java.io.IOException;

/** How a picture has to be turned, or mirrored, to stand upright: by what its camera noted. */
enum Upright {
  AS_IT_IS(1, 0, 0, 1),
  MIRRORED(-1, 0, 0, 1),
  HALF_A_TURN(-1, 0, 0, -1),
  HALF_A_TURN_MIRRORED(1, 0, 0, -1),
  QUARTER_MIRRORED(0, 1, 1, 0),
  QUARTER_CLOCKWISE(0, 1, -1, 0),
  QUARTER_COUNTERCLOCKWISE_MIRRORED(0, -1, -1, 0),
  QUARTER_COUNTERCLOCKWISE(0, -1, 1, 0);

  private final int xByX;
  private final int yByX;
  private final int xByY;
  private final int yByY;

  Upright(int xByX, int yByX, int xByY, int yByY) {
    this.xByX = xByX;
    this.yByX = yByX;
    this.xByY = xByY;
    this.yByY = yByY;
  }

  /** As the file says; one that says nothing that is known stands upright. */
  static Upright of(byte[] file) {
    try {
      ExifIFD0Directory noted =
          ImageMetadataReader.readMetadata(new ByteArrayInputStream(file))
              .getFirstDirectoryOfType(ExifIFD0Directory.class);
      Integer number = noted == null ? null : noted.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
      return number == null || number < 1 || number > values().length
          ? AS_IT_IS
          : values()[number - 1];
    } catch (ImageProcessingException | IOException nothingNoted) {
      return AS_IT_IS;
    }
  }

  /** Whether what was wide becomes tall. */
  boolean isOnItsSide() {
    return xByX == 0;
  }

  /** Turns a picture of this size about its middle and back to the corner it is drawn from. */
  AffineTransform turning(int wide, int high) {
    int across = xByX * wide + xByY * high;
    int down = yByX * wide + yByY * high;
    return new AffineTransform(
        xByX, yByX, xByY, yByY, across < 0 ? -across : 0, down < 0 ? -down : 0);
  }
}
