package sheathwright.repl;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import sheathwright.job.file.NewFile;
import sheathwright.job.table.ProblemsException;

/**
 * Keeps the lines of a session in a file as they are typed, so that the last session can be had
 * back. Each session has a file of its own; the newest few are kept.
 */
final class Autosave implements Consumer<List<String>> {

  /** How a file ends that makes a session again. */
  static final String ENDING = ".session";

  /** Sessions whose files are kept: some weeks of work. */
  private static final int KEPT = 20;

  private final Path folder;
  private final Path own;
  private String trouble = "";
  private boolean isTold;

  /** Keeps a session that begins now in a folder, which need not be there yet. */
  Autosave(Path folder) {
    this(
        folder,
        DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").format(LocalDateTime.now())
            + "-"
            + ProcessHandle.current().pid());
  }

  /** Keeps a session under a name that begins with the time at which it began. */
  Autosave(Path folder, String name) {
    this.folder = folder;
    own = folder.resolve(name + ENDING);
  }

  /** Where the desktop's convention has programs keep such files. */
  static Path folder(Map<String, String> environment, Path home) {
    String named = environment.getOrDefault("XDG_STATE_HOME", environment.get("LOCALAPPDATA"));
    Path state =
        named == null || !Path.of(named).isAbsolute()
            ? home.resolve(".local").resolve("state")
            : Path.of(named);
    return state.resolve("sheathwright");
  }

  /**
   * Where the lines of all sessions are kept that the arrow keys bring back: beside them. What an
   * earlier version kept in the home folder is moved there; where that cannot be done it stays in
   * use.
   */
  static Path history(Path folder, Path home) {
    Path own = folder.resolve("history");
    Path old = home.resolve(".sheathwright_history");
    if (Files.exists(own) || !Files.exists(old)) {
      return own;
    }
    try {
      Files.createDirectories(folder);
      return Files.move(old, own);
    } catch (IOException kept) {
      return old;
    }
  }

  @Override
  public void accept(List<String> lines) {
    try {
      if (lines.isEmpty()) {
        Files.deleteIfExists(own);
        return;
      }
      if (!Files.exists(own)) {
        Files.createDirectories(folder);
        clear();
      }
      NewFile.at(own, true).write(text(lines).getBytes(StandardCharsets.UTF_8));
    } catch (IOException | ProblemsException lost) {
      trouble = "what is typed cannot be kept on the side: " + lost.getMessage();
    }
  }

  /** Why lines cannot be kept, said once; empty if they can. */
  String trouble() {
    String said = isTold ? "" : trouble;
    isTold |= !trouble.isEmpty();
    return said;
  }

  /** Lines as a file that makes the session again. */
  static String text(List<String> lines) {
    return "# a session; \"sheathwright run\" makes it again, and so does resume at the prompt\n"
        + String.join("\n", lines)
        + "\n";
  }

  /** The file of the session before this one, if there is one. */
  Optional<Path> last() throws IOException {
    return files().stream().filter(file -> !file.equals(own)).findFirst();
  }

  private void clear() throws IOException {
    for (Path old : files().stream().skip(KEPT - 1).toList()) {
      Files.deleteIfExists(old);
    }
  }

  /** The newest first; their names begin with the time. */
  private List<Path> files() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(ENDING))
          .sorted(Comparator.comparing(Path::getFileName).reversed())
          .toList();
    }
  }
}
