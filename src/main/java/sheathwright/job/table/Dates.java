package sheathwright.job.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;

/**
 * Dates as they are typed: {@code 2027-05-04}, {@code May 4, 2027}, {@code 4 May 2027}, and {@code
 * 5/4/2027}, which is the fourth of May: the month stands first, and whoever gives one that could
 * be the fifth of April is told what was understood.
 */
public final class Dates {

  private static final int FIRST_YEAR = 2000;
  private static final int LAST_YEAR = 2100;
  private static final int ABBREVIATED = 3;
  private static final int MONTHS = 12;
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern SLASHES = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("(\\p{Alpha}+)\\.?\\s+(\\d{1,2}),?\\s+(\\d{4})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})\\s+(\\p{Alpha}+)\\.?,?\\s+(\\d{4})");

  /** A date in numbers alone, however it is divided. */
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})[-./](\\d{1,2})[-./](\\d{2}|\\d{4})");

  private static final DateTimeFormatter IN_WORDS =
      DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);

  private Dates() {}

  /** A date as it stands in a letter: {@code May 4, 2027}. */
  public static String inWords(LocalDate date) {
    return IN_WORDS.format(date);
  }

  /**
   * The date that a text stands for.
   *
   * @throws RefusedException if it is none, or not in this century
   */
  public static LocalDate read(String text) {
    String given = text.strip();
    for (Pattern written : List.of(ISO, SLASHES, MONTH_FIRST, DAY_FIRST)) {
      Matcher parts = written.matcher(given);
      if (parts.matches()) {
        boolean isYearFirst = written == ISO;
        boolean isDayFirst = written == DAY_FIRST;
        String year = parts.group(isYearFirst ? 1 : 3);
        OptionalInt month = month(parts.group(isYearFirst || isDayFirst ? 2 : 1));
        String day = parts.group(isYearFirst ? 3 : isDayFirst ? 1 : 2);
        return date(given, Integer.parseInt(year), month, Integer.parseInt(day));
      }
    }
    throw refused(given);
  }

  /** What was understood of a date whose day could be its month; nothing of any other. */
  static Optional<String> doubt(String text) {
    String given = text.strip();
    Matcher parts = SLASHES.matcher(given);
    boolean couldBeBoth =
        parts.matches()
            && Integer.parseInt(parts.group(2)) <= MONTHS
            && Integer.parseInt(parts.group(1)) != Integer.parseInt(parts.group(2));
    return couldBeBoth
        ? Optional.of(
            "%s is read as %s, the month first; write %s to be sure"
                .formatted(given, inWords(read(given)), read(given)))
        : Optional.empty();
  }

  /** What to write for a date whose day could be its month; nothing for any other. */
  static Optional<String> eitherWay(String text) {
    return doubt(text).map(doubt -> meant(text.strip()));
  }

  /** What to write for a date in numbers that is not read: the month first, and the day first. */
  private static String meant(String given) {
    Matcher parts = NUMBERS.matcher(given);
    if (!parts.matches()) {
      return "write year-month-day, such as 2027-05-04, or May 4, 2027, or month/day/year";
    }
    int one = Integer.parseInt(parts.group(1));
    int other = Integer.parseInt(parts.group(2));
    String year = parts.group(3).length() == 2 ? "20" + parts.group(3) : parts.group(3);
    List<String> dates =
        Stream.of(iso(year, one, other), iso(year, other, one))
            .flatMap(Optional::stream)
            .distinct()
            .toList();
    return dates.isEmpty()
        ? "write year-month-day, such as 2027-05-04"
        : "write " + String.join(" or ", dates);
  }

  private static Optional<String> iso(String year, int month, int day) {
    try {
      return Optional.of(LocalDate.of(Integer.parseInt(year), month, day).toString());
    } catch (DateTimeException notInTheCalendar) {
      return Optional.empty();
    }
  }

  private static LocalDate date(String given, int year, OptionalInt month, int day) {
    try {
      if (year >= FIRST_YEAR && year < LAST_YEAR) {
        return LocalDate.of(year, month.orElse(0), day);
      }
      throw refused(given);
    } catch (DateTimeException notInTheCalendar) {
      throw refused(given);
    }
  }

  private static OptionalInt month(String text) {
    if (Character.isDigit(text.charAt(0))) {
      return OptionalInt.of(Integer.parseInt(text));
    }
    String wanted = text.toUpperCase(Locale.ROOT);
    return Arrays.stream(Month.values())
        .filter(month -> wanted.length() >= ABBREVIATED && month.name().startsWith(wanted))
        .mapToInt(Month::getValue)
        .findFirst();
  }

  private static RefusedException refused(String given) {
    return new RefusedException(
        "\"%s\" is not a date of this century; %s".formatted(given, meant(given)));
  }
}
