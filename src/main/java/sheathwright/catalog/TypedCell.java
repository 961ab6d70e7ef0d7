package sheathwright.catalog;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Word;

/**
 * A cell as somebody typed it under a column's name. Whoever reads it, a library function filled
 * down a table, a job or a solver, what is wrong with it is said here, in the same words.
 *
 * @param column what the cell belongs to
 * @param text what was typed
 */
public record TypedCell(String column, String text) {

  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,4}([-/.])\\d{1,2}\\1\\d{1,4}( .*)?|\\d{1,2}-[A-Za-z]{3}(-\\d+)?|[A-Za-z]{3}-\\d{1,4}");

  /** A message as it is said where the column stands before it already. */
  public static String under(String column, String message) {
    String named = column + ": ";
    return message.startsWith(named) ? message.substring(named.length()) : message;
  }

  /**
   * The number that it holds.
   *
   * @throws RefusedException if it is none, or none that is allowed
   */
  public double number(Unit<?> unit, Limits limits) {
    double number = SpokenNumber.pitch(text, unit).orElseGet(() -> plainOrSpoken(unit));
    if (!Double.isFinite(number)) {
      throw refused("\"" + text.strip() + "\" is not a number that can be used");
    }
    return Figure.of(number, unit).within(column, unit, limits).value();
  }

  private double plainOrSpoken(Unit<?> unit) {
    try {
      return Numbers.read(text, unit);
    } catch (RefusedException unreadable) {
      return spoken(unit, unreadable);
    }
  }

  /** The number, as it is said; else what was unreadable about it stays so. */
  private double spoken(Unit<?> unit, RefusedException unreadable) {
    OptionalDouble number;
    try {
      number = SpokenNumber.read(text, unit, column);
    } catch (RefusedException unclear) {
      throw refused(unclear.getMessage());
    }
    return number.orElseThrow(() -> refused(unreadable.getMessage() + dateHint(List.of())));
  }

  /**
   * The option that it names.
   *
   * @throws RefusedException if it names none
   */
  public Enum<?> option(Class<? extends Enum<?>> options) {
    Optional<? extends Enum<?>> named = Parameter.option(text.strip(), options);
    if (named.isPresent()) {
      return named.get();
    }
    List<String> words = Choice.wordsOf(options);
    throw new RefusedException(
        "%s is \"%s\"%s%s"
            .formatted(
                column,
                text.strip(),
                Nearest.instead(text.strip(), words),
                dateHint(List.of(options.getEnumConstants()))));
  }

  /** What is said of a column that stays without a number. */
  public static RefusedException missing(String column, Unit<?> unit, Limits limits) {
    return missing(Figure.missing(column, unit, limits).refusal());
  }

  /** What is said of a column that stays without a word. */
  public static RefusedException missing(String column, Class<? extends Enum<?>> options) {
    return missing(Choice.missing(column, options).refusal());
  }

  private static RefusedException missing(Optional<Refusal> refusal) {
    return new RefusedException(refusal.orElseThrow().reason());
  }

  /** What is said of this cell, its column before it. */
  public RefusedException refused(String message) {
    return new RefusedException(column + ": " + message);
  }

  private String dateHint(List<? extends Enum<?>> options) {
    return DATE.matcher(text.strip()).matches()
        ? "; a spreadsheet program may have made a date of it: "
            + likelyWord(options)
                .map(word -> "write " + word)
                .orElse("format the column as text and type it again")
        : "";
  }

  /** The word whose other spelling ends in a number that the date holds. */
  private Optional<String> likelyWord(List<? extends Enum<?>> options) {
    List<String> numbers = List.of(text.split("\\D+"));
    return options.stream()
        .filter(option -> option instanceof Word)
        .map(option -> (Word) option)
        .filter(word -> numbers.contains(afterHyphen(word.alsoWritten())))
        .findFirst()
        .map(Word::word);
  }

  private static String afterHyphen(String text) {
    return text.contains("-") ? text.substring(text.lastIndexOf('-') + 1) : "none";
  }
}
