package sheathwright.sheathing.layout;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How sheet ends meet on a rafter.
 *
 * @param gap between the two sheets
 * @param rafterWidth across the top of the rafter
 * @param minBearing least bearing of each sheet
 */
public record JointRules(
    @Column(value = "gap_in", preset = "1/8", least = 0, most = 2, rule = "1/8 is usual")
        Figure<Length> gap,
    @Column(
            value = "rafter_width_in",
            preset = "1.5",
            least = 1,
            most = 12,
            rule = "2x stock has 1.5")
        Figure<Length> rafterWidth,
    @Column(value = "min_bearing_in", preset = "1/2", least = 0, most = 3, rule = "1/2 is usual")
        Figure<Length> minBearing) {

  private static final Columns COLUMNS = Columns.of(JointRules.class);

  /** A gap of 1/8 in on 2x stock. */
  public static final JointRules USUAL_JOINT = new JointRules(null, null, null);

  public JointRules {
    gap = COLUMNS.let("gap", gap);
    rafterWidth = COLUMNS.let("rafterWidth", rafterWidth);
    minBearing = COLUMNS.let("minBearing", minBearing);
  }

  /** A gap on 2x stock, with the usual bearing unless another is said. */
  public static JointRules gap(Figure<Length> given) {
    return new JointRules(given, null, null);
  }

  public JointRules rafterWidth(Figure<Length> given) {
    return new JointRules(gap, given, minBearing);
  }

  public JointRules minBearing(Figure<Length> given) {
    return new JointRules(gap, rafterWidth, given);
  }
}
