package sheathwright.repl;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The lines that were typed in earlier sessions, which the arrow keys bring back. */
final class HistoryFile {

  private HistoryFile() {}

  /**
   * Where they are kept: in the folder of the sessions. What an earlier version kept in the home
   * folder is moved there; where that cannot be done it stays in use.
   */
  static Path in(Path sessions, Path home) {
    Path own = sessions.resolve("history");
    Path old = home.resolve(".sheathwright_history");
    if (Files.exists(own) || !Files.exists(old)) {
      return own;
    }
    try {
      Files.createDirectories(sessions);
      return Files.move(old, own);
    } catch (IOException kept) {
      return old;
    }
  }
}
