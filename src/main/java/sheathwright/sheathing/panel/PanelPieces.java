package sheathwright.sheathing.panel;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/** Pieces cut from panels: patches and strips. */
public final class PanelPieces {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);
  private static final String WEAK_WAY =
      "a panel with its strength axis along the supports is much weaker and the span table does not"
          + " hold for it; stop and ask, IBC 2021 Table 2304.8(5) has loads of its own for blocked"
          + " edges";

  private PanelPieces() {}

  /**
   * Whether a piece cut from a panel may lie over these supports: long enough for two spans, wide
   * enough for the span table, and the strong way round.
   *
   * <pre>
   * spans = ⌊(length + rafter width − 2 × bearing) ÷ support spacing⌋, at least 2
   * width ≥ 24 in, or all edges supported
   * </pre>
   *
   * <p>Does not cover how much the piece carries (see {@code panel_span}), joints that miss the
   * rafter (see {@code joint_bearing}), nails, or a panel turned the weak way, which is refused.
   *
   * <p>Both ends of the piece stand on supports. FEMA advises at least 48 in of length in windy
   * places. A strip under 24 in wide takes clips: one in a bay up to 16 in, two in a wider one, as
   * panel certification advice says; a sheet ripped in two leaves less than 24 in by half the saw
   * kerf.
   *
   * <pre>{@code
   * pieceFit(in("47-7/8"), in(24), in(24), ACROSS, NO, in(0), in(24), in(1.5), in(0.5)).ok() // yes
   * pieceFit(in(32), in(48), in(24), ACROSS, NO, in(0), in(24), in(1.5), in(0.5)).spans() // 1
   * pieceFit(in(96), in("9-1/4"), in(24), ACROSS, NO, in(0), in(24), in(1.5), in(0.5)).ok() // no
   * }</pre>
   *
   * @param pieceLength along the strength axis, 1 in to 192 in
   * @param pieceWidth across the strength axis, 1 in to 96 in
   * @param supportSpacing center to center of the rafters or trusses, 6 in to 96 in
   * @param strengthAxis how the strength axis lies on the supports
   * @param edgesSupported whether both long edges lie on blocking or are clipped to a neighbor
   * @param minLength least length asked for, 0 in to 192 in; 48 in windy places
   * @param minWidth least width without supported edges, 0 in to 48 in
   * @param rafterWidth across the top of the rafter, 1 in to 5 in
   * @param minBearing least bearing of each end, 0 in to 2.5 in
   * @return whole spans, and yes or no for width, spans, length and all together
   * @throws RefusedException if a number lies outside its range, or the strength axis lies along
   *     the supports
   * @see "IRC 2021 Table R503.2.1.1(1) footnotes for 24 in and two spans, read on state code pages;
   *     narrow strips with all edges supported from memory"
   */
  @LibraryFunction
  public static PieceFit pieceFit(
      @Column("piece_length_in") Figure<Length> pieceLength,
      @Column("piece_width_in") Figure<Length> pieceWidth,
      @Column("support_spacing_in") Figure<Length> supportSpacing,
      @Column(value = "strength_axis", preset = "across") OneOf<StrengthAxis> strengthAxis,
      @Column(value = "edges_supported", preset = "no") OneOf<YesNo> edgesSupported,
      @Column(value = "min_length_in", preset = "0") Figure<Length> minLength,
      @Column(value = "min_width_in", preset = "24") Figure<Length> minWidth,
      @Column(value = "rafter_width_in", preset = "1.5") Figure<Length> rafterWidth,
      @Column(value = "min_bearing_in", preset = "1/2") Figure<Length> minBearing) {
    Choice<StrengthAxis> axis = strengthAxis.choice().argument("strength_axis");
    var piece =
        pieceLength.within(
            "piece_length_in", Units.INCH, Limits.between(1, 192, "a whole sheet has 96"));
    var wide =
        pieceWidth.within(
            "piece_width_in", Units.INCH, Limits.between(1, 96, "a whole sheet has 48"));
    var spacing =
        supportSpacing.within(
            "support_spacing_in", Units.INCH, Limits.between(6, 96, "16, 19.2 and 24 are usual"));
    var leastLength =
        minLength.within(
            "min_length_in", Units.INCH, Limits.between(0, 192, "48 is advice for windy places"));
    var leastWidth =
        minWidth.within(
            "min_width_in", Units.INCH, Limits.between(0, 48, "24 is what the table wants"));
    var rafter =
        rafterWidth.within("rafter_width_in", Units.INCH, Limits.between(1, 5, "2x stock has 1.5"));
    var bearing =
        minBearing.within("min_bearing_in", Units.INCH, Limits.between(0, 2.5, "1/2 is usual"));

    Condition isStrongWay = axis.is(StrengthAxis.ACROSS);
    var length = piece.onlyIf(isStrongWay, WEAK_WAY).as("length_laid_in", Units.INCH);
    var width = wide.onlyIf(isStrongWay, WEAK_WAY).as("width_laid_in", Units.INCH);
    var spans =
        length
            .plus(rafter)
            .minus(TWO.times(bearing))
            .max(NOTHING)
            .dividedBy(spacing)
            .in(Units.RATIO)
            .roundedDown()
            .as("spans", Units.RATIO, RatedPanel.SOURCE);
    Condition isWide = width.isAtLeast(leastWidth);
    Condition hasTwoSpans = spans.isAtLeast(TWO);
    Condition isLong = length.isAtLeast(leastLength);
    Condition isHeld = edgesSupported.choice().argument("edges_supported").is(YesNo.YES);
    return new PieceFit(
        spans,
        isWide.as("wide_enough"),
        hasTwoSpans.as("two_spans"),
        isLong.as("long_enough"),
        Condition.all(hasTwoSpans, isLong, Condition.any(isWide, isHeld)).as("ok"));
  }
}
