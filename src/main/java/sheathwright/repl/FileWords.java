package sheathwright.repl;

import java.nio.file.Path;
import sheathwright.job.StringTable;
import sheathwright.leveling.string.StringReadings;

/** What the prompt reads from files. Meant to be imported statically. */
public final class FileWords {

  private FileWords() {}

  /** The string-line readings of a plane, from a file: rafter, along_in, up_in, drop_in. */
  public static StringReadings stringReadings(String file, String plane) {
    return StringTable.read(Path.of(file), plane);
  }
}
