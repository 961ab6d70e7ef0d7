package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** What the signs of a picture mean, as many side by side as fit. */
final class Keys {

  private static final String BETWEEN = "   ";

  private Keys() {}

  static List<String> lines(Collection<String> keys, int columns) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String each : keys) {
      if (!line.isEmpty() && line.length() + BETWEEN.length() + each.length() > columns) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : BETWEEN).append(each);
    }
    lines.add(line.toString());
    return lines;
  }
}
