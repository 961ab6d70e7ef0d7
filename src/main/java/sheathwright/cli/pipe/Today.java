package sheathwright.cli.pipe;

import java.time.LocalDate;

/**
 * The day on which a command is run. Nothing that is written depends on it; only what is said to
 * whoever sits there does.
 */
public final class Today {

  /** Says another day, so that a test of today is one of tomorrow. */
  private static final String PROPERTY = "sheathwright.today";

  private Today() {}

  /** That day. */
  public static LocalDate day() {
    String said = System.getProperty(PROPERTY, "");
    return said.isEmpty() ? LocalDate.now() : LocalDate.parse(said);
  }
}
