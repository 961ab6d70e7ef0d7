package sheathwright.repl;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.job.StringTable;
import sheathwright.job.file.NewFile;
import sheathwright.leveling.string.StringReadings;
import sheathwright.repl.show.Bars;
import sheathwright.repl.show.Screen;
import sheathwright.workbook.page.SessionBook;

/** What can be asked of a session at its own prompt. Meant to be imported statically. */
public final class Words {

  private static volatile Session current;
  private static volatile Supplier<Screen> screen = () -> Screen.PIPE;

  private Words() {}

  /** Text that is shown as it stands. */
  public record Page(String text) {

    @Override
    public String toString() {
      return text;
    }
  }

  static void in(Session session) {
    current = session;
  }

  /** Pictures take the width of this screen from now on. */
  static void on(Supplier<Screen> shown) {
    screen = shown;
  }

  /** What can be typed here, in the order of the work. */
  public static Page help() {
    return new Page(Help.page(screen.get().columns()));
  }

  /**
   * All of a task, the function of this name, or whatever speaks of these words, with an example
   * each.
   *
   * @throws RefusedException if nothing does
   */
  public static Page help(String words) {
    return new Page(Help.about(words, screen.get().columns()));
  }

  /** The string-line readings of a plane, from a file: rafter, along_in, up_in, drop_in. */
  public static StringReadings stringReadings(String file, String plane) {
    return StringTable.read(Path.of(file), plane);
  }

  /**
   * Where a figure, a choice, a check or a function's answer comes from: the last step, what went
   * into it, and its source.
   */
  public static Page explain(Object result) {
    parts(result);
    return new Page(Explained.briefly(result, screen.get().columns()));
  }

  /** The working of the same, every step with its source. */
  public static Page explainAll(Object result) {
    return new Page(Working.of(parts(result), screen.get().columns()));
  }

  private static List<Traced> parts(Object result) {
    List<Traced> traced = result == null ? List.of() : TracedParts.of(result);
    if (traced.isEmpty()) {
      throw new RefusedException(
          "explain takes a figure, a choice, a check or a function's answer; this has no working");
    }
    return traced;
  }

  /** A picture in the terminal, where one can be drawn. */
  public static Page show(Object result) {
    return new Page(Bars.of(result, screen.get().columns()));
  }

  /**
   * The session as a live workbook.
   *
   * @throws RefusedException if no variable holds anything that a cell can
   */
  public static Page save(String file) throws IOException {
    return save(file, false);
  }

  /** The session as a live workbook, in place of one that exists. */
  public static Page saveOver(String file) throws IOException {
    return save(file, true);
  }

  private static Page save(String file, boolean mayReplace) throws IOException {
    if (Files.exists(Path.of(file)) && !mayReplace) {
      throw new RefusedException(
          "%s exists and is kept; saveOver(\"%s\") replaces it, or name another"
              .formatted(file, file));
    }
    Map<String, Traced> cells = TracedParts.named(current.variables());
    if (cells.isEmpty()) {
      throw new RefusedException(
          "no variable holds a figure yet; give one a value first: order = sheetsByArea(sqft(1408.72), pct(10))");
    }
    NewFile.at(Path.of(file), mayReplace).write(SessionBook.bytes(cells));
    return new Page("wrote " + file + " with " + String.join(", ", cells.keySet()));
  }
}
