package sheathwright.leveling.target;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;

/**
 * How far a rafter may lie off the target before something is done to it.
 *
 * @param leave the most deviation left alone, low or high
 * @param shim the most that a shim strip makes up
 */
public record LevelThresholds(
    @Column(value = "leave_in", preset = "1/8", least = 0, most = 1, rule = "1/8 is usual")
        Figure<Length> leave,
    @Column(
            value = "shim_in",
            preset = "3/8",
            least = 0,
            most = 1,
            rule = "3/8 is usual; more than about 1/2 is an engineer's call")
        Figure<Length> shim) {

  private static final Columns COLUMNS = Columns.of(LevelThresholds.class);

  public LevelThresholds {
    leave = COLUMNS.let("leave", leave);
    shim = COLUMNS.let("shim", shim);
  }

  /** The trade's usual 1/8 in and 3/8 in. */
  public static LevelThresholds usual() {
    return new LevelThresholds(null, null);
  }

  public LevelThresholds leave(Figure<Length> most) {
    return new LevelThresholds(most, shim);
  }

  public LevelThresholds shim(Figure<Length> most) {
    return new LevelThresholds(leave, most);
  }

  /** The numbers that either may have, for a workbook in which they are changed. */
  public static Limits limits(String threshold) {
    return COLUMNS.limits(threshold);
  }
}
