package sheathwright.wood;

import sheathwright.figure.Option;

/**
 * How damp wood is when it is nailed and afterwards; 19 % is the border. A stick that bears a load
 * goes by afterwards alone, so that plain dry and wet say enough of it.
 */
public enum Moisture implements Option<Moisture> {
  STAYS_DRY("dry"),
  DRIES_LATER(""),
  GETS_WET_LATER(""),
  STAYS_WET("wet");

  private final String alsoWritten;

  Moisture(String alsoWritten) {
    this.alsoWritten = alsoWritten;
  }

  @Override
  public String alsoWritten() {
    return alsoWritten;
  }
}
