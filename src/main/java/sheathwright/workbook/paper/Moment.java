package sheathwright.workbook.paper;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Time;

/**
 * When a document is written.
 *
 * @param day its day
 * @param time its day and time, if somebody said the time
 */
record Moment(LocalDate day, Optional<LocalDateTime> time) {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMMM d, yyyy", Locale.US);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("h:mm a 'on' MMMM d, yyyy", Locale.US);
  private static final double SECONDS_AN_HOUR = 3600;

  /** A day as tables write it, {@code 2027-05-18}, or with its time, {@code 2027-05-18T14:30}. */
  static Moment of(String text) {
    String iso = text.strip().replace(' ', 'T');
    if (iso.indexOf('T') < 0) {
      return new Moment(LocalDate.parse(iso), Optional.empty());
    }
    LocalDateTime time = LocalDateTime.parse(iso);
    return new Moment(time.toLocalDate(), Optional.of(time));
  }

  /** A day of a table as it is read aloud; nothing where none stands. */
  static String spoken(String iso) {
    return iso.isEmpty() ? "" : of(iso).inWords();
  }

  String inWords() {
    return DAY.format(day);
  }

  /** So many hours later; without a time, counted from when it is received. */
  String after(Figure<Time> hours) {
    return time.map(start -> "by " + TIME.format(start.plus(lasting(hours))))
        .orElseGet(
            () ->
                "within %s %s of receipt"
                    .formatted(hours.plain(), hours.value() == 1 ? "hour" : "hours"));
  }

  private static Duration lasting(Figure<Time> hours) {
    return Duration.ofSeconds(Math.round(hours.value() * SECONDS_AN_HOUR));
  }
}
