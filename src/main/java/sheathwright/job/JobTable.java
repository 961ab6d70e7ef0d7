package sheathwright.job;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.table.Keys;

/** The tables that a job's folder may hold, in the order in which they are read. */
public enum JobTable {
  JOB(true, "the job's facts: who, where, when, and what is repaired", new Keys("key", "value")),
  FIRST_CALL(false, "what was asked before anybody went there, and the answers"),
  PLANES(true, "roof planes, measured on the slope"),
  OPENINGS(false, "chimneys, skylights and other holes in a plane"),
  RAFTERS(false, "measured rafter centers"),
  JOINTS(false, "end joints of the old deck, where they were measured"),
  MARKS(false, "bad wood: what was found where"),
  ZONES(false, "what could be seen of the deck, and what not"),
  PLACES(false, "the places as a document first named them: written then, never edited"),
  RULES(false, "what is done about a mark, where the firm has limits or actions of its own"),
  READINGS(false, "drops of rafters below a string line"),
  REPORTS(false, "what was seen of the framing"),
  LAYERS(false, "what the roof is built of, for its weight"),
  MAKER(false, "what the covering's maker asks for, and what is there"),
  PULL_TESTS(false, "what screws held that were pulled out of the deck to see"),
  PHOTOS(false, "pictures of marks, reports and places"),
  AGREED(false, "what was agreed: written when the owner agrees, never edited"),
  TALKS(false, "what both sides agreed since: a limit raised, a price for what had none"),
  STAGES(false, "what is paid when"),
  OPTIONS(false, "what the owner decides"),
  ORDERS(false, "change orders, and what became of each"),
  ORDER_LINES(false, "their lines: written with them, never edited"),
  INSPECTIONS(false, "what was looked at while the deck was open, and what it came to"),
  LOG(false, "what the crew did, by day and task"),
  SENT(false, "what left the house: written with each issued document"),
  PRICES(true, "what material costs", new Keys("item", "usd")),
  LUMBER(false, "sticks on sale, by size and length"),
  RATES(true, "wages, hours, overhead, margin, tax, waste and overage", new Keys("rate", "value")),
  FIRM(
      false,
      "the firm: its letterhead, its words, the number of its next quote",
      new Keys("key", "value"));

  /** How the name of every table's file ends. */
  public static final String ENDING = ".csv";

  /** What an office keeps once for all its jobs. */
  private static final Set<JobTable> OF_THE_OFFICE = EnumSet.of(RULES, PRICES, LUMBER, RATES, FIRM);

  private final boolean isNeeded;
  private final String meaning;
  private final Optional<Keys> keys;

  JobTable(boolean isNeeded, String meaning) {
    this.isNeeded = isNeeded;
    this.meaning = meaning;
    this.keys = Optional.empty();
  }

  JobTable(boolean isNeeded, String meaning, Keys keys) {
    this.isNeeded = isNeeded;
    this.meaning = meaning;
    this.keys = Optional.of(keys);
  }

  /** The table of a name. */
  static JobTable named(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
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

  /** Its two headings, where the one column names what stands in the other. */
  public Optional<Keys> keys() {
    return keys;
  }

  /** Whether an office may keep it once for all its jobs, in a folder above them. */
  public boolean isOfTheOffice() {
    return OF_THE_OFFICE.contains(this);
  }

  /** Whether no job can do without it. */
  public boolean isNeeded() {
    return isNeeded;
  }
}
