package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.framing.stop.RepairStops;

/** Rafters with a sister along their full length, both on the same supports. */
public final class SisteredRafters {

  private SisteredRafters() {}

  /**
   * How an old rafter and a full-length sister share the load that comes on after nailing: by their
   * stiffness.
   *
   * <pre>
   * sister share = E_sister I_sister ÷ (E_rafter I_rafter + E_sister I_sister)
   * rafter share = E_rafter I_rafter ÷ (E_rafter I_rafter + E_sister I_sister)
   * </pre>
   *
   * <p>Does not cover a sister that ends short of the supports, load that was on the rafter before,
   * old lumber larger than its dressed size, or ripped stock. Section moduli are never added: the
   * piece that is first used up limits both. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * sisterShare(Ply.size(SIZE_2X8).modulus(psi(1600000)), Ply.size(SIZE_2X8).modulus(psi(1600000))).sister() // 0.5
   * sisterShare(Ply.size(SIZE_2X6), Ply.size(SIZE_2X8).modulus(psi(1600000))).sister() // 0.7236
   * }</pre>
   *
   * @param rafter the old rafter, by its name
   * @param sister nailed to its side
   * @return the old rafter's part of the load and the sister's; together 1
   * @throws RefusedException if a number lies outside its range
   * @see "derived: two pieces side by side bend to one curve; dressed sizes from PS 20 (2020),
   *     secondary source"
   */
  @LibraryFunction
  public static SisterShare sisterShare(
      @Column(prefix = "rafter_") Ply rafter, @Column(prefix = "sister_") Ply sister) {
    return new Stiffnesses(rafter.stiffness(PlySection.RAFTER), sister.stiffness(PlySection.SISTER))
        .share();
  }

  /**
   * Whether an old rafter and a full-length sister together carry their loads in bending and sag,
   * each piece checked by itself.
   *
   * <pre>
   * M_rafter = M_locked + a_rafter M_added      M_sister = a_sister M_added
   * M = w L² ÷ 8, of what is locked in or added; jacked, nothing is locked in
   * ratio = M ÷ (F_b' S), of each piece by itself
   * sag = 5 w_live L⁴ ÷ (384 (E_rafter I_rafter + E_sister I_sister))
   * capacity = the lesser of F_b' S ÷ a over the two pieces
   * </pre>
   *
   * <p>Does not cover shear and bearing (see {@code sister_reactions}), nails (see {@code
   * nails_along_sister}), sisters that end short of the supports (see {@code part_sister}), sag
   * that grows with the years, a sister set below the deck, whose top edge nothing holds, or ripped
   * stock. Screening only: local code and a licensed engineer decide, and where alone_ratio passes
   * 1 the engineer decides before any repair.
   *
   * <pre>{@code
   * sisteredRafter(RafterPly.depth(in(3.5)).bending(psi(1735.78)), SisterPly.size(SIZE_2X6).bending(psi(1504.34)), SisterLoad.of(SpanLoad.span(ft(10)).spacing(in(24)).live(psf(38.5)).dead(psf(10.81665))).existing(psf(0))).sister().ratio() // 1.034
   * sisteredRafter(RafterPly.depth(in(3.5)).bending(psi(1735.78)), SisterPly.size(SIZE_2X6).bending(psi(1504.34)), SisterLoad.of(SpanLoad.span(ft(10)).spacing(in(24)).live(psf(38.5)).dead(psf(10.81665))).existing(psf(0))).alone().ratio() // 2.7832
   * }</pre>
   *
   * @param rafter the old rafter
   * @param sister nailed to its side, from support to support
   * @param loads on both
   * @return each piece's share; ratios of the old rafter alone, of both pieces in bending and of
   *     their sag, each of which may be 1 at most; sag in inches; moment that the pair can take in
   *     inch-pounds; yes or no; what has to be said beside it
   * @throws RefusedException if a number lies outside its range, or the existing load is more than
   *     the dead load
   * @see "derived: two pieces side by side bend to one curve; NDS 2018 section 3.3, secondary
   *     source"
   */
  @LibraryFunction(words = {"check a sister", "strength"})
  public static SisteredRafter sisteredRafter(
      @Column(prefix = "rafter_") RafterPly rafter,
      @Column(prefix = "sister_") SisterPly sister,
      SisterLoad loads) {
    var old = rafter.bent();
    var beside = sister.bent();
    var stiffnesses = new Stiffnesses(old.stiffness(), beside.stiffness());
    var share = stiffnesses.share();

    var load = new LineLoads(loads.load());
    var locked = load.locked(loads);
    var pair =
        new SisteredSpan(
            "",
            load,
            load.middleMoment(locked, "locked"),
            load.middleMoment(load.addedTo(locked), "added"),
            stiffnesses,
            share,
            old.capacity(),
            beside.capacity(),
            load.sagAllowed(loads.deflectionLimit()));
    var alone =
        Check.of(
            "bending of the old rafter alone",
            "alone_ratio",
            load.middleMoment(load.total(), "whole"),
            old.capacity());
    var capacity =
        old.capacity()
            .dividedBy(share.rafter())
            .in(Units.INCH_POUND)
            .min(beside.capacity().dividedBy(share.sister()).in(Units.INCH_POUND))
            .as("capacity_in_lb", Units.INCH_POUND, Stiffnesses.SAME_CURVE);
    return new SisteredRafter(
        share.rafter(),
        share.sister(),
        alone,
        pair.rafter,
        pair.sister,
        pair.deflection,
        pair.sag,
        capacity,
        pair.ok.as("ok"),
        RepairStops.byStrength(alone.ok()));
  }

  /**
   * An old rafter with a full-length sister.
   *
   * @param rafterShare the old rafter's part of what is added after nailing
   * @param sisterShare the sister's part of it
   * @param alone bending of the old rafter before anything is done
   * @param rafter bending of the old rafter beside the sister
   * @param sister bending of the sister
   * @param deflection sag of both under the live load
   * @param sag how far both sag under the live load
   * @param capacity the moment that both can take if all of it is shared
   * @param ok whether bending and sag of the pair are within 1
   * @param decision what has to be said beside it
   */
  public record SisteredRafter(
      @Column("rafter_share") Figure<Ratio> rafterShare,
      @Column("sister_share") Figure<Ratio> sisterShare,
      @Column("alone_ratio") Check alone,
      @Column("rafter_ratio") Check rafter,
      @Column("sister_ratio") Check sister,
      @Column("sag_ratio") Check deflection,
      @Column("sag_in") Figure<Length> sag,
      @Column("capacity_in_lb") Figure<Moment> capacity,
      @Column("ok") Choice<YesNo> ok,
      @Column("decision") Choice<Decision> decision) {

    /** The old rafter alone, then the pair, in order. */
    public List<Check> checks() {
      return List.of(alone, rafter, sister, deflection);
    }
  }
}
