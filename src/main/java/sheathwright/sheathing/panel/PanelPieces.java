package sheathwright.sheathing.panel;

import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
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
   * pieceFit(CutPanel.length(in("47-7/8")).width(in(24)), RafterRow.spacing(in(24)), BY_THE_SPAN_TABLE).ok() // yes
   * pieceFit(CutPanel.length(in(32)).width(in(48)), RafterRow.spacing(in(24)), BY_THE_SPAN_TABLE).spans() // 1
   * pieceFit(CutPanel.length(in(96)).width(in("9-1/4")), RafterRow.spacing(in(24)), BY_THE_SPAN_TABLE).ok() // no
   * }</pre>
   *
   * @param piece as it is to lie
   * @param rafters that it lies on
   * @param rules what is asked of it
   * @return whole spans, and yes or no for width, spans, length and all together
   * @throws RefusedException if a number lies outside its range, or the strength axis lies along
   *     the supports
   * @see "IRC 2021 Table R503.2.1.1(1) footnotes for 24 in and two spans, read on state code pages;
   *     narrow strips with all edges supported from memory"
   */
  @LibraryFunction(words = {"patch", "short piece", "two spans"})
  public static PieceFit pieceFit(CutPanel piece, RafterRow rafters, PieceRules rules) {
    Condition isStrongWay = piece.axis().choice().is(StrengthAxis.ACROSS);
    var length = piece.length().onlyIf(isStrongWay, WEAK_WAY).as("length_laid_in", Units.INCH);
    var width = piece.width().onlyIf(isStrongWay, WEAK_WAY).as("width_laid_in", Units.INCH);
    var spans =
        length
            .plus(rafters.width())
            .minus(TWO.times(rules.minBearing()))
            .max(NOTHING)
            .dividedBy(rafters.spacing())
            .in(Units.RATIO)
            .roundedDown()
            .as("spans", Units.RATIO, PrintedPanel.SOURCE);
    Condition isWide = width.isAtLeast(rules.minWidth());
    Condition hasTwoSpans = spans.isAtLeast(TWO);
    Condition isLong = length.isAtLeast(rules.minLength());
    Condition isHeld = piece.edgesSupported().choice().is(YesNo.YES);
    return new PieceFit(
        spans,
        isWide.as("wide_enough"),
        hasTwoSpans.as("two_spans"),
        isLong.as("long_enough"),
        Condition.all(hasTwoSpans, isLong, Condition.any(isWide, isHeld)).as("ok"));
  }
}
