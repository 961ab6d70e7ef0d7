package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;

/**
 * How rafters stand while their deck is off.
 *
 * @param braceSpacing between the battens or braces that hold the upper edge; 0 if nothing does
 * @param live what people and materials weigh meanwhile
 */
public record DeckOff(
    @Column(
            value = "brace_spacing_in",
            preset = "0",
            least = 0,
            most = 600,
            rule = "0 if nothing holds the rafters between plate and ridge")
        Figure<Length> braceSpacing,
    @Column(
            value = "deck_off_live_psf",
            preset = "20",
            least = 1,
            most = 100,
            rule = "20 is the code's roof live")
        Figure<Pressure> live) {

  private static final Columns COLUMNS = Columns.of(DeckOff.class);

  public DeckOff {
    braceSpacing = COLUMNS.let("braceSpacing", braceSpacing);
    live = COLUMNS.let("live", live);
  }

  /** Held so often, under the roof live load of the code. */
  public static DeckOff braceSpacing(Figure<Length> apart) {
    return new DeckOff(apart, null);
  }

  public DeckOff live(Figure<Pressure> load) {
    return new DeckOff(braceSpacing, load);
  }
}
