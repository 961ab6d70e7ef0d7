package sheathwright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/**
 * Arguments that each function takes without a word, for whoever has none yet: a calculator begins
 * with them. What they leave out takes its preset.
 */
public final class StartingValues {

  private static final String FILE = "starting-values.properties";
  private static final Properties LINES = lines();

  private StartingValues() {}

  /** One for each parameter of a function, in order. */
  public static List<Traced> of(Card card) {
    return read(card, pairs(card));
  }

  /** Those of a function that are typed so. */
  static List<Traced> read(Card card, List<String> typed) {
    List<String> pairs = new ArrayList<>(typed);
    List<Traced> arguments =
        card.parameters().stream()
            .map(parameter -> parameter.read(taken(pairs, parameter.column()), Source.GIVEN))
            .toList();
    if (!pairs.isEmpty()) {
      throw new IllegalStateException(card.name() + " has no parameter for " + pairs);
    }
    return arguments;
  }

  /** The same as they are typed behind a function's name: {@code rise_in_12=6}. */
  public static List<String> pairs(Card card) {
    String line = LINES.getProperty(card.name());
    if (line == null) {
      throw new IllegalStateException(FILE + " says nothing of " + card.name());
    }
    return List.of(line.split(" +"));
  }

  private static String taken(List<String> pairs, String column) {
    Stream<String> matching = pairs.stream().filter(pair -> pair.startsWith(column + "="));
    String pair = matching.findFirst().orElse(column + "=");
    pairs.remove(pair);
    return pair.substring(column.length() + 1);
  }

  private static Properties lines() {
    try (InputStream file = StartingValues.class.getResourceAsStream(FILE)) {
      Properties lines = new Properties();
      lines.load(file);
      return lines;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
