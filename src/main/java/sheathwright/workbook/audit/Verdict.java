package sheathwright.workbook.audit;

/** What is to be done about something that was found in a file. */
public enum Verdict {
  FOLLOW("follow", false),
  CHANGED_TERMS("changed terms: read aloud before signing", true),
  OVERWRITTEN("overwritten", true),
  STRUCTURE("structure", true),
  SOLVE_AGAIN("solve again", false),
  STALE("stale: not worked out since something was changed", false),
  UNTRUE("stale: neither what was written nor what the formula comes to", true),
  NOT_OPENED("not opened further", true),
  CANNOT_VOUCH("cannot vouch", false);

  private final String words;
  private final boolean stops;

  Verdict(String words, boolean stops) {
    this.words = words;
    this.stops = stops;
  }

  /** As it is said. */
  public String words() {
    return words;
  }

  /** Whether nobody goes on with the file before it is cleared up. */
  public boolean stops() {
    return stops;
  }
}
