package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;
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

  /** A line of the shell: the program, perhaps, a command, and what it is about. */
  private static final Pattern TYPED =
      Pattern.compile(
          "((?:\\./)?sheathwright )?([a-z-]+) +(?:[A-Za-z~\"]|\\.\\.?/|/\\w|--)[^=(;]*");

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

  /**
   * What is said of a line that belongs in the shell; nothing of any other, such as one that begins
   * with a word of Java's.
   *
   * @param own the words that begin a line of the prompt
   */
  public static Optional<String> said(String line, List<String> own) {
    Matcher typed = TYPED.matcher(line.strip());
    return typed.matches() && !isOfThePrompt(typed, own)
        ? all().stream()
            .filter(command -> command.name().equals(typed.group(2)))
            .map(
                command ->
                    "%s is typed in the shell, outside the prompt: ./%s; help %s tells of it"
                        .formatted(command.name(), command.typed(), command.name()))
            .findFirst()
        : Optional.empty();
  }

  private static boolean isOfThePrompt(Matcher typed, List<String> own) {
    String word = typed.group(2);
    return own.contains(word) || typed.group(1) == null && SourceVersion.isKeyword(word);
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
