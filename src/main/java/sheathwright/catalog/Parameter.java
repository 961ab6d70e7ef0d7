package sheathwright.catalog;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/**
 * One parameter of a library function.
 *
 * @param javaName as the method calls it
 * @param column as tables call it
 * @param unit of its numbers; null if it is a word
 * @param options the enum of its words; null if it is a number
 * @param preset what a blank means; empty if a value must be given
 * @param text what the doc comment says of it
 */
public record Parameter(
    String javaName,
    String column,
    Unit<?> unit,
    Class<? extends Enum<?>> options,
    String preset,
    String text) {

  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,4}([-/.])\\d{1,2}\\1\\d{1,4}( .*)?|\\d{1,2}-[A-Za-z]{3}(-\\d+)?|[A-Za-z]{3}-\\d{1,4}");

  /** Whether a value must be given. */
  public boolean isRequired() {
    return preset.isEmpty();
  }

  /** Its words, in order; empty if it is a number. */
  public List<String> words() {
    return options == null ? List.of() : Choice.wordsOf(options);
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
      throw new RefusedException(column + " is missing; give " + allowed());
    }
    return options == null ? number(given, source) : word(given, source);
  }

  private Traced number(String given, Source source) {
    try {
      return Figure.input(column, Numbers.read(given, unit), unit, Limits.NONE, source);
    } catch (RefusedException unreadable) {
      throw new RefusedException(column + ": " + unreadable.getMessage() + dateHint(given));
    }
  }

  private Traced word(String given, Source source) {
    String wanted = given.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    List<String> words = words();
    int index = words.indexOf(wanted);
    if (index < 0) {
      throw new RefusedException(
          "%s is \"%s\"; it must be %s%s".formatted(column, given, allowed(), dateHint(given)));
    }
    return Choice.input(column, options.getEnumConstants()[index], source);
  }

  private String allowed() {
    return options == null
        ? unit.symbol().isEmpty() ? "a number" : "a number of " + unit.spoken()
        : "one of " + String.join(", ", words());
  }

  private static String dateHint(String given) {
    return DATE.matcher(given).matches()
        ? "; a spreadsheet program may have made a date of it: format the column as text and type it again"
        : "";
  }
}
