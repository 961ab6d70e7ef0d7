package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.roof.SupportSpacing;

/**
 * A deck as it is nailed to the rafters.
 *
 * @param nail one nail, the lesser of withdrawal and pull-through, allowable for wind
 * @param spacing from nail to nail on a rafter
 * @param supports center to center of the rafters or trusses
 */
public record NailedDeck(
    @Column(
            value = "nail_lb",
            least = UpliftArguments.LEAST_STRENGTH_LB,
            most = UpliftArguments.MOST_STRENGTH_LB,
            rule = UpliftArguments.STRENGTH_RULE)
        Figure<Force> nail,
    @Column(value = "nail_spacing_in", least = 1, most = 24, rule = "6 and 12 are usual")
        Figure<Length> spacing,
    @Column(
            value = "support_spacing_in",
            least = SupportSpacing.LEAST_IN,
            most = SupportSpacing.MOST_IN,
            rule = SupportSpacing.RULE)
        Figure<Length> supports) {

  private static final Columns COLUMNS = Columns.of(NailedDeck.class);

  public NailedDeck {
    nail = COLUMNS.let("nail", nail);
    spacing = COLUMNS.let("spacing", spacing);
    supports = COLUMNS.let("supports", supports);
  }

  /** A deck on nails that hold this much each; how they stand is still to be said. */
  public static NailedDeck nail(Figure<Force> strength) {
    return new NailedDeck(strength, null, null);
  }

  public NailedDeck spacing(Figure<Length> nailToNail) {
    return new NailedDeck(nail, nailToNail, supports);
  }

  public NailedDeck supports(Figure<Length> centers) {
    return new NailedDeck(nail, spacing, centers);
  }

  /** The part of the deck that one nail holds. */
  Figure<Area> areaOfANail() {
    return spacing.times(supports).as("area_of_a_nail_sf", Units.SQUARE_FOOT);
  }
}
