package sheathwright.job.life;

import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Shown;
import sheathwright.figure.Units;

/** What the owner is billed for by the piece: what is found, put right, and counted. */
public enum Item implements Option<Item> {
  SHEET("sheet", "Deck sheet taken out and replaced"),
  REFASTEN("place", "A sheet refastened"),
  RELIEF("ft", "A tight joint sawn open"),
  BLOCK("ft", "A bare edge blocked"),
  SCAB("piece", "A scab of 48 in under an end"),
  CLIP("piece", "A panel clip"),
  LIFT("place", "A sheet lifted and laid again"),
  COVER("piece", "A hole covered with sheet metal"),
  BOARD("ft", "Deck board taken out and replaced"),
  RENAIL("ft", "Deck board nailed again"),
  SISTER("rafter", "A rafter straightened with new wood beside it"),
  SHIM("rafter", "A rafter straightened with thin strips on top");

  private final String unit;
  private final String label;

  Item(String unit, String label) {
    this.unit = unit;
    this.label = label;
  }

  /** What it is counted in. */
  public String unit() {
    return unit;
  }

  /** So much of it: {@code 1 place}, {@code 1.5 sheets}, {@code 24 ft}. */
  public String counted(Figure<?> quantity) {
    boolean isMeasured = unit.equals(Units.FOOT.symbol());
    return isMeasured ? quantity.plain() + " " + unit : Shown.counted(quantity.value(), unit);
  }

  /** What it is, as a line of a bill. */
  public String label() {
    return label;
  }
}
