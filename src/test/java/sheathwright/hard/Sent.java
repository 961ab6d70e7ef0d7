package sheathwright.hard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * A job that was quoted, with every workbook of it that comes back to be read; made once.
 *
 * @param folder where the job lies; nobody writes here
 */
record Sent(Path folder) {

  private static Sent once;

  static synchronized Sent once() {
    if (once == null) {
      once = made();
    }
    return once;
  }

  private static Sent made() {
    try {
      Path job = Files.createTempDirectory("sent");
      copied(Path.of("demo-data", "quince-hollow"), job);
      done("quote", job, "--issue", "--on", "2027-05-04");
      done("crew", job, "-o", job.resolve("crew.xlsx"));
      done("letterhead", "quote", "-o", job.resolve("letterhead.xlsx"));
      return new Sent(job);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  /** Runs a command that must be done. */
  static void done(Object... command) {
    Ran ran = Ran.of(command);
    if (ran.status() != 0) {
      throw new IllegalStateException(ran.err());
    }
  }

  /** A copy of the job. */
  Path copy(Path into) {
    return copied(folder, into);
  }

  /** A folder and all in it, copied into another that may be there. */
  static Path copied(Path from, Path into) {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path copy = into.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else {
          Files.copy(file, copy);
        }
      }
      return into;
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
