package sheathwright.repl.memory;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line that varies as it is typed: {@code vary("order", "waste", pct(5), pct(10))}.
 *
 * @param name the variable that it gives a value; empty if none
 * @param arguments what stands between its commas
 */
public record VaryCall(String name, List<String> arguments) {

  private static final Pattern CALL =
      Pattern.compile(
          "(?s)\\s*(?:(?:var\\s+)?([A-Za-z_]\\w*)\\s*=\\s*)?vary\\s*\\((.*)\\)\\s*+;?\\s*+");

  /** Whether a line varies. */
  public static boolean is(String line) {
    return CALL.matcher(line).matches();
  }

  /** The call that a line is; empty if it is another. */
  public static Optional<VaryCall> in(String line) {
    Matcher call = CALL.matcher(line);
    return call.matches()
        ? Optional.of(
            new VaryCall(call.group(1) == null ? "" : call.group(1), parts(call.group(2))))
        : Optional.empty();
  }

  /** What stands between the commas, brackets and quotes kept whole. */
  public static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    boolean isQuoted = false;
    int from = 0;
    for (int i = 0; i <= text.length(); i++) {
      char c = i == text.length() ? ',' : text.charAt(i);
      if (c == '"') {
        isQuoted = !isQuoted;
      } else if (!isQuoted && "([{".indexOf(c) >= 0) {
        depth++;
      } else if (!isQuoted && ")]}".indexOf(c) >= 0) {
        depth--;
      } else if (!isQuoted && c == ',' && depth == 0) {
        parts.add(text.substring(from, i).strip());
        from = i + 1;
      }
    }
    return parts;
  }
}
