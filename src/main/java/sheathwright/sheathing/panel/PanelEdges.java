package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What holds the long edges of panels up between the rafters. */
public final class PanelEdges {

  private static final Figure<Pieces> ONE_CLIP = Figure.of(1, Units.PIECE);
  private static final Figure<Pieces> TWO_CLIPS = Figure.of(2, Units.PIECE);
  private static final Figure<Length> WIDE_BAY =
      Figure.constant("two_clips_from_in", 48, Units.INCH, RatedPanel.SOURCE).symbol("48 in");
  private static final String TOO_FAR =
      "the supports stand further apart than this panel spans even with its edges supported; clips"
          + " do not help, ask panel_span how far it may";

  private PanelEdges() {}

  /**
   * How many clips the long edges of panels take between the rafters, whether the span table wants
   * them, and how much lumber blocking would do instead.
   *
   * <pre>
   * bays     = ⌈edge ÷ support spacing⌉
   * clips    = bays × 1, or × 2 where the supports stand 48 in apart or more
   * needed   : support spacing > span printed without edge support
   * blocking = bays × (support spacing − rafter width)
   * </pre>
   *
   * <p>Does not cover tongue-and-groove panels, which need neither, strips under 24 in wide (see
   * {@code piece_fit}), blocking that a braced or high-wind roof asks for (clips are none), or
   * waste and boxes.
   *
   * <p>Clips are counted whether needed or not: where the table does not require them, they are
   * still often asked for; check local. The eave and the ridge edge take none. A clip fits one
   * thickness of panel.
   *
   * <pre>{@code
   * edgeClips(RATING_24_16, in("7/16"), in(24), ft(444), in(1.5)).clips() // 222 pieces
   * edgeClips(RATING_24_16, in("7/16"), in(24), ft(444), in(1.5)).needed() // no
   * edgeClips(RATING_24_0, in("3/8"), in(24), ft(42), in(1.5)).needed() // yes
   * }</pre>
   *
   * @param spanRating as stamped
   * @param thickness performance category as stamped, 0.25 in to 1.25 in; must be within 1/128 in
   *     of one printed for the rating
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param edge all long edges between courses, one after the other, 0 ft to 50000 ft
   * @param rafterWidth across the top of the rafter, 1 in to 5 in
   * @return clips in one bay, whether the table needs them, clips for all, and feet of blocking
   * @throws RefusedException if a number lies outside its range, the thickness is not printed for
   *     the rating, or the panel does not reach even with its edges supported
   * @see "IRC 2021 Table R503.2.1.1(1) and its footnotes, read on state code pages"
   */
  @LibraryFunction
  public static EdgeClips edgeClips(
      @Column("span_rating") OneOf<SpanRating> spanRating,
      @Column("thickness_in") Figure<Length> thickness,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      @Column("edge_ft") Figure<Length> edge,
      @Column(value = "rafter_width_in", preset = "1.5") Figure<Length> rafterWidth) {
    var panel = new RatedPanel(spanRating, thickness);
    var given =
        supportSpacing.within(
            "support_spacing_in", Units.INCH, Limits.between(6, 96, "16, 19.2 and 24 are usual"));
    var along =
        edge.within(
            "edge_ft", Units.FOOT, Limits.between(0, 50_000, "courses less one, times the eave"));
    var width =
        rafterWidth.within("rafter_width_in", Units.INCH, Limits.between(1, 5, "2x stock has 1.5"));

    var supported = panel.onlyIfPrinted(panel.supportedSpan()).as("supported_span_in", Units.INCH);
    var spacing = given.onlyIf(given.isAtMost(supported), TOO_FAR).as("bay_in", Units.INCH);
    var bays = along.dividedBy(spacing).in(Units.RATIO).roundedUp().as("bays", Units.RATIO);
    var perBay =
        Figure.choose(spacing.isAtLeast(WIDE_BAY), TWO_CLIPS, ONE_CLIP)
            .as("clips_per_bay", Units.PIECE, RatedPanel.SOURCE);
    var unsupported = panel.unsupportedSpan().as("unsupported_span_in", Units.INCH);
    return new EdgeClips(
        perBay,
        spacing.isMoreThan(unsupported).as("needed"),
        bays.times(perBay).as("clips", Units.PIECE, Source.COMMON_PRACTICE),
        bays.times(spacing.minus(width)).as("blocking_ft", Units.FOOT, Source.COMMON_PRACTICE));
  }
}
