package sheathwright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.Stream;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;

/** Calls functions with arguments that are known to be allowed, all or all but one. */
final class Calls {

  private static final Properties ALLOWED = allowed();

  private Calls() {}

  /** Arguments that a function takes without a word, from {@code valid-arguments.properties}. */
  static List<Traced> allowedArguments(Card card) {
    String line = ALLOWED.getProperty(card.name());
    if (line == null) {
      throw new AssertionError("valid-arguments.properties says nothing of " + card.name());
    }
    List<String> pairs = new ArrayList<>(List.of(line.split(" +")));
    List<Traced> arguments =
        card.parameters().stream()
            .map(parameter -> parameter.read(taken(pairs, parameter.column()), Source.GIVEN))
            .toList();
    if (!pairs.isEmpty()) {
      throw new AssertionError(card.name() + " has no parameter for " + pairs);
    }
    return arguments;
  }

  /** The same arguments but for one. */
  static List<Traced> allowedArgumentsBut(Card card, Parameter parameter, Traced argument) {
    List<Traced> arguments = new ArrayList<>(allowedArguments(card));
    arguments.set(card.parameters().indexOf(parameter), argument);
    return arguments;
  }

  /** Every reason that an answer, or a part of one, is refused. */
  static List<String> refusals(Card card, List<Traced> arguments) {
    try {
      return card.answer(arguments).stream()
          .flatMap(result -> result.refusal().stream())
          .map(Refusal::reason)
          .toList();
    } catch (RefusedException outright) {
      return List.of(outright.getMessage());
    }
  }

  private static String taken(List<String> pairs, String column) {
    Stream<String> matching = pairs.stream().filter(pair -> pair.startsWith(column + "="));
    String pair = matching.findFirst().orElse(column + "=");
    pairs.remove(pair);
    return pair.substring(column.length() + 1);
  }

  private static Properties allowed() {
    try (InputStream file = Calls.class.getResourceAsStream("valid-arguments.properties")) {
      Properties lines = new Properties();
      lines.load(file);
      return lines;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
