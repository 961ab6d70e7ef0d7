package sheathwright.leveling.plan;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.wood.LumberSize;

/**
 * How sisters are cut and nailed that bring a sagged rafter to a string line.
 *
 * @param tolerance drop that may stay
 * @param lap how far a sister runs on beyond the drop, at each end
 * @param size nominal size of the sisters; its depth must be more than the sag, or a sister would
 *     not lie against the rafter
 * @param nailSpacing nail to nail in a row
 * @param nailRows rows of nails
 */
public record SisterPlan(
    @Column(
            value = "tolerance_in",
            least = 0,
            most = 2,
            rule = "3/8 is usual, 1/8 for flat metal pans")
        @Assumed("3/8")
        Figure<Length> tolerance,
    @Column(value = "lap_in", least = 0, most = 120, rule = "24 is usual") @Assumed("24")
        Figure<Length> lap,
    @Column(value = "sister_size", preset = "2x6") OneOf<LumberSize> size,
    @Column(value = "nail_spacing_in", preset = "12", least = 2, most = 48, rule = "12 is usual")
        Figure<Length> nailSpacing,
    @Column(
            value = "nail_rows",
            preset = "2",
            least = 1,
            most = 4,
            allowed = Limits.Kind.WHOLE_ONLY,
            rule = "2 is usual")
        Figure<Ratio> nailRows) {

  static final Columns COLUMNS = Columns.of(SisterPlan.class);

  public SisterPlan {
    tolerance = COLUMNS.let("tolerance", tolerance);
    lap = COLUMNS.let("lap", lap);
    size = COLUMNS.let("size", size);
    nailSpacing = COLUMNS.let("nailSpacing", nailSpacing);
    nailRows = COLUMNS.let("nailRows", nailRows);
  }

  /** Sisters of this size; what may stay and how far they run on is still to be said. */
  public static SisterPlan size(OneOf<LumberSize> nominal) {
    return new SisterPlan(null, null, nominal, null, null);
  }

  public SisterPlan tolerance(Figure<Length> mayStay) {
    return new SisterPlan(mayStay, lap, size, nailSpacing, nailRows);
  }

  public SisterPlan lap(Figure<Length> beyond) {
    return new SisterPlan(tolerance, beyond, size, nailSpacing, nailRows);
  }

  public SisterPlan nailSpacing(Figure<Length> inARow) {
    return new SisterPlan(tolerance, lap, size, inARow, nailRows);
  }

  public SisterPlan nailRows(Figure<Ratio> rows) {
    return new SisterPlan(tolerance, lap, size, nailSpacing, rows);
  }
}
