package sheathwright.fastening.uplift;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * Clips of a standing-seam panel as they are screwed to the deck.
 *
 * @param screw one screw pulled out of this deck, allowable for wind
 * @param screws in each clip
 * @param spacing from clip to clip
 */
public record ScrewedClips(
    @Column(
            value = "screw_lb",
            least = UpliftArguments.LEAST_STRENGTH_LB,
            most = UpliftArguments.MOST_STRENGTH_LB,
            rule = UpliftArguments.STRENGTH_RULE)
        Figure<Force> screw,
    @Column(
            value = "screws_per_clip",
            least = 1,
            most = 6,
            allowed = Limits.Kind.WHOLE_ONLY,
            rule = "2 are usual")
        Figure<Ratio> screws,
    @Column(value = "clip_spacing_in", least = 1, most = 72, rule = "16 and 24 are usual")
        Figure<Length> spacing) {

  private static final Columns COLUMNS = Columns.of(ScrewedClips.class);

  public ScrewedClips {
    screw = COLUMNS.let("screw", screw);
    screws = COLUMNS.let("screws", screws);
    spacing = COLUMNS.let("spacing", spacing);
  }

  /** Clips with so many screws of this strength each; their spacing is still to be said. */
  public static ScrewedClips of(Figure<Ratio> screws, Figure<Force> screw) {
    return new ScrewedClips(screw, screws, null);
  }

  public ScrewedClips spacing(Figure<Length> clipToClip) {
    return new ScrewedClips(screw, screws, clipToClip);
  }

  /** What all screws of a clip hold together. */
  Figure<Force> hold() {
    return hold(screw, screws);
  }

  /** What so many screws hold together, each of them this much. */
  static Figure<Force> hold(Figure<Force> screw, Figure<Ratio> screws) {
    return screw
        .times(COLUMNS.let("screws", screws))
        .as("screws_hold_lb", Units.POUND, Source.derived("screws that share the pull"));
  }
}
