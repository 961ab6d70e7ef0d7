package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Units;

/**
 * How rafters stand while their deck is off.
 *
 * @param braceSpacing between the battens or braces that hold the upper edge; 0 if nothing does
 * @param live even construction load, checked by itself, with nobody besides
 * @param person who may stand anywhere on one rafter
 * @param stack of sheets and shingles on the open rafters while the person stands there
 * @param hung from the rafters, which stays when the deck is off, such as a ceiling; the whole dead
 *     load where nobody knows
 */
public record DeckOff(
    @Column(
            value = "brace_spacing_in",
            preset = "0",
            least = 0,
            most = 600,
            rule = "0 if nothing braces the rafters between plate and ridge")
        Figure<Length> braceSpacing,
    @Column(
            value = "deck_off_live_psf",
            preset = "20",
            least = 1,
            most = 100,
            rule = "20 is the code's roof live load")
        Figure<Pressure> live,
    @Column(
            value = "person_lb",
            preset = "250",
            least = 250,
            most = 1000,
            rule = "one person with tools counts as at least 250")
        Figure<Force> person,
    @Column(
            value = "stack_psf",
            preset = "0",
            least = 0,
            most = 100,
            rule = "0 if nothing is stacked on open rafters")
        Figure<Pressure> stack,
    @Column(
            value = "hung_psf",
            preset = "100",
            least = 0,
            most = 100,
            rule =
                "0 if neither a ceiling nor insulation hangs from the rafters; never more than the whole dead load counts")
        Figure<Pressure> hung) {

  private static final Columns COLUMNS = Columns.of(DeckOff.class);

  public DeckOff {
    braceSpacing = COLUMNS.let("braceSpacing", braceSpacing);
    live = COLUMNS.let("live", live);
    person = COLUMNS.let("person", person);
    stack = COLUMNS.let("stack", stack);
    hung = COLUMNS.let("hung", hung);
  }

  /** Held so often, under the roof live load of the code or one person, and nothing stacked. */
  public static DeckOff braceSpacing(Figure<Length> apart) {
    return new DeckOff(apart, null, null, null, null);
  }

  public DeckOff live(Figure<Pressure> load) {
    return new DeckOff(braceSpacing, load, person, stack, hung);
  }

  public DeckOff person(Figure<Force> weight) {
    return new DeckOff(braceSpacing, live, weight, stack, hung);
  }

  public DeckOff stack(Figure<Pressure> load) {
    return new DeckOff(braceSpacing, live, person, load, hung);
  }

  public DeckOff hung(Figure<Pressure> load) {
    return new DeckOff(braceSpacing, live, person, stack, load);
  }

  /** The same, with no more hung from the rafters than lies on them for good. */
  DeckOff hungIn(Figure<Pressure> dead) {
    return hung(hung.min(dead).as("hung_taken_psf", Units.PSF));
  }
}
