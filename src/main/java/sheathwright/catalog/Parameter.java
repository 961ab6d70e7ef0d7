package sheathwright.catalog;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Word;

/**
 * One parameter of a library function.
 *
 * @param javaName as the method calls it
 * @param column as tables call it
 * @param unit of its numbers; null if it is a word
 * @param options the enum of its words; null if it is a number
 * @param preset what a blank means; empty if a value must be given
 * @param limits of its numbers, where they are written at its column
 * @param text what the doc comment says of it, with its range
 * @param assumed what the prompt takes where it is left out and has no preset, under which words
 * @param saysWhich the column of the number whose kind its words are; empty if none
 */
public record Parameter(
    String javaName,
    String column,
    Unit<?> unit,
    Class<? extends Enum<?>> options,
    String preset,
    Limits limits,
    String text,
    List<Assumed> assumed,
    String saysWhich) {

  /** Whether a value must be given. */
  public boolean isRequired() {
    return preset.isEmpty();
  }

  /** Whether a text says that nobody measured what need not be measured. */
  public boolean isLeftOpen(String text) {
    return limits.kind() == Limits.Kind.IF_MEASURED && text.equals(preset);
  }

  /** Its words, in order; empty if it is a number. */
  public List<String> words() {
    return options == null ? List.of() : Choice.wordsOf(options);
  }

  /** Its words as they are said, each the shorter way that it has; empty if it is a number. */
  public List<String> spoken() {
    return options == null
        ? List.of()
        : Arrays.stream(options.getEnumConstants())
            .map(
                option ->
                    option instanceof Word word && !word.alsoWritten().isEmpty()
                        ? word.alsoWritten()
                        : Choice.literal(option).plain())
            .toList();
  }

  /**
   * The argument that a cell's text stands for, as an input that remembers its place.
   *
   * @param text the cell; a blank means the preset
   * @param source where the cell is
   * @throws RefusedException with what was given and what is allowed
   */
  public Traced read(String text, Source source) {
    String given = text.isBlank() ? preset : text.strip();
    if (given.isEmpty()) {
      throw options == null
          ? TypedCell.missing(column, unit, limits)
          : TypedCell.missing(column, options);
    }
    if (isLeftOpen(given)) {
      return Figure.notMeasured(column, unit, source);
    }
    TypedCell cell = new TypedCell(column, given);
    return options == null
        ? Figure.input(column, cell.number(unit, Limits.NONE), unit, Limits.NONE, source)
        : Choice.input(column, cell.option(options), source);
  }

  /** The option that a text names, however it is spaced or capitalized. */
  public static Optional<? extends Enum<?>> option(String given, Class<? extends Enum<?>> options) {
    String wanted = given.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    return Arrays.stream(options.getEnumConstants())
        .filter(option -> isWritten(wanted, option))
        .findFirst();
  }

  private static boolean isWritten(String wanted, Object option) {
    return Choice.literal(option).plain().equals(wanted)
        || option instanceof Word word && word.alsoWritten().equals(wanted);
  }
}
