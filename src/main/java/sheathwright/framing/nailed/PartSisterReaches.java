package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.framing.sister.BendingValue;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.MeasuredRafter;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.SimpleSpan;

/** How far toward the supports a sister must reach. */
public final class PartSisterReaches {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private PartSisterReaches() {}

  /**
   * How far toward the supports a sister must reach on a sound rafter that is too weak by itself.
   *
   * <pre>
   * reach = (L − √(L² − 8 × 0.9 F_b' S ÷ w)) ÷ 2 from each support
   * length = L − 2 (reach − development)
   * </pre>
   *
   * <p>Does not cover shear and bearing, of which a sister that ends short takes nothing; what the
   * sister itself and its nails carry (see {@code part_sister}); damage (see {@code
   * sister_splice}). A length of the span or more means that the sister has to stand on both
   * plates. Screening only: local code and a licensed engineer decide, and as alone_ratio passes 1
   * the engineer decides before any repair.
   *
   * <pre>{@code
   * partSisterReach(MeasuredRafter.depth(in(7.25)), BendingValue.of(psi(1000)), SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10)), number(0.5), in(12)).reach() // 27.641 in
   * }</pre>
   *
   * @param rafter the old rafter
   * @param bending that its wood is allowed
   * @param span and what lies on it
   * @param supportRatio the greater of the old rafter's own shear and bearing ratios, 0 to 20
   * @param development length of the sister beyond the point for its nails, 0 in to 48 in
   * @return the old rafter's own ratio; inches from a support; feet of sister; what has to be said
   *     beside it
   * @throws RefusedException if a number lies outside its range, the old rafter carries the load
   *     alone, or it fails at its supports
   * @see "derived: where the moment of an even load reaches nine tenths of what the rafter can
   *     take"
   */
  @LibraryFunction(words = {"partial sister", "short sister", "how long"})
  public static PartSisterReach partSisterReach(
      @Column(prefix = "rafter_") MeasuredRafter rafter,
      @Column(prefix = "rafter_") BendingValue bending,
      SpanLoad span,
      @Column("support_ratio") Figure<Ratio> supportRatio,
      @Column(value = "development_in", preset = "12") Figure<Length> development) {
    var load = new LineLoads(span);
    var can = rafter.section().capacity(bending);
    var nailed =
        development
            .within(
                "development_in",
                Units.INCH,
                Limits.between(0, 48, "12 is usual, for the nails of one group"))
            .symbol("development");
    var alone =
        Check.of(
            "bending of the old rafter alone",
            "alone_ratio",
            load.middleMoment(load.total(), "whole"),
            can);

    var atSupports = PartSisterLengths.supported(supportRatio, load.span());
    var reckoned =
        atSupports
            .onlyIf(
                alone.ratio().isMoreThan(ONE),
                "the old rafter carries this load alone; for its strength it needs no sister")
            .as("span_to_sister_in", Units.INCH)
            .symbol("L");
    var inside =
        reckoned
            .squared()
            .minus(
                SimpleSpan.EIGHT
                    .times(PartSisterLengths.PRYING_FACTOR)
                    .times(can)
                    .dividedBy(load.total()));
    var reach =
        reckoned
            .minus(inside.squareRoot())
            .dividedBy(TWO)
            .as("reach_in", Units.INCH, PartSisterLengths.PRYING)
            .symbol("reach");
    var length =
        reckoned
            .minus(TWO.times(reach.minus(nailed)))
            .as("least_length_ft", Units.FOOT, PartSisterLengths.PRYING);
    return new PartSisterReach(alone, reach, length, RepairStops.byStrength(alone.ok()));
  }
}
