package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What holds the long edges of panels up between the rafters. */
public final class PanelEdges {

  private static final Figure<Pieces> ONE_CLIP = Figure.of(1, Units.PIECE);
  private static final Figure<Pieces> TWO_CLIPS = Figure.of(2, Units.PIECE);
  private static final Figure<Length> WIDE_BAY =
      Figure.constant("two_clips_from_in", 48, Units.INCH, PrintedPanel.SOURCE).symbol("48 in");
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
   * edgeClips(RatedPanel.of(RATING_24_16, in("7/16")), RafterRow.spacing(in(24)), ft(444)).clips() // 222 pieces
   * edgeClips(RatedPanel.of(RATING_24_16, in("7/16")), RafterRow.spacing(in(24)), ft(444)).needed() // no
   * edgeClips(RatedPanel.of(RATING_24_0, in("3/8")), RafterRow.spacing(in(24)), ft(42)).needed() // yes
   * }</pre>
   *
   * @param stamped the panel
   * @param rafters that it lies on
   * @param edge all long edges between courses, one after the other, 0 ft to 50000 ft
   * @return clips in one bay, whether the table needs them, clips for all, feet of blocking, and
   *     the printed rating that this goes by
   * @throws RefusedException if a number lies outside its range, the panel is thinner than any that
   *     is printed for the rating and for the next lower one, or it does not reach even with its
   *     edges supported
   * @see "IRC 2021 Table R503.2.1.1(1) and its footnotes, read on state code pages"
   */
  @LibraryFunction(words = {"H clip", "panel clip"})
  public static EdgeClips edgeClips(
      RatedPanel stamped, RafterRow rafters, @Column("edge_ft") Figure<Length> edge) {
    var panel = new PrintedPanel(stamped);
    var along =
        edge.within(
            "edge_ft", Units.FOOT, Limits.between(0, 50_000, "courses less one, times the eave"));

    var supported = panel.supportedSpan().as("supported_span_in", Units.INCH);
    var spacing =
        rafters
            .spacing()
            .onlyIf(rafters.spacing().isAtMost(supported), TOO_FAR)
            .as("bay_in", Units.INCH);
    var bays = along.dividedBy(spacing).in(Units.RATIO).roundedUp().as("bays", Units.RATIO);
    var perBay =
        Figure.choose(spacing.isAtLeast(WIDE_BAY), TWO_CLIPS, ONE_CLIP)
            .as("clips_per_bay", Units.PIECE, PrintedPanel.SOURCE);
    var unsupported = panel.unsupportedSpan().as("unsupported_span_in", Units.INCH);
    return new EdgeClips(
        perBay,
        spacing.isMoreThan(unsupported).as("needed"),
        bays.times(perBay).as("clips", Units.PIECE, Source.COMMON_PRACTICE),
        bays.times(spacing.minus(rafters.width()))
            .as("blocking_ft", Units.FOOT, Source.COMMON_PRACTICE),
        panel.counted());
  }
}
