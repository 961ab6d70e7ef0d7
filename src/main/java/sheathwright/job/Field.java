package sheathwright.job;

import java.util.List;
import java.util.Locale;
import sheathwright.catalog.Numbers;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * One thing that a job's table may hold: a number, one of a few words, or free text.
 *
 * @param name the column, or the key of a two-column table
 * @param label what it is, for a person
 * @param unit of a number; null for a word or text
 * @param options the enum of the words; null for a number or text
 * @param limits of a number
 * @param isRequired whether it must be given
 */
record Field(
    String name,
    String label,
    Unit<?> unit,
    Class<? extends Enum<?>> options,
    Limits limits,
    boolean isRequired) {

  static Field number(String name, String label, double least, double most) {
    return number(name, label, Units.endingOf(name), least, most);
  }

  static Field number(String name, String label, Unit<?> unit, double least, double most) {
    return new Field(name, label, unit, null, Limits.between(least, most, ""), true);
  }

  static Field whole(String name, String label, Unit<?> unit, double least, double most) {
    return new Field(name, label, unit, null, Limits.whole(least, most, ""), true);
  }

  static Field word(String name, String label, Class<? extends Enum<?>> options) {
    return new Field(name, label, null, options, Limits.NONE, true);
  }

  static Field text(String name, String label) {
    return new Field(name, label, null, null, Limits.NONE, true);
  }

  Field ifKnown() {
    return new Field(name, label, unit, options, limits, false);
  }

  /** The input that a cell's text stands for, under a name of its own in the workbook. */
  Traced read(String cellName, String text, Source source) {
    String given = text.strip();
    if (unit != null) {
      Figure<?> figure = Figure.input(cellName, Numbers.read(given, unit), unit, limits, source);
      figure
          .refusal()
          .ifPresent(
              outside -> {
                throw new RefusedException(
                    "%s is given; it must be %s%s"
                        .formatted(
                            given, limits.inWords(), unit.symbol().isEmpty() ? "" : " " + unit));
              });
      return figure;
    }
    return options == null ? Choice.input(cellName, given, source) : word(cellName, given, source);
  }

  private Traced word(String cellName, String given, Source source) {
    List<String> words = Choice.wordsOf(options);
    int index = words.indexOf(given.toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-'));
    if (index < 0) {
      throw new RefusedException(
          "\"" + given + "\" is given; it must be one of " + String.join(", ", words));
    }
    return Choice.input(cellName, options.getEnumConstants()[index], source);
  }
}
