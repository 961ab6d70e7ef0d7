package sheathwright.job;

import java.util.Locale;

/** The tables that a job's folder may hold, in the order in which they are read. */
public enum JobTable {
  JOB(true, "the job's facts: who, where, when, and what is repaired"),
  PLANES(true, "roof planes, measured on the slope"),
  OPENINGS(false, "chimneys, skylights and other holes in a plane"),
  RAFTERS(false, "measured rafter centers"),
  MARKS(false, "bad wood: what was found where"),
  READINGS(false, "drops of rafters below a string line"),
  REPORTS(false, "what was seen of the framing"),
  LAYERS(false, "what the roof is built of, for its weight"),
  MAKER(false, "what the covering's maker asks for, and what is there"),
  PRICES(true, "what material costs"),
  RATES(true, "wages, hours, overhead, margin, tax, waste and overage");

  /** How the name of every table's file ends. */
  static final String ENDING = ".csv";

  private final boolean isNeeded;
  private final String meaning;

  JobTable(boolean isNeeded, String meaning) {
    this.isNeeded = isNeeded;
    this.meaning = meaning;
  }

  /** Its name in messages. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The name of its file. */
  public String file() {
    return word() + ENDING;
  }

  /** What it is for, in a few words. */
  public String meaning() {
    return meaning;
  }

  /** Whether no job can do without it. */
  public boolean isNeeded() {
    return isNeeded;
  }
}
