package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * How far apart nails may stand in one place, by the load and by the code.
 *
 * @param load that the load allows
 * @param code that the code's schedule allows in this place at most
 */
public record AllowedSpacing(
    @Column(
            value = "spacing_in",
            least = 0.1,
            most = 1000,
            rule = "as nail_spacing_for_uplift gives")
        Figure<Length> load,
    @Column(
            value = "most_in",
            preset = "12",
            least = 3,
            most = 24,
            rule = "6 on edges and 12 between are usual")
        Figure<Length> code) {

  private static final Columns COLUMNS = Columns.of(AllowedSpacing.class);

  public AllowedSpacing {
    load = COLUMNS.let("load", load);
    code = COLUMNS.let("code", code);
  }

  /** What the load allows; 12 in by the code unless it is said. */
  public static AllowedSpacing load(Figure<Length> nailToNail) {
    return new AllowedSpacing(nailToNail, null);
  }

  public AllowedSpacing code(Figure<Length> most) {
    return new AllowedSpacing(load, most);
  }
}
