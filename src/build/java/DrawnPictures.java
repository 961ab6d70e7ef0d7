import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;

/**
 * Draws what the pictures of an invented job might show, instead of photographs of anybody's roof:
 * a sheet, a dark patch, nails, and a tape along the eave. Each line of the job's {@code
 * photos.csv} is one picture, always the same for the same name; one that is there is left as it
 * is.
 *
 * <p>Called as {@code java DrawnPictures.java JOB}.
 */
final class DrawnPictures {

  private static final int WIDE = 480;
  private static final int HIGH = 360;
  private static final Color WOOD = new Color(206, 168, 112);
  private static final Color GRAIN = new Color(190, 150, 96);
  private static final Color JOINT = new Color(84, 66, 44);
  private static final Color ROT = new Color(72, 52, 38);
  private static final Color SHINGLE = new Color(96, 98, 102);
  private static final Color TAPE = new Color(240, 206, 60);
  private static final Color INK = new Color(40, 40, 40);

  private final Graphics2D pen;
  private final Random chance;

  private DrawnPictures(BufferedImage picture, String name) {
    pen = picture.createGraphics();
    chance = new Random(name.hashCode());
  }

  public static void main(String[] arguments) throws IOException {
    Path job = Path.of(arguments[0]);
    List<String> lines = Files.readAllLines(job.resolve("photos.csv"));
    List<String> head = List.of(lines.get(0).split(",", -1));
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      String name = cells[head.indexOf("photo")];
      Path file = job.resolve(name);
      if (Files.exists(file)) {
        continue;
      }
      Files.createDirectories(file.getParent());
      BufferedImage picture = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
      new DrawnPictures(picture, name)
          .draw(cells[head.indexOf("view")], cells[head.indexOf("mark")]);
      ImageIO.write(picture, "png", file.toFile());
    }
  }

  private void draw(String view, String mark) {
    sheets();
    if (view.equals("wide")) {
      rafters();
    } else if (view.equals("before") && !mark.isEmpty()) {
      shingles();
    } else if (!view.equals("after") && (mark.isEmpty() || mark.startsWith("R"))) {
      patch();
    } else if (view.equals("open") && mark.startsWith("T")) {
      hump();
    } else {
      nails();
    }
    tape();
    pen.dispose();
  }

  private void sheets() {
    pen.setColor(WOOD);
    pen.fillRect(0, 0, WIDE, HIGH);
    pen.setColor(GRAIN);
    for (int i = 0; i < 60; i++) {
      int y = chance.nextInt(HIGH);
      int x = chance.nextInt(WIDE);
      pen.drawLine(x, y, x + 40 + chance.nextInt(160), y);
    }
    pen.setColor(JOINT);
    pen.fillRect(0, 60, WIDE, 3);
    pen.fillRect(0, 270, WIDE, 3);
    pen.fillRect(60 + chance.nextInt(20), 60, 3, 210);
    pen.fillRect(410 + chance.nextInt(20), 60, 3, 210);
  }

  private void rafters() {
    pen.setColor(JOINT);
    for (int x = 30; x < WIDE; x += 80) {
      pen.fillRect(x, 0, 16, HIGH);
    }
  }

  private void shingles() {
    for (int y = 0; y < HIGH; y += 30) {
      pen.setColor(SHINGLE);
      pen.fillRect(0, y, WIDE, 30);
      pen.setColor(INK);
      pen.drawLine(0, y, WIDE, y);
      for (int x = chance.nextInt(60); x < WIDE; x += 60) {
        pen.drawLine(x, y, x, y + 30);
      }
    }
  }

  private void patch() {
    pen.setColor(ROT);
    int middle = 180 + chance.nextInt(100);
    for (int i = 0; i < 24; i++) {
      int size = 24 + chance.nextInt(40);
      pen.fillOval(middle - 60 + chance.nextInt(120), 120 + chance.nextInt(80), size, size);
    }
  }

  private void hump() {
    pen.setColor(GRAIN);
    pen.fillRect(0, 48, WIDE, 30);
    pen.setColor(INK);
    pen.fillRect(0, 62, WIDE, 2);
  }

  private void nails() {
    pen.setColor(INK);
    for (int x = 90; x < 400; x += 80) {
      for (int y = 75; y < 265; y += 32) {
        pen.fillOval(x + chance.nextInt(5), y + chance.nextInt(5), 5, 5);
      }
    }
  }

  private void tape() {
    pen.setColor(TAPE);
    pen.fillRect(0, 310, WIDE, 26);
    pen.setColor(INK);
    for (int x = 0; x < WIDE; x += 10) {
      pen.drawLine(x, 310, x, x % 120 == 0 ? 334 : x % 40 == 0 ? 324 : 317);
    }
  }
}
