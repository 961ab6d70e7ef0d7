package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.LumberSize;

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
   * sisterShare(SIZE_2X8, SIZE_2X8, psi(1600000), psi(1600000)).sister() // 0.5
   * sisterShare(SIZE_2X6, SIZE_2X8, psi(1400000), psi(1600000)).sister() // 0.7236
   * }</pre>
   *
   * @param rafterSize nominal size of the old rafter, taken at its dry dressed size
   * @param sisterSize nominal size of the sister, taken at its dry dressed size
   * @param rafterModulus E of the old rafter, 100000 psi to 5000000 psi
   * @param sisterModulus E of the sister, 100000 psi to 5000000 psi
   * @return the old rafter's part of the load and the sister's; together 1
   * @throws RefusedException if a number lies outside its range
   * @see "derived: two pieces side by side bend to one curve; dressed sizes from PS 20 (2020),
   *     secondary source"
   */
  @LibraryFunction
  public static SisterShare sisterShare(
      @Column("rafter_size") OneOf<LumberSize> rafterSize,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column(value = "rafter_modulus_psi", preset = "1400000") Figure<Stress> rafterModulus,
      @Column(value = "sister_modulus_psi", preset = "1400000") Figure<Stress> sisterModulus) {
    var rafter = Ply.dressed("rafter", rafterSize.choice().argument("rafter_size"));
    var sister = Ply.dressed("sister", sisterSize.choice().argument("sister_size"));
    return new Stiffnesses(
            rafter.stiffness(SisterArguments.modulus("rafter", rafterModulus)),
            sister.stiffness(SisterArguments.modulus("sister", sisterModulus)))
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
   * sisteredRafter(in(1.5), in(3.5), SIZE_2X6, psi(1735.78), psi(1504.34), psi(1400000), psi(1400000), in(24), ft(10), psf(38.5), psf(10.81665), psf(0), NO, number(180)).sister().ratio() // 1.034
   * sisteredRafter(in(1.5), in(3.5), SIZE_2X6, psi(1735.78), psi(1504.34), psi(1400000), psi(1400000), in(24), ft(10), psf(38.5), psf(10.81665), psf(0), NO, number(180)).alone().ratio() // 2.7832
   * }</pre>
   *
   * @param rafterThickness of the old rafter as measured, 0.5 in to 6 in
   * @param rafterDepth of the old rafter as measured, 2 in to 16 in
   * @param sisterSize nominal size of the sister, taken at its dry dressed size
   * @param rafterBending F_b' of the old rafter, adjusted, 50 psi to 10000 psi
   * @param sisterBending F_b' of the sister, adjusted, 50 psi to 10000 psi
   * @param rafterModulus E of the old rafter, 100000 psi to 5000000 psi
   * @param sisterModulus E of the sister, 100000 psi to 5000000 psi
   * @param spacing center to center, 4 in to 48 in
   * @param span clear span on the horizontal projection, 1 ft to 40 ft
   * @param live roof live load or snow on the horizontal projection, 1 psf to 300 psf
   * @param dead dead load on the horizontal projection, 0 psf to 100 psf
   * @param existing the part of the dead load that lies on the rafter when the sister is nailed, 0
   *     psf to 100 psf; it stays in the old rafter
   * @param jacked whether the rafter is jacked free of that load before nailing
   * @param deflectionLimit span divided by this is the sag allowed under live load, 120 to 480
   * @return each piece's share; ratios of the old rafter alone, of both pieces in bending and of
   *     their sag, each of which may be 1 at most; sag in inches; moment that the pair can take in
   *     inch-pounds; yes or no; what has to be said beside it
   * @throws RefusedException if a number lies outside its range, or the existing load is more than
   *     the dead load
   * @see "derived: two pieces side by side bend to one curve; NDS 2018 section 3.3, read second
   *     hand"
   */
  @LibraryFunction
  public static SisteredRafter sisteredRafter(
      @Column(value = "rafter_thickness_in", preset = "1.5") Figure<Length> rafterThickness,
      @Column("rafter_depth_in") Figure<Length> rafterDepth,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column("rafter_bending_psi") Figure<Stress> rafterBending,
      @Column("sister_bending_psi") Figure<Stress> sisterBending,
      @Column(value = "rafter_modulus_psi", preset = "1400000") Figure<Stress> rafterModulus,
      @Column(value = "sister_modulus_psi", preset = "1400000") Figure<Stress> sisterModulus,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("span_ft") Figure<Length> span,
      @Column("live_psf") Figure<Pressure> live,
      @Column("dead_psf") Figure<Pressure> dead,
      @Column("existing_psf") Figure<Pressure> existing,
      @Column(value = "jacked", preset = "no") OneOf<YesNo> jacked,
      @Column(value = "deflection_limit", preset = "180") Figure<Ratio> deflectionLimit) {
    var rafter = Ply.rafter(rafterThickness, rafterDepth);
    var sister = Ply.dressed("sister", sisterSize.choice().argument("sister_size"));
    var rafterCapacity = rafter.capacity(SisterArguments.bending("rafter", rafterBending));
    var sisterCapacity = sister.capacity(SisterArguments.bending("sister", sisterBending));
    var stiffnesses =
        new Stiffnesses(
            rafter.stiffness(SisterArguments.modulus("rafter", rafterModulus)),
            sister.stiffness(SisterArguments.modulus("sister", sisterModulus)));
    var share = stiffnesses.share();

    var load = new SpanLoad(spacing, span, live, dead);
    var locked = load.locked(existing, jacked);
    var pair =
        new SisteredSpan(
            "",
            load,
            load.middleMoment(locked, "locked"),
            load.middleMoment(load.addedTo(locked), "added"),
            stiffnesses,
            share,
            rafterCapacity,
            sisterCapacity,
            load.sagAllowed(deflectionLimit));
    var alone =
        Check.of(
            "bending of the old rafter alone",
            "alone_ratio",
            load.middleMoment(load.total, "whole"),
            rafterCapacity);
    var capacity =
        rafterCapacity
            .dividedBy(share.rafter())
            .in(Units.INCH_POUND)
            .min(sisterCapacity.dividedBy(share.sister()).in(Units.INCH_POUND))
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
}
