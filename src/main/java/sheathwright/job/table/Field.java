package sheathwright.job.table;

import java.util.Optional;
import sheathwright.catalog.Columns;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;

/**
 * One thing that a job's table may hold: a number, one of a few words, a date, or text. It is the
 * key by which the value that was read is asked for, and knows what kind of value that is.
 *
 * @param <T> what is read: a figure of some quantity, or a choice
 * @param name the column, or the key of a two-column table
 * @param label what it is, for a person
 * @param form how it is written
 * @param unit of a number; null for anything else
 * @param options the enum of the words; null for anything else
 * @param limits of a number
 * @param usual what is given for it; other numbers are asked about
 * @param isRequired whether it must be given
 */
public record Field<T extends Traced>(
    String name,
    String label,
    Form form,
    Unit<?> unit,
    Class<? extends Enum<?>> options,
    Limits limits,
    Usual usual,
    boolean isRequired) {

  /** How a cell is written, and how many characters it takes at most. */
  enum Form {
    NUMBER(60),
    WORD(60),
    DATE(60),
    /** A date, and a time of that day if somebody gives one. */
    MOMENT(60),
    /** What something is called: it heads pages and names cells. */
    NAME(60),
    /** A line of text. */
    LINE(200),
    /** As much as fits on a page. */
    TEXT(2_000);

    private final int longest;

    Form(int longest) {
      this.longest = longest;
    }

    /** What is said of a text that is longer than this form takes. */
    Optional<String> tooLong(String text) {
      return CellRules.tooLong(text, longest);
    }
  }

  /**
   * A part of a thing that a function takes: its name, unit, range and words are the thing's own.
   *
   * @param thing a record whose parts have columns
   * @param part the part, as the record calls it
   */
  @SuppressWarnings("unchecked") // the constant that keeps it says what the part is
  public static <T extends Traced> Field<T> of(
      Class<? extends Record> thing, String part, String label) {
    Columns columns = Columns.of(thing);
    return (Field<T>)
        columns
            .options(part)
            .<Field<?>>map(options -> ofWords(columns.name(part), label, options))
            .orElseGet(
                () ->
                    number(
                        columns.name(part),
                        label,
                        columns.unit(part).orElseThrow(),
                        columns.limits(part)));
  }

  /** The same under another name, where a table has two of one kind. */
  public Field<T> named(String other) {
    return new Field<>(other, label, form, unit, options, limits, usual, isRequired);
  }

  public static <Q extends Quantity> Field<Figure<Q>> number(
      String name, String label, Unit<Q> unit, double least, double most) {
    return number(name, label, unit, Limits.between(least, most, ""));
  }

  public static <Q extends Quantity> Field<Figure<Q>> whole(
      String name, String label, Unit<Q> unit, double least, double most) {
    return number(name, label, unit, Limits.whole(least, most, ""));
  }

  public static <E extends Enum<E>> Field<Choice<E>> word(
      String name, String label, Class<E> options) {
    return ofWords(name, label, options);
  }

  private static <T extends Traced> Field<T> ofWords(
      String name, String label, Class<? extends Enum<?>> options) {
    return new Field<>(name, label, Form.WORD, null, options, Limits.NONE, Usual.ANY, true);
  }

  public static Field<Choice<String>> name(String name, String label) {
    return of(name, label, Form.NAME);
  }

  public static Field<Choice<String>> line(String name, String label) {
    return of(name, label, Form.LINE);
  }

  public static Field<Choice<String>> text(String name, String label) {
    return of(name, label, Form.TEXT);
  }

  public static Field<Choice<String>> date(String name, String label) {
    return of(name, label, Form.DATE);
  }

  public static Field<Choice<String>> moment(String name, String label) {
    return of(name, label, Form.MOMENT);
  }

  private static Field<Choice<String>> of(String name, String label, Form form) {
    return new Field<>(name, label, form, null, null, Limits.NONE, Usual.ANY, true);
  }

  private static <Q extends Quantity> Field<Figure<Q>> number(
      String name, String label, Unit<Q> unit, Limits limits) {
    return new Field<>(name, label, Form.NUMBER, unit, null, limits, Usual.ANY, true);
  }

  public Field<T> ifKnown() {
    return new Field<>(name, label, form, unit, options, limits, usual, false);
  }

  /** The same, asked about where it is none of these. */
  public Field<T> usually(double least, double most) {
    return asked(new Usual(least, most, false));
  }

  /** The same, asked about where it is none of these and not 0. */
  public Field<T> usuallyOrNone(double least, double most) {
    return asked(new Usual(least, most, true));
  }

  private Field<T> asked(Usual other) {
    return new Field<>(name, label, form, unit, options, limits, other, isRequired);
  }

  /** A value that was read by this field, or by one of its name that differs in its range. */
  @SuppressWarnings("unchecked") // so it was read
  public T as(Traced value) {
    return (T) value;
  }

  /** A number in the unit of a field. */
  @SuppressWarnings("unchecked") // a field of figures has a unit of their quantity
  public static <Q extends Quantity> Figure<Q> figure(Field<Figure<Q>> field, double number) {
    return Figure.of(number, (Unit<Q>) field.unit());
  }

  /** What may be given, in words: {@code from 0 to 90 %}, {@code one of rot, soft}. */
  public String allowed() {
    return switch (form) {
      case NUMBER -> limits.inWords() + (unit.symbol().isEmpty() ? "" : " " + unit);
      case WORD -> "one of " + String.join(", ", Choice.wordsOf(options));
      case DATE -> "a date, such as 2026-05-03";
      case MOMENT -> Moment.ALLOWED;
      case NAME, LINE, TEXT -> "text of up to " + form.longest + " characters";
    };
  }

  /**
   * The input that a cell's text stands for.
   *
   * @param cellName its name in a workbook
   * @throws RefusedException with what was given and what is allowed
   */
  public T read(String cellName, String text, Source source) {
    String given = text.strip();
    if (given.isEmpty()) {
      throw missing();
    }
    TypedCell cell = new TypedCell(name, given);
    Optional<String> tooLong = form.tooLong(given);
    if (tooLong.isPresent()) {
      throw cell.refused(tooLong.get());
    }
    return as(
        switch (form) {
          case NUMBER -> Figure.input(cellName, cell.number(unit, limits), unit, limits, source);
          case WORD -> Choice.input(cellName, cell.option(options), source);
          case DATE, MOMENT -> Choice.input(cellName, date(cell), source);
          case NAME, LINE, TEXT -> Choice.input(cellName, given, source);
        });
  }

  private String date(TypedCell cell) {
    try {
      return form == Form.DATE
          ? Dates.read(cell.text()).toString()
          : Moment.read(cell.text()).toString();
    } catch (RefusedException none) {
      throw cell.refused(none.getMessage());
    }
  }

  private RefusedException missing() {
    return switch (form) {
      case NUMBER -> TypedCell.missing(name, unit, limits);
      case WORD -> TypedCell.missing(name, options);
      case DATE, MOMENT, NAME, LINE, TEXT ->
          new RefusedException(Refusal.missing(name, allowed()).reason());
    };
  }

  /** What is to be asked about a value that was read, if anything. */
  Optional<String> question(String text, Traced value) {
    if (value instanceof Figure<?> figure) {
      return usual.question(text.strip(), figure);
    }
    return form == Form.DATE || form == Form.MOMENT ? Moment.doubt(text) : Optional.empty();
  }
}
