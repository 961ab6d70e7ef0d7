package sheathwright.catalog;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * Numbers as the trade says them, where a bare number is not what was typed: a pitch {@code 8:12},
 * a limit {@code L/240}, {@code 30 days}, {@code 115 mph}. What could mean two things is not read.
 */
final class SpokenNumber {

  private static final Pattern PITCH =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(?::|/|-?in-?|on)\\s*12(?:\\s*pitch)?");
  private static final Pattern OTHER_PITCH =
      Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*[:/]\\s*(\\d+(?:\\.\\d+)?)");
  private static final Pattern OF_THE_SPAN =
      Pattern.compile("(?:l|span)\\s*/\\s*(\\d+(?:\\.\\d+)?)");
  private static final Pattern WITH_WORD = Pattern.compile("(.*\\d[\"']?)\\s*([a-z][a-z/. ]*)");

  private static final Set<String> MINUTES = Set.of("min", "minute", "minutes");
  private static final Set<String> WEEKS = Set.of("week", "weeks", "wk", "wks");
  private static final Set<String> MONTHS = Set.of("month", "months", "year", "years");
  private static final Set<String> DAYS = Set.of("d", "day", "days");
  private static final Set<String> HOURS = Set.of("hr", "hrs", "hour", "hours");

  private final String typed;
  private final String given;
  private final Unit<?> unit;
  private final String column;

  private SpokenNumber(String given, Unit<?> unit, String column) {
    this.typed = given.strip();
    this.given = typed.toLowerCase(Locale.ROOT);
    this.unit = unit;
    this.column = column;
  }

  /**
   * The number that a text stands for under a column's name; none, if it is no such text.
   *
   * @throws RefusedException if it is one that could mean several things, with what to write
   */
  static OptionalDouble read(String given, Unit<?> unit, String column) {
    SpokenNumber spoken = new SpokenNumber(given, unit, column);
    return unit.equals(Units.RISE_IN_12) ? spoken.pitch() : spoken.number();
  }

  /** The rise of a pitch that is written out, {@code 8/12}: there it is no fraction. */
  static OptionalDouble pitch(String given, Unit<?> unit) {
    Matcher pitch = PITCH.matcher(given.strip().toLowerCase(Locale.ROOT));
    return unit.equals(Units.RISE_IN_12) && pitch.matches()
        ? OptionalDouble.of(Double.parseDouble(pitch.group(1)))
        : OptionalDouble.empty();
  }

  private OptionalDouble pitch() {
    Matcher other = OTHER_PITCH.matcher(given);
    if (other.matches() || given.endsWith("°") || given.contains("deg")) {
      throw new RefusedException(
          "\"%s\" is not a rise in 12; write how many inches the roof rises in 12, such as 8 or 8:12"
              .formatted(typed));
    }
    return OptionalDouble.empty();
  }

  private OptionalDouble number() {
    Matcher limit = OF_THE_SPAN.matcher(given);
    if (unit.equals(Units.RATIO) && limit.matches()) {
      return OptionalDouble.of(Double.parseDouble(limit.group(1)));
    }
    Matcher parts = WITH_WORD.matcher(given);
    if (!parts.matches()) {
      return OptionalDouble.empty();
    }
    String word = parts.group(2).replaceAll("\\.$", "");
    OptionalDouble number = plain(parts.group(1));
    boolean isLength = unit.equals(Units.INCH) || unit.equals(Units.FOOT);
    if (number.isEmpty() || isOwn(word)) {
      return number;
    }
    return isLength ? OptionalDouble.empty() : inAnother(number.getAsDouble(), word);
  }

  private OptionalDouble plain(String number) {
    try {
      return OptionalDouble.of(Numbers.read(number, unit));
    } catch (RefusedException none) {
      return OptionalDouble.empty();
    }
  }

  /** Whether a word is the unit that the column is in. */
  private boolean isOwn(String word) {
    boolean isTime = unit.equals(Units.HOUR) || unit.symbol().startsWith("h/");
    return Stream.of(
                unit.symbol(),
                unit.spoken(),
                unit.suffix(),
                column.substring(column.lastIndexOf('_') + 1))
            .anyMatch(own -> Nearest.singular(own).equals(Nearest.singular(word)))
        || (unit.equals(Units.INCH) && List.of("inch", "inches").contains(word))
        || (unit.equals(Units.FOOT) && List.of("foot", "feet").contains(word))
        || (isTime && HOURS.contains(word))
        || (isInDays() && DAYS.contains(word));
  }

  private boolean isInDays() {
    return column.endsWith("days");
  }

  /** A length of time in another unit than the column's. */
  private OptionalDouble inAnother(double number, String word) {
    if (unit.equals(Units.HOUR) && MINUTES.contains(word)) {
      return OptionalDouble.of(number / 60);
    }
    if (isInDays() && WEEKS.contains(word)) {
      return OptionalDouble.of(number * 7);
    }
    boolean isTime =
        Stream.of(MINUTES, HOURS, DAYS, WEEKS, MONTHS).anyMatch(all -> all.contains(word));
    if (isInDays() && isTime) {
      throw new RefusedException(
          "\"%s\" could be more days or fewer; write days, such as 30".formatted(typed));
    }
    if (unit.equals(Units.HOUR) && isTime) {
      throw new RefusedException(
          "\"%s\" could be hours of the clock or of work; write hours, such as 48"
              .formatted(typed));
    }
    String wanted = unit.spoken().isEmpty() ? "" : ", in " + unit.spoken();
    throw new RefusedException(
        "\"%s\" is not a number; write the number alone%s".formatted(typed, wanted));
  }
}
