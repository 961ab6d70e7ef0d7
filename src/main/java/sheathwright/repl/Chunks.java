package sheathwright.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Text that was typed, pasted or read from a file, as whole lines. */
final class Chunks {

  private static final Pattern CONTINUED = Pattern.compile("\\s*(?:\\.|(?:else|catch|finally)\\b)");
  private static final Pattern COPIED = Pattern.compile("^\\s*> ");

  private Chunks() {}

  /**
   * A whole line, which may have been written on several.
   *
   * @param line where it begins, counted from 1
   */
  record Chunk(int line, String text) {}

  /**
   * The whole lines, and perhaps one that is not whole at the end; remarks and blank lines are left
   * out, and so is the prompt's sign in front of lines that were copied from a screen.
   *
   * @param isComplete whether a text is a whole line
   */
  static List<Chunk> of(List<String> lines, Predicate<String> isComplete) {
    List<Chunk> chunks = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    int first = 1;
    for (int i = 0; i < lines.size(); i++) {
      String line = COPIED.matcher(lines.get(i)).replaceFirst("");
      boolean isBlank = line.isBlank() || line.startsWith("#");
      if (text.length() == 0) {
        if (isBlank) {
          continue;
        }
        first = i + 1;
      }
      text.append(line).append('\n');
      if (!line.isBlank() && isComplete.test(text.toString()) && !goesOn(lines, i + 1)) {
        chunks.add(new Chunk(first, text.toString()));
        text.setLength(0);
      }
    }
    if (text.length() > 0) {
      chunks.add(new Chunk(first, text.toString()));
    }
    return chunks;
  }

  /**
   * Whether the next line that holds anything begins with a dot: then it belongs to the one before.
   */
  private static boolean goesOn(List<String> lines, int next) {
    for (int i = next; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        return CONTINUED.matcher(lines.get(i)).lookingAt();
      }
    }
    return false;
  }
}
