package sheathwright.repl.show;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.Shown;

/**
 * Prints answers so that they fit the window: long lines go on in the next at a word, and what is
 * longer than the window comes by the screenful. Where the next line was typed before the answer
 * came, the answer comes whole: the keys of that line are not meant for the pager.
 */
public final class Pager {

  /** The keys of whoever reads, as they are pressed, until they are closed. */
  public interface Keys extends AutoCloseable {

    /** Whether some were pressed that nobody has read yet. */
    boolean areWaiting();

    /** Waits for the next one; below zero where there will be none. */
    int next();

    @Override
    void close();
  }

  private static final String MORE = "-- Enter goes on, q ends --";
  private static final char CONTROL_C = 3;
  private static final Pattern WARNING = Pattern.compile("\\bSTOP\\b|\\bNOT ok\\b");
  private static final String RED = "\u001b[1;31m";
  private static final String PLAIN = "\u001b[0m";

  private final Supplier<Screen> screen;
  private final PrintWriter out;
  private final Supplier<Keys> keyboard;

  /**
   * A pager in front of a screen.
   *
   * @param screen asked for each answer, since a window can be drawn larger
   * @param keyboard where the keys come from while answers are shown
   */
  public Pager(Supplier<Screen> screen, PrintWriter out, Supplier<Keys> keyboard) {
    this.screen = screen;
    this.out = out;
    this.keyboard = keyboard;
  }

  /** Shows answers, one below the other; an empty one not at all. */
  public void print(String... answers) {
    try (Keys keys = keyboard.get()) {
      Stream.of(answers).filter(each -> !each.isEmpty()).forEach(each -> print(each, keys));
    }
  }

  private void print(String text, Keys keys) {
    Screen now = screen.get();
    List<String> lines = new ArrayList<>();
    text.lines().forEach(line -> lines.addAll(fitted(line, now.columns())));
    boolean isWhole = now.rows() == 0 || lines.size() < now.rows() || keys.areWaiting();
    int each = isWhole ? lines.size() : now.rows() - 1;
    for (int i = 0; i < lines.size(); i++) {
      if (i > 0 && i % each == 0 && !isToGoOn(keys)) {
        break;
      }
      out.println(colored(lines.get(i), now));
    }
    out.flush();
  }

  /** What is too long for a line goes on below, two farther in than it began. */
  private static List<String> fitted(String line, int columns) {
    if (line.length() <= columns) {
      return List.of(line);
    }
    int indent = line.length() - line.stripLeading().length();
    return Shown.wrapped(line.strip(), columns, " ".repeat(indent), " ".repeat(indent + 2));
  }

  private boolean isToGoOn(Keys keys) {
    out.print(MORE);
    out.flush();
    int pressed = keys.next();
    out.print("\r" + " ".repeat(MORE.length()) + "\r");
    return pressed != 'q' && pressed != CONTROL_C && pressed >= 0;
  }

  private static String colored(String line, Screen screen) {
    return screen.isColored() ? WARNING.matcher(line).replaceAll(RED + "$0" + PLAIN) : line;
  }
}
