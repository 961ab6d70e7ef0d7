package sheathwright.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;

/** Calls functions with arguments that are known to be allowed, all or all but one. */
final class Calls {

  private static final Properties TIGHT = tight();

  private Calls() {}

  /** Arguments that a function takes without a word, and with which each guard matters. */
  static List<Traced> allowedArguments(Card card) {
    String line = TIGHT.getProperty(card.name());
    return line == null
        ? StartingValues.of(card)
        : StartingValues.read(card, List.of(line.split(" +")));
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

  private static Properties tight() {
    try (InputStream file = Calls.class.getResourceAsStream("tight-arguments.properties")) {
      Properties lines = new Properties();
      lines.load(file);
      return lines;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
