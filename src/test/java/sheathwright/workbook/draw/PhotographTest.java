package sheathwright.workbook.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.figure.RefusedException;

/** A photograph goes out upright, small and without what its phone noted. */
class PhotographTest {

  private static final Color STAIN = new Color(0x40, 0x28, 0x18);

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void itStandsUpright_howeverThePhoneWasHeld(int orientation) throws IOException {
    byte[] file = DrawnPictures.jpeg(DrawnPictures.stained(320, 240, STAIN), orientation);

    Photograph photograph = Photograph.of(file);

    assertThat(photograph.wide()).isEqualTo(320);
    assertThat(photograph.high()).isEqualTo(240);
    BufferedImage seen = seen(photograph);
    assertThat(isDark(seen, 80, 60)).as("upper left").isTrue();
    assertThat(isDark(seen, 240, 60)).as("upper right").isFalse();
    assertThat(isDark(seen, 80, 180)).as("lower left").isFalse();
    assertThat(isDark(seen, 240, 180)).as("lower right").isFalse();
  }

  @Test
  void itsLongerSide_hasAtMost1200Dots_andItIsNeverEnlarged() {
    Photograph tall =
        Photograph.of(DrawnPictures.jpeg(DrawnPictures.stained(4000, 3000, STAIN), 6));
    Photograph small = Photograph.of(DrawnPictures.png(DrawnPictures.stained(60, 30, STAIN)));

    // 4000 x 3000 held upright is seen as it was drawn, 4 : 3
    assertThat(tall.wide()).isEqualTo(1200);
    assertThat(tall.high()).isEqualTo(900);
    assertThat(small.wide()).isEqualTo(60);
    assertThat(small.high()).isEqualTo(30);
  }

  @Test
  void whatThePhoneNoted_isGone() {
    byte[] file = DrawnPictures.jpeg(DrawnPictures.stained(320, 240, STAIN), 6);

    assertThat(text(file)).contains(DrawnPictures.OWNER).contains("Exif");
    assertThat(text(Photograph.of(file).bytes()))
        .doesNotContain(DrawnPictures.OWNER)
        .doesNotContain("Exif");
  }

  @Test
  void theSameFile_makesTheSameBytes() {
    byte[] file = DrawnPictures.jpeg(DrawnPictures.stained(1600, 1200, STAIN), 3);

    assertThat(Photograph.of(file).bytes()).isEqualTo(Photograph.of(file).bytes());
  }

  @Test
  void whatCannotBeRead_isRefused_withWhatToSetOnThePhone() {
    byte[] phonesOwn = new byte[64];
    System.arraycopy("ftypheic".getBytes(StandardCharsets.US_ASCII), 0, phonesOwn, 4, 8);
    byte[] whole = DrawnPictures.jpeg(DrawnPictures.stained(320, 240, STAIN), 1);
    byte[] broken = Arrays.copyOf(whole, 300);

    for (byte[] file :
        new byte[][] {phonesOwn, broken, "a word".getBytes(StandardCharsets.US_ASCII), {}}) {
      assertThatExceptionOfType(RefusedException.class)
          .isThrownBy(() -> Photograph.of(file))
          .withMessageContaining("save as JPEG")
          .withMessageNotContaining("\n");
    }
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Photograph.of(new byte[Photograph.LARGEST_FILE + 1]))
        .withMessageContaining("20 MB");
  }

  @Test
  void aPictureThatBreaksOff_isRefused_andNotShownHalfGray() {
    byte[] whole = DrawnPictures.jpeg(DrawnPictures.stained(320, 240, STAIN), 1);

    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(() -> Photograph.of(Arrays.copyOf(whole, whole.length - 200)))
        .withMessageContaining("breaks off");
  }

  private static BufferedImage seen(Photograph photograph) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(photograph.bytes()));
  }

  private static boolean isDark(BufferedImage image, int x, int y) {
    return new Color(image.getRGB(x, y)).getRed() < 0x80;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }
}
