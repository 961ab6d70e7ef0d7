package sheathwright.cli.pipe;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Supplier;
import sheathwright.job.file.NewFile;
import sheathwright.job.table.CsvFile;

/**
 * A dash where a file could stand: standard input where it is read, standard output where written.
 */
public final class Dash {

  /** What messages call it. */
  public static final String INPUT = "standard input";

  private static final Path DASH = Path.of("-");

  private Dash() {}

  /** Whether a path is a dash. */
  public static boolean is(Path path) {
    return DASH.equals(path);
  }

  /** What messages call a file that is read. */
  public static String name(Path file) {
    return is(file) ? INPUT : String.valueOf(file.getFileName());
  }

  /**
   * A table out of a file or standard input.
   *
   * @throws sheathwright.job.table.ProblemsException if it cannot be read or told apart into cells
   */
  public static CsvFile table(Path file) {
    return is(file) ? CsvFile.read(System.in, INPUT) : CsvFile.read(file);
  }

  /** All of a file or of standard input. */
  public static byte[] bytes(Path file) throws IOException {
    return is(file) ? System.in.readAllBytes() : Files.readAllBytes(file);
  }

  /** The lines of a text out of standard input. */
  public static String text() throws IOException {
    return new String(System.in.readAllBytes(), StandardCharsets.UTF_8);
  }

  /**
   * Writes a file whole, or all of it to standard output. A file that may not be written is refused
   * before its content is made.
   *
   * @throws sheathwright.job.table.ProblemsException if it exists and may not be replaced, or
   *     cannot be written
   */
  public static void write(Path file, boolean mayReplace, Supplier<byte[]> content) {
    if (is(file)) {
      byte[] bytes = content.get();
      System.out.write(bytes, 0, bytes.length);
      System.out.flush();
    } else {
      NewFile place = NewFile.at(file, mayReplace);
      place.write(content.get());
    }
  }
}
