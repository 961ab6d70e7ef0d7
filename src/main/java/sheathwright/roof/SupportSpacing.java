package sheathwright.roof;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;

/** How far apart the rafters or trusses under a deck may stand, center to center. */
public final class SupportSpacing {

  public static final double LEAST_IN = 6;
  public static final double MOST_IN = 96;
  public static final String RULE = "16, 19.2 and 24 are usual";

  private SupportSpacing() {}

  /** The spacing where a function is told it by itself. */
  public static Figure<Length> within(Figure<Length> spacing) {
    return spacing.within(
        "support_spacing_in", Units.INCH, Limits.between(LEAST_IN, MOST_IN, RULE));
  }
}
