package sheathwright.job.life;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;

/**
 * A photograph is of one thing that the job knows, and is a picture in its folder that a page can
 * take. One that is not there yet is only asked about: its page says so.
 */
public final class PhotoRules {

  private static final long MOST_BYTES = 20_000_000;

  private static final double BYTES_A_MEGABYTE = 1e6;

  /** What JPEG and PNG files begin with. */
  private static final List<byte[]> BEGINNINGS =
      List.of(
          new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF},
          new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'});

  private static final List<Field<Choice<String>>> THINGS =
      List.of(OrderFields.OF_MARK, OrderFields.OF_REPORT, OrderFields.OF_SHEET);

  private final LifeTables tables;
  private final ReadTable photos;

  PhotoRules(LifeTables tables) {
    this.tables = tables;
    this.photos = tables.photos();
  }

  void hold() {
    MarkNames names = MarkNames.of(tables.marks().rows());
    photos.rows().forEach(photo -> isOfAMark(names, photo));
    photos.known(OrderFields.OF_REPORT, "a report", tables.reports(), OrderFields.OF_REPORT);
    for (Row photo : photos.rows()) {
      if (THINGS.stream().noneMatch(photo::has)) {
        photos.problem(
            photo,
            OrderFields.OF_MARK,
            "it is empty; a photograph is of a mark, a report or a place on the map: give one of mark, report and sheet");
      }
      tables.folder().ifPresent(folder -> isAPicture(folder, photo));
    }
  }

  private void isOfAMark(MarkNames names, Row photo) {
    photo
        .read(OrderFields.OF_MARK)
        .flatMap(mark -> names.problem(mark.value(), tables.marks()))
        .ifPresent(message -> photos.problem(photo, OrderFields.OF_MARK, message));
  }

  private void isAPicture(Path folder, Row photo) {
    String name = photo.read(OrderFields.PHOTO).map(Choice::value).orElse("");
    if (name.isEmpty()) {
      return;
    }
    Optional<Path> inside = inside(folder, name);
    if (inside.isEmpty()) {
      said(photo, name, "lies outside the job's folder; copy it there, such as photos/roof-1.jpg");
      return;
    }
    Path file = inside.get();
    if (!Files.exists(file)) {
      photos.question(
          photo,
          OrderFields.PHOTO,
          "there is no file \"%s\" in the job's folder; a page that shows it says that it is missing; put it there, or is another name meant?"
              .formatted(name));
      return;
    }
    try {
      if (!Files.isRegularFile(file) || !isPicture(file)) {
        said(photo, name, "is not a JPEG or PNG picture; save it as one of the two");
      } else if (Files.size(file) > MOST_BYTES) {
        said(
            photo,
            name,
            "has %s MB; a picture has at most %s MB: save it smaller, 1,200 pixels are enough"
                .formatted(
                    Shown.with(Units.RATIO, Files.size(file) / BYTES_A_MEGABYTE),
                    Shown.with(Units.RATIO, MOST_BYTES / BYTES_A_MEGABYTE)));
      } else {
        isTheOneShown(photo, name, Files.readAllBytes(file));
      }
    } catch (IOException unreadable) {
      said(photo, name, "cannot be read; see who may, or save it again");
    }
  }

  /** What a document showed stays what it is. */
  private void isTheOneShown(Row photo, String name, byte[] picture) {
    photo
        .read(OrderFields.PHOTO_HASH)
        .filter(hash -> !hash.value().equals(hash(picture)))
        .ifPresent(
            hash ->
                said(
                    photo,
                    name,
                    "is not the picture that a document showed: its SHA-256 is not the one in sha256; put that picture back, and give this one a name and a line of its own"));
  }

  /** The SHA-256 of a picture. */
  public static String hash(byte[] picture) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(picture));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible); // every Java has it
    }
  }

  /** The file of a picture in a job's folder, if it is there. */
  public static Optional<Path> file(Path folder, String name) {
    return inside(folder, name).filter(Files::isRegularFile);
  }

  private void said(Row photo, String name, String what) {
    photos.problem(photo, OrderFields.PHOTO, "\"%s\" %s".formatted(name, what));
  }

  /** A file in the folder or below it; nothing elsewhere. */
  private static Optional<Path> inside(Path folder, String name) {
    try {
      Path home = folder.toAbsolutePath().normalize();
      Path file = home.resolve(name).normalize();
      return file.startsWith(home) ? Optional.of(file) : Optional.empty();
    } catch (InvalidPathException noName) {
      return Optional.empty();
    }
  }

  private static boolean isPicture(Path file) throws IOException {
    byte[] first;
    try (InputStream stream = Files.newInputStream(file)) {
      first = stream.readNBytes(BEGINNINGS.get(1).length);
    }
    return BEGINNINGS.stream()
        .anyMatch(
            beginning ->
                first.length >= beginning.length
                    && java.util.Arrays.equals(
                        first, 0, beginning.length, beginning, 0, beginning.length));
  }
}
