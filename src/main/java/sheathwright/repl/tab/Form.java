package sheathwright.repl.tab;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import sheathwright.catalog.Parameter;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.repl.line.Questions;
import sheathwright.repl.line.Unreadable;

/**
 * A function asked for by its name alone: one line a parameter with unit, range, choices and what
 * stands there already. Enter keeps, a value changes, nothing where something is due leaves. It
 * ends as the call with every name that was answered.
 *
 * @param questions what is asked
 * @param columns the width of the window
 */
public record Form(Questions questions, int columns) {

  /** Characters: an amount with its unit, such as "12 ft 10-11/16 in". */
  private static final int ROOM_TO_TYPE = 16;

  private static final String INDENT = "  ";

  /**
   * Asks for each parameter in turn.
   *
   * @param line what is typed behind a question; nothing at the end of all input
   * @param said hears what stands above a question, and what is wrong with an answer
   * @return the call as it would be typed; nothing if the form was left
   */
  public Optional<String> filled(Function<String, Optional<String>> line, Consumer<String> said) {
    said.accept(questions.card().text().summary());
    said.accept("Enter keeps what stands in brackets, and leaves where nothing does.");
    for (Parameter parameter : questions.card().parameters()) {
      if (!isAnswered(parameter, line, said)) {
        return Optional.empty();
      }
    }
    return Optional.of(questions.typed());
  }

  private boolean isAnswered(
      Parameter parameter, Function<String, Optional<String>> line, Consumer<String> said) {
    String standing = questions.standing(parameter);
    String question = question(parameter, standing, said);
    while (true) {
      Optional<String> typed = line.apply(question).map(String::strip);
      if (typed.isEmpty() || typed.get().isEmpty()) {
        return typed.isPresent() && !standing.isEmpty();
      }
      try {
        questions.take(parameter, typed.get());
        return true;
      } catch (RefusedException | Unreadable wrong) {
        said.accept(String.join("\n", Shown.wrapped(wrong.getMessage(), columns, "", INDENT)));
      }
    }
  }

  /** One line; of what does not fit beside what is typed, all but the name stands above it. */
  private String question(Parameter parameter, String standing, Consumer<String> said) {
    String name = questions.name(parameter);
    String choices =
        parameter.options() == null ? "" : " (" + String.join(", ", parameter.spoken()) + ")";
    String about = parameter.text() + choices;
    String kept = (standing.isEmpty() ? "" : " [" + standing + "]") + ": ";
    String whole = name + ": " + about + kept;
    if (whole.length() + ROOM_TO_TYPE <= columns) {
      return whole;
    }
    said.accept(String.join("\n", Shown.wrapped(about, columns, INDENT, INDENT + INDENT)));
    return name + kept;
  }
}
