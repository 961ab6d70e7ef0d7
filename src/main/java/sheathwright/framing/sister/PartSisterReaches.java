package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
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
   * partSisterReach(in(1.5), in(7.25), psi(1000), in(24), ft(13), psf(30), psf(10), number(0.5), in(12)).reach() // 27.641 in
   * }</pre>
   *
   * @param rafterThickness of the old rafter as measured, 0.5 in to 6 in
   * @param rafterDepth of the old rafter as measured, 2 in to 16 in
   * @param rafterBending F_b' of the old rafter, adjusted, 50 psi to 10000 psi
   * @param spacing center to center, 4 in to 48 in
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param live roof live load or snow on the horizontal projection, 1 psf to 300 psf
   * @param dead dead load on the horizontal projection, 0 psf to 100 psf
   * @param supportRatio the greater of the old rafter's own shear and bearing ratios, 0 to 20
   * @param development length of the sister beyond the point for its nails, 0 in to 48 in
   * @return the old rafter's own ratio; inches from a support; feet of sister; what has to be said
   *     beside it
   * @throws RefusedException if a number lies outside its range, the old rafter carries the load
   *     alone, or it fails at its supports
   * @see "derived: where the moment of an even load reaches nine tenths of what the rafter can
   *     take"
   */
  @LibraryFunction
  public static PartSisterReach partSisterReach(
      @Column(value = "rafter_thickness_in", preset = "1.5") Figure<Length> rafterThickness,
      @Column("rafter_depth_in") Figure<Length> rafterDepth,
      @Column("rafter_bending_psi") Figure<Stress> rafterBending,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("span_ft") Figure<Length> span,
      @Column("live_psf") Figure<Pressure> live,
      @Column("dead_psf") Figure<Pressure> dead,
      @Column("support_ratio") Figure<Ratio> supportRatio,
      @Column(value = "development_in", preset = "12") Figure<Length> development) {
    var load = new SpanLoad(spacing, span, live, dead);
    var can =
        Ply.rafter(rafterThickness, rafterDepth)
            .capacity(SisterArguments.bending("rafter", rafterBending));
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
            load.middleMoment(load.total, "whole"),
            can);

    var atSupports = SisterArguments.support(supportRatio, load.span);
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
                    .dividedBy(load.total));
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
