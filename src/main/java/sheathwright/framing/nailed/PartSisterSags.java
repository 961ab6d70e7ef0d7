package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.framing.sister.Elasticity;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.LiveSpan;
import sheathwright.framing.sister.MeasuredRafter;
import sheathwright.framing.sister.Ply;
import sheathwright.framing.sister.PlySection;
import sheathwright.framing.sister.Stiffnesses;
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
   * partSisterSag(MeasuredRafter.depth(in(7.25)), Elasticity.of(psi(1600000)), Ply.size(SIZE_2X8).modulus(psi(1600000)), LiveSpan.span(ft(13)).spacing(in(24)).live(psf(40)), ft(9.75)).most() // 0.6745 in
   * partSisterSag(MeasuredRafter.depth(in(7.25)), Elasticity.of(psi(1600000)), Ply.size(SIZE_2X8).modulus(psi(1600000)), LiveSpan.span(ft(13)).spacing(in(24)).live(psf(40)), ft(9.75)).least() // 0.3449 in
   * partSisterSag(MeasuredRafter.depth(in(7.25)), Elasticity.of(psi(1600000)), Ply.size(SIZE_2X8).modulus(psi(1600000)), LiveSpan.span(ft(13)).spacing(in(24)).live(psf(40)), ft(6.5)).role() // splice
   * }</pre>
   *
   * @param rafter the old rafter
   * @param elasticity of its wood
   * @param sister nailed to its side
   * @param span and the load that comes on it after nailing
   * @param sisterLength of the sister, measured as the span is, 1 ft to 40 ft
   * @return both bounds in inches; whether a sister of this length stiffens or only splices
   * @throws RefusedException if a number lies outside its range, or the sister is longer than the
   *     span
   * @see "derived: virtual work on a beam that is stiffer in its middle"
   */
  @LibraryFunction
  public static PartSisterSag partSisterSag(
      @Column(prefix = "rafter_") MeasuredRafter rafter,
      @Column(prefix = "rafter_") Elasticity elasticity,
      @Column(prefix = "sister_") Ply sister,
      LiveSpan span,
      @Column("sister_length_ft") Figure<Length> sisterLength) {
    var stiffnesses =
        new Stiffnesses(
            rafter.section().stiffness(elasticity), sister.stiffness(PlySection.SISTER));
    var load = new LineLoads(span);
    var length = PartSisterLengths.withinSpan(ShortSister.inches(sisterLength), load);
    var a = PartSisterLengths.sisterEnd(length, load);

    var softer = ONE.dividedBy(stiffnesses.rafter()).minus(ONE.dividedBy(stiffnesses.both()));
    var ends =
        load.span()
            .times(a.cubed())
            .dividedBy(SIX)
            .minus(a.times(a.cubed()).dividedBy(SimpleSpan.EIGHT));
    var stiff = load.sag(load.live(), stiffnesses.both(), "sag_full_length_in");
    var least =
        stiff
            .plus(softer.times(load.live()).times(ends))
            .as("least_sag_in", Units.INCH, SimpleSpan.STATICS);
    return new PartSisterSag(
        load.sag(load.live(), stiffnesses.rafter(), "most_sag_in"),
        least,
        Choice.choose(
                PartSisterLengths.isLongEnough(length, load),
                PartSisterSag.Role.STIFFENER,
                PartSisterSag.Role.SPLICE)
            .as("role"));
  }
}
