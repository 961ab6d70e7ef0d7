package sheathwright.sheathing.triage;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;

/**
 * How far a sheet may go before something is done about it.
 *
 * @param probe the deepest that an awl may go in
 * @param hole the widest that is covered with sheet metal
 * @param bearing the least of an end on its rafter
 * @param jointGap the least between two sheets where they hump
 * @param hump the most that a closed joint may stand up
 * @param moisture the most under a covering
 */
public record TriageLimits(
    @Column(value = "probe_limit_in", preset = "1/4", least = 0, most = 3, rule = "1/4 is usual")
        Figure<Length> probe,
    @Column(value = "hole_limit_in", preset = "1", least = 0, most = 96, rule = "1 is usual")
        Figure<Length> hole,
    @Column(
            value = "bearing_limit_in",
            preset = "1/2",
            least = 0,
            most = 3,
            rule = "1/2 is what a joint needs")
        Figure<Length> bearing,
    @Column(
            value = "joint_limit_in",
            preset = "1/16",
            least = 0,
            most = 3,
            rule = "1/16 is a closed joint")
        Figure<Length> jointGap,
    @Column(value = "hump_limit_in", preset = "1/8", least = 0, most = 3, rule = "1/8 is usual")
        Figure<Length> hump,
    @Column(
            value = "moisture_limit_pct",
            preset = "19",
            least = 0,
            most = 100,
            rule = "19 is the line of dry lumber")
        Figure<Ratio> moisture) {

  private static final Columns COLUMNS = Columns.of(TriageLimits.class);

  /** As they are usual. */
  public static final TriageLimits USUAL = new TriageLimits(null, null, null, null, null, null);

  public TriageLimits {
    probe = COLUMNS.let("probe", probe);
    hole = COLUMNS.let("hole", hole);
    bearing = COLUMNS.let("bearing", bearing);
    jointGap = COLUMNS.let("jointGap", jointGap);
    hump = COLUMNS.let("hump", hump);
    moisture = COLUMNS.let("moisture", moisture);
  }
}
