package sheathwright.workbook.letterhead;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import sheathwright.job.file.Unpacked;
import sheathwright.job.office.Firm;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.file.LogProvider;
import sheathwright.workbook.part.PartFile;
import sheathwright.workbook.told.Photos;

/** An office's own workbook, in front of a document of ours. */
public final class OfficeLetterhead {

  private final LetterKind kind;
  private final String file;
  private final byte[] bytes;

  /**
   * One of a document.
   *
   * @param file its name, for messages
   * @param bytes of an .xlsx file
   */
  public OfficeLetterhead(LetterKind kind, String file, byte[] bytes) {
    this.kind = kind;
    this.file = file;
    this.bytes = bytes.clone();
    LogProvider.settle();
  }

  /**
   * That of an office, if it has one.
   *
   * @param named a file that somebody names, which goes before what the firm's table says
   * @throws ProblemsException if the file is not there or cannot be read
   */
  public static Optional<OfficeLetterhead> of(LetterKind kind, Optional<Path> named, Firm firm) {
    Optional<Path> place = named.or(() -> beside(kind, firm));
    return place.map(path -> read(kind, path));
  }

  private static Optional<Path> beside(LetterKind kind, Firm firm) {
    Optional<String> said = firm.said(kind.key());
    try {
      Optional<Path> place = said.flatMap(firm::beside);
      if (place.isPresent() && !Files.isRegularFile(place.get())) {
        throw new ProblemsException(
            List.of(
                firm.wrong(
                    kind.key(),
                    "\"%s\": there is no such file beside the table; put it there, or leave the value blank"
                        .formatted(said.get()))));
      }
      return place;
    } catch (InvalidPathException unreadable) {
      throw new ProblemsException(
          List.of(firm.wrong(kind.key(), "\"%s\" is no name of a file".formatted(said.get()))));
    }
  }

  private static OfficeLetterhead read(LetterKind kind, Path path) {
    return new OfficeLetterhead(kind, String.valueOf(path.getFileName()), Unpacked.file(path));
  }

  /**
   * The office's tabs, filled in, and those of a document behind them.
   *
   * @param document the bytes of one of ours
   * @param photos of the job; asked for only where one is shown
   * @throws ProblemsException with all that is wrong with the letterhead, cell by cell
   */
  public byte[] filled(byte[] document, Told told, Supplier<Photos> photos) {
    OfficeFile office = OfficeFile.of(file, bytes);
    try {
      return filled(office, new Ours(document), told, photos);
    } catch (IllegalArgumentException unreadable) {
      throw office.damaged(); // as where it is read
    }
  }

  private byte[] filled(OfficeFile office, Ours ours, Told told, Supplier<Photos> photos) {
    List<Laid> laid = new Filling(office, ours, kind).fill(told, photos);
    new Joining(office, ours).join();
    try (XSSFWorkbook whole = opened(office)) {
      Laying laying = new Laying(office, ours, whole);
      laid.forEach(laying::lay);
      Results.write(office, whole);
      return packed(office);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** What the library that reads workbooks cannot open is damaged, however it says so. */
  private static XSSFWorkbook opened(OfficeFile office) throws IOException {
    byte[] packed = packed(office);
    try {
      return new XSSFWorkbook(new ByteArrayInputStream(packed));
    } catch (IOException | RuntimeException unreadable) {
      throw office.damaged();
    }
  }

  /** The bytes of a file; the same parts make the same bytes. */
  static byte[] packed(OfficeFile office) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      put(zip, PartFile.KINDS, office.parts().get(PartFile.KINDS));
      for (Map.Entry<String, byte[]> part : office.parts().entrySet()) {
        if (!part.getKey().equals(PartFile.KINDS) && !part.getKey().endsWith("/")) {
          put(zip, part.getKey(), part.getValue());
        }
      }
    }
    return bytes.toByteArray();
  }

  private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
    zip.putNextEntry(PartFile.entry(name));
    zip.write(bytes);
  }
}
