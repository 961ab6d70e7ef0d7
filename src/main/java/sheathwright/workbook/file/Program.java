package sheathwright.workbook.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** What wrote a workbook, as its properties, its footers and the command line say it. */
public final class Program {

  /** The build's own, which it leaves beside the classes. */
  private static final String VERSION = version();

  /** Its name and version in a sentence. */
  public static final String NAME = "Sheathwright " + VERSION;

  /** The same as the command line writes it. */
  public static final String COMMAND = "sheathwright " + VERSION;

  private Program() {}

  private static String version() {
    try (InputStream text = Program.class.getResourceAsStream("/sheathwright/version")) {
      return new String(text.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
