package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ServiceLoader;
import sheathwright.figure.Shown;

/**
 * A command of the program that is typed in the shell, outside the prompt, as the prompt's help
 * tells of it.
 *
 * @param name as it is typed
 * @param meaning what it does, in a sentence
 * @param typed a line that can be typed in the shell
 */
public record ShellCommand(String name, String meaning, String typed) {

  private static final String INDENT = "    ";

  /** Whoever knows the commands: the room of the command line stands behind the prompt's. */
  @FunctionalInterface
  public interface Known {
    List<ShellCommand> all();
  }

  /** Every command of the program. */
  public static List<ShellCommand> all() {
    return ServiceLoader.load(Known.class).stream()
        .flatMap(known -> known.get().all().stream())
        .toList();
  }

  /** Whether these words are its name, with a hyphen or without. */
  public boolean isCalled(List<String> words) {
    return name.equalsIgnoreCase(String.join("-", words));
  }

  /** Whether it speaks of all these words. */
  public boolean speaksOf(List<String> words) {
    String text = (name + " " + meaning).toLowerCase(Locale.ROOT);
    return words.stream().allMatch(word -> text.contains(word.toLowerCase(Locale.ROOT)));
  }

  /** What it is, and how it is called, in lines of a width. */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>(Shown.wrapped(meaning, width, name + "  ", INDENT));
    lines.addAll(Shown.wrapped("in the shell: ./" + typed, width, INDENT, INDENT + INDENT));
    return lines;
  }
}
