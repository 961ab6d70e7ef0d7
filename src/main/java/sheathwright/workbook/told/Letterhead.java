package sheathwright.workbook.told;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.FileTrouble;
import sheathwright.job.office.Firm;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.table.ProblemsException;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.draw.Photograph;
import sheathwright.workbook.draw.Pictures;

/** Who writes: the firm's logo, name, address, phone, license and insurer, as far as it says. */
public final class Letterhead {

  private static final int LINES_OF_LOGO = 4;

  private Letterhead() {}

  /**
   * Writes it; nothing, where no firm is told of.
   *
   * @throws ProblemsException if the logo is not there or cannot be read, with what to do
   */
  public static void write(Letter letter, Firm firm) {
    logo(firm)
        .ifPresent(
            logo -> {
              int top = letter.tab().next();
              letter.tab().skip(LINES_OF_LOGO);
              String words = "Logo of " + firm.said(FirmKeys.NAME).orElseThrow();
              Pictures.place(letter.tab(), logo, top, LINES_OF_LOGO, 0, 0, words);
            });
    firm.said(FirmKeys.NAME).ifPresent(name -> letter.line(name, Part.LABEL));
    line(letter, Stream.of(FirmKeys.ADDRESS, FirmKeys.PHONE, FirmKeys.EMAIL).map(firm::said));
    line(
        letter,
        Stream.of(
            firm.said(FirmKeys.LICENSE).map("License "::concat),
            firm.said(FirmKeys.INSURER).map("Insured by "::concat)));
  }

  private static void line(Letter letter, Stream<Optional<String>> parts) {
    List<String> said = parts.flatMap(Optional::stream).toList();
    if (!said.isEmpty()) {
      letter.line(String.join(" · ", said), Part.SENTENCE);
    }
  }

  private static Optional<Photograph> logo(Firm firm) {
    Optional<String> name = firm.said(FirmKeys.LOGO);
    try {
      return name.flatMap(firm::beside).map(Letterhead::read);
    } catch (RefusedException | InvalidPathException unreadable) {
      String message = "\"%s\": %s".formatted(name.orElseThrow(), unreadable.getMessage());
      throw new ProblemsException(List.of(firm.wrong(FirmKeys.LOGO, message)));
    }
  }

  private static Photograph read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new RefusedException(
          "there is no such file beside the table; put it there, or leave the value blank");
    }
    try {
      return Photograph.drawn(Files.readAllBytes(file));
    } catch (IOException locked) {
      throw new RefusedException("it cannot be read: " + FileTrouble.of(locked));
    }
  }
}
