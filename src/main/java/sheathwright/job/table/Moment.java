package sheathwright.job.table;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;

/**
 * When something of a job's life happens: a day, as any date is written, and the time of that day,
 * if somebody says it: {@code 2027-05-03}, {@code 2027-05-03T14:30}, {@code May 3, 2027 2:30 pm}.
 *
 * @param day its day
 * @param time its time of that day; nothing where nobody says
 */
public record Moment(LocalDate day, Optional<LocalTime> time) {

  private static final Pattern WITH_TIME =
      Pattern.compile(
          "(.*?\\d)(?:T|\\s+(?:at\\s+)?)(\\d{1,2}):(\\d{2})(?::00)?\\s*(?:([ap])\\.?m\\.?)?",
          Pattern.CASE_INSENSITIVE);

  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
  private static final double SECONDS_AN_HOUR = 3600;
  private static final int HALF_A_DAY = 12;

  /** What may be written, in words. */
  static final String ALLOWED =
      "a date, such as 2026-05-03, or a date and a time, such as 2026-05-03T14:30";

  /**
   * The moment that a text stands for.
   *
   * @throws RefusedException if its day is no date, or its time none of a day
   */
  public static Moment read(String text) {
    String given = text.strip();
    Matcher parts = WITH_TIME.matcher(given);
    return parts.matches()
        ? new Moment(Dates.read(parts.group(1)), Optional.of(time(given, parts)))
        : new Moment(Dates.read(given), Optional.empty());
  }

  /** What was understood of a day that could be its month; nothing of any other. */
  public static Optional<String> doubt(String text) {
    return Dates.doubt(dayOf(text));
  }

  /** What to write for a day that could be its month: the month first, or the day first. */
  public static Optional<String> eitherWay(String text) {
    return Dates.eitherWay(dayOf(text));
  }

  private static String dayOf(String text) {
    Matcher parts = WITH_TIME.matcher(text.strip());
    return parts.matches() ? parts.group(1) : text.strip();
  }

  private static LocalTime time(String given, Matcher parts) {
    int hour = Integer.parseInt(parts.group(2));
    boolean isHalved = parts.group(4) != null;
    if (isHalved && (hour < 1 || hour > HALF_A_DAY)) {
      throw refused(given);
    }
    boolean isAfternoon = isHalved && parts.group(4).equalsIgnoreCase("p");
    try {
      return LocalTime.of(
          isHalved ? hour % HALF_A_DAY + (isAfternoon ? HALF_A_DAY : 0) : hour,
          Integer.parseInt(parts.group(3)));
    } catch (DateTimeException noTimeOfADay) {
      throw refused(given);
    }
  }

  private static RefusedException refused(String given) {
    return new RefusedException(
        "\"%s\" has a time that no day has; write hours and minutes, such as 2027-05-04T14:30 or May 4, 2027 2:30 pm"
            .formatted(given));
  }

  /** A moment of a table as it is read aloud; nothing where none stands. */
  public static String spoken(String written) {
    return written.isEmpty() ? "" : read(written).inWords();
  }

  /** Whether it is earlier than another; where one of them says no time, whether its day is. */
  public boolean isBefore(Moment other) {
    boolean areTimed = time.isPresent() && other.time.isPresent() && day.equals(other.day);
    return areTimed ? time.get().isBefore(other.time.get()) : day.isBefore(other.day);
  }

  /** As it stands in a letter: {@code May 4, 2027}, {@code May 4, 2027, 2:30 PM}. */
  public String inWords() {
    return Dates.inWords(day) + time.map(hour -> ", " + TIME.format(hour)).orElse("");
  }

  /** So many hours later; without a time, counted from when it is received. */
  public String after(Figure<Time> hours) {
    return time.map(start -> deadline(day.atTime(start).plus(lasting(hours))))
        .orElseGet(() -> "within %s of receipt".formatted(Shown.counted(hours.value(), "hour")));
  }

  private static String deadline(LocalDateTime end) {
    return "by %s on %s".formatted(TIME.format(end), Dates.inWords(end.toLocalDate()));
  }

  private static Duration lasting(Figure<Time> hours) {
    return Duration.ofSeconds(Math.round(hours.value() * SECONDS_AN_HOUR));
  }

  /** As tables hold it, {@code 2027-05-03} or {@code 2027-05-03T14:30}. */
  @Override
  public String toString() {
    return day + time.map(hour -> "T" + hour).orElse("");
  }
}
