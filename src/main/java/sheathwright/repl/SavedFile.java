package sheathwright.repl;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.job.file.NewFile;
import sheathwright.workbook.page.SessionBook;

/**
 * The file that a session is saved in; its ending says as what.
 *
 * @param path with its ending
 * @param mayReplace whether a file that exists is replaced
 */
record SavedFile(Path path, boolean mayReplace) {

  private static final String WORKBOOK = ".xlsx";
  private static final Pattern ENDING = Pattern.compile("(.*?)(\\.[A-Za-z]\\w{0,7})");

  /**
   * The file of a name; one without an ending is a workbook.
   *
   * @throws RefusedException if it is neither a workbook nor a session, or exists and is kept
   */
  static SavedFile named(String name, boolean mayReplace) {
    if (name.isBlank()) {
      throw new RefusedException(
          "save takes a name: save \"roof.xlsx\", a live workbook, or save \"roof.session\", the lines that make it again");
    }
    Path asked = Path.of(name);
    String last = String.valueOf(asked.getFileName());
    Matcher ending = ENDING.matcher(last);
    boolean hasEnding = ending.matches();
    if (hasEnding && !Set.of(WORKBOOK, Autosave.ENDING).contains(ending.group(2))) {
      throw new RefusedException(
          "save writes workbooks and sessions, and no %s; name it \"%s%s\" or \"%s%s\""
              .formatted(
                  ending.group(2), ending.group(1), WORKBOOK, ending.group(1), Autosave.ENDING));
    }
    Path path = hasEnding ? asked : asked.resolveSibling(last + WORKBOOK);
    if (Files.exists(path) && !mayReplace) {
      throw new RefusedException(
          "%s exists and is kept; saveOver(\"%s\") replaces it, or name another"
              .formatted(path, path));
    }
    return new SavedFile(path, mayReplace);
  }

  boolean isSession() {
    return path.toString().endsWith(Autosave.ENDING);
  }

  /** Writes the lines that make a session; what is said of it. */
  String written(List<String> lines) {
    if (lines.isEmpty()) {
      throw new RefusedException("no line has defined anything yet; there is nothing to save");
    }
    write(Autosave.text(lines).getBytes(StandardCharsets.UTF_8));
    return "wrote %s, %s lines; resume \"%s\" makes the session again"
        .formatted(path, lines.stream().filter(line -> !line.startsWith("#")).count(), path);
  }

  /** Writes a live workbook; what is said of it, what it leaves out by name. */
  String written(SavedThings things, Map<String, String> stale) {
    if (things.shown().isEmpty()) {
      throw new RefusedException(
          "no variable holds a figure yet; give one a value first: order = sheetsByArea(sqft(1408.72), pct(10))");
    }
    write(SessionBook.bytes(things.cells(), things.parts(), stale));
    StringBuilder said =
        new StringBuilder("wrote %s with %s".formatted(path, String.join(", ", things.shown())));
    if (!things.leftOut().isEmpty()) {
      said.append("\nleft out, because no cell can hold it: ")
          .append(String.join(", ", things.leftOut()));
    }
    if (!stale.isEmpty()) {
      said.append("\nstale, and written with the value it has: ")
          .append(String.join(", ", stale.keySet()));
    }
    return said.toString();
  }

  private void write(byte[] bytes) {
    NewFile.at(path, mayReplace).write(bytes);
  }
}
