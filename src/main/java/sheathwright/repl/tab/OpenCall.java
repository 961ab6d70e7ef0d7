package sheathwright.repl.tab;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The innermost call whose bracket is still open where the cursor stands.
 *
 * @param callee what is called; empty for a bracket that calls nothing
 * @param before the arguments that are done
 * @param argument what has been typed of the one that is due
 */
record OpenCall(String callee, List<String> before, String argument) {

  private static final Pattern CALLEE = Pattern.compile("([A-Za-z_][\\w.]*)\\s*$");
  private static final Pattern NAME = Pattern.compile("\\s*([A-Za-z_]\\w*)\\s*=(?!=)\\s*");

  /** A bracket as it is read: where its current argument began. */
  private static final class Bracket {

    private final String callee;
    private final List<String> done = new ArrayList<>();
    private int begin;

    Bracket(String callee, int begin) {
      this.callee = callee;
      this.begin = begin;
    }
  }

  /** The open call of a text that ends at the cursor; nothing where no bracket is open. */
  static Optional<OpenCall> in(String text) {
    Deque<Bracket> open = new ArrayDeque<>();
    boolean isQuoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' && (i == 0 || text.charAt(i - 1) != '\\')) {
        isQuoted = !isQuoted;
      } else if (!isQuoted && (c == '(' || c == '[' || c == '{')) {
        open.push(new Bracket(c == '(' ? callee(text.substring(0, i)) : "", i + 1));
      } else if (!isQuoted && (c == ')' || c == ']' || c == '}') && !open.isEmpty()) {
        open.pop();
      } else if (!isQuoted && c == ',' && !open.isEmpty()) {
        open.peek().done.add(text.substring(open.peek().begin, i));
        open.peek().begin = i + 1;
      }
    }
    return Optional.ofNullable(open.peek())
        .map(last -> new OpenCall(last.callee, List.copyOf(last.done), text.substring(last.begin)));
  }

  private static String callee(String before) {
    Matcher callee = CALLEE.matcher(before);
    return callee.find() ? callee.group(1) : "";
  }

  /** The name that the due argument is given by, if it is. */
  Optional<String> name() {
    return name(argument);
  }

  /** The names that arguments before it are given by. */
  List<String> names() {
    return before.stream().flatMap(each -> name(each).stream()).toList();
  }

  /** What has been typed of the argument's value. */
  String value() {
    Matcher name = NAME.matcher(argument);
    return (name.lookingAt() ? argument.substring(name.end()) : argument).stripLeading();
  }

  private static Optional<String> name(String argument) {
    Matcher name = NAME.matcher(argument);
    return name.lookingAt() ? Optional.of(name.group(1)) : Optional.empty();
  }
}
