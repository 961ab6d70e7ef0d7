package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.wood.LumberSize;
import sheathwright.wood.SimpleSpan;

/** How far a rafter can still sag beside a sister that ends short of its supports. */
public final class PartSisterSags {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> SIX =
      Figure.constant("slope_divisor", 6, Units.RATIO, SimpleSpan.STATICS).symbol("6");

  private PartSisterSags() {}

  /**
   * Between what two bounds a rafter sags under its live load once a centered sister that ends
   * short of the supports is nailed to it.
   *
   * <pre>
   * most  = 5 w_live L⁴ ÷ (384 EI_rafter)
   * least = 5 w_live L⁴ ÷ (384 EI) + (1 ÷ EI_rafter − 1 ÷ EI) w_live (L a³ ÷ 6 − a⁴ ÷ 8)
   * EI of both together; a from a support to the sister's end
   * </pre>
   *
   * <p>Does not cover strength; the sag that is there already, most of which has grown with the
   * years and does not come back; or the slip of nails, which puts the true sag between the two
   * bounds: the least is a lower bound and no forecast. Screening only: local code and a licensed
   * engineer decide, and where the old rafter's own ratio passes 1 the engineer decides before any
   * repair.
   *
   * <pre>{@code
   * partSisterSag(in(1.5), in(7.25), SIZE_2X8, psi(1600000), psi(1600000), in(24), ft(13), psf(40), ft(9.75)).most() // 0.6745 in
   * partSisterSag(in(1.5), in(7.25), SIZE_2X8, psi(1600000), psi(1600000), in(24), ft(13), psf(40), ft(9.75)).least() // 0.3449 in
   * partSisterSag(in(1.5), in(7.25), SIZE_2X8, psi(1600000), psi(1600000), in(24), ft(13), psf(40), ft(6.5)).role() // splice
   * }</pre>
   *
   * @param rafterThickness of the old rafter as measured, 0.5 in to 6 in
   * @param rafterDepth of the old rafter as measured, 2 in to 16 in
   * @param sisterSize nominal size of the sister, taken at its dry dressed size
   * @param rafterModulus E of the old rafter, 100000 psi to 5000000 psi
   * @param sisterModulus E of the sister, 100000 psi to 5000000 psi
   * @param spacing center to center, 4 in to 48 in
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param live load that comes after nailing, on the horizontal projection, 1 psf to 300 psf
   * @param sisterLength of the sister, measured as the span is, 1 ft to 40 ft
   * @return both bounds in inches; whether a sister of this length stiffens or only splices
   * @throws RefusedException if a number lies outside its range, or the sister is longer than the
   *     span
   * @see "derived: virtual work on a beam that is stiffer in its middle"
   */
  @LibraryFunction
  public static PartSisterSag partSisterSag(
      @Column(value = "rafter_thickness_in", preset = "1.5") Figure<Length> rafterThickness,
      @Column("rafter_depth_in") Figure<Length> rafterDepth,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column(value = "rafter_modulus_psi", preset = "1400000") Figure<Stress> rafterModulus,
      @Column(value = "sister_modulus_psi", preset = "1400000") Figure<Stress> sisterModulus,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("span_ft") Figure<Length> span,
      @Column("live_psf") Figure<Pressure> live,
      @Column("sister_length_ft") Figure<Length> sisterLength) {
    var stiffnesses =
        new Stiffnesses(
            Ply.rafter(rafterThickness, rafterDepth)
                .stiffness(SisterArguments.modulus("rafter", rafterModulus)),
            Ply.dressed("sister", sisterSize.choice().argument("sister_size"))
                .stiffness(SisterArguments.modulus("sister", sisterModulus)));
    var load = new SpanLoad(spacing, span, live, Figure.of(0, Units.PSF));
    var length = PartSisterLengths.withinSpan(SisterArguments.sisterLength(sisterLength), load);
    var a = PartSisterLengths.sisterEnd(length, load);

    var softer = ONE.dividedBy(stiffnesses.rafter).minus(ONE.dividedBy(stiffnesses.both));
    var ends =
        load.span
            .times(a.cubed())
            .dividedBy(SIX)
            .minus(a.times(a.cubed()).dividedBy(SimpleSpan.EIGHT));
    var stiff = load.sag(load.live, stiffnesses.both, "sag_full_length_in");
    var least =
        stiff
            .plus(softer.times(load.live).times(ends))
            .as("least_sag_in", Units.INCH, SimpleSpan.STATICS);
    return new PartSisterSag(
        load.sag(load.live, stiffnesses.rafter, "most_sag_in"),
        least,
        Choice.choose(
                PartSisterLengths.isLongEnough(length, load),
                PartSisterSag.Role.STIFFENER,
                PartSisterSag.Role.SPLICE)
            .as("role"));
  }
}
