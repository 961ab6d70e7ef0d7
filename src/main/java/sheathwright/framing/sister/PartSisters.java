package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.LumberSize;

/** Sisters on a sound rafter that end short of its supports. */
public final class PartSisters {

  private PartSisters() {}

  /**
   * What a centered sister that ends short of the supports takes off a sound rafter, with two
   * groups of nails near each of its ends: both pieces in bending, the sag, the force on each group
   * and its nails.
   *
   * <pre>
   * couple  = a_sister M(a) ÷ s, a from the support to the sister's end
   * R_rigid = u EI_rafter EI_sister ÷ ((EI_rafter + EI_sister) s² (b + s ÷ 3))
   * nails   = ⌈the greater of couple and R_rigid ÷ Z'⌉ in each of the four groups, 3 at least in two rows
   * R       = R_rigid k_group ÷ (k_group + k_pieces), k_group = nails × k ÷ 2
   * M_rafter = the most of M(x) − R (x − x_1) and M(L ÷ 2) − R s
   * M_sister = the greater of R s and a_sister M_added
   * sag = 5 w_live L⁴ ÷ (384 EI_rafter) less what R takes off
   * </pre>
   *
   * <p>Does not cover shear and bearing at the supports, of which such a sister takes nothing; more
   * than a few tacks between the groups, for nails there lessen the sag but pull harder on the
   * groups than is counted here; splitting; damage (see {@code sister_splice}); sag that grows with
   * the years. Screening only: local code and a licensed engineer decide, and where alone_ratio
   * passes 1 the engineer decides before any repair.
   *
   * <p>A longer sister does not always leave less sag. With the same arm its near groups go out
   * with its ends and leave the middle, between them it takes the same moment all along, and as
   * less moment passes at its ends fewer nails do, which slip more. Let the arm grow with the
   * sister, so that the near groups stay where they were. One nail alone would be a hinge: a group
   * is three at least, in two rows.
   *
   * <p>R_rigid takes the force as if no nail slipped, u being how far the two groups would slip
   * past each other without nails and b half the way between the near groups. The stiffness of a
   * nail is from memory.
   *
   * <pre>{@code
   * partSister(in(1.5), in(7.25), SIZE_2X8, psi(1428), psi(1428), psi(1600000), psi(1600000), in(24), ft(13), psf(30), psf(10), psf(0), NO, number(180), number(0.5), ft(9.75), in(24), in(3), lb(135.7), lbPerInch(6000)).groupNails() // 4 nails
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
   * @param supportRatio the greater of the old rafter's own shear and bearing ratios, 0 to 20
   * @param sisterLength of the sister, measured as the span is, 1 ft to 40 ft; 0.6 of the span at
   *     least
   * @param arm s, from the middle of one group to the middle of the next, 3 in to 120 in
   * @param endDistance from the middle of the outer group to the sister's end, 0 in to 24 in
   * @param lateral Z' of one nail, adjusted, 1 lb to 5000 lb
   * @param nailStiffness force that makes one nail slip by an inch if it went on as it starts, 100
   *     lb/in to 1000000 lb/in
   * @return ratios of the old rafter alone, where the sister ends and along it, of the sister, and
   *     of the sag, each of which may be 1 at most; sag in inches; the sister's part at mid-span;
   *     forces on a group in pounds and its nails; yes or no; what has to be said beside it
   * @throws RefusedException if a number lies outside its range, the old rafter fails at its
   *     supports, the sister is too short to stiffen or longer than the span, or its groups overlap
   * @see "derived: two beams held together by nail groups that slip; NDS 2018 section 3.3,
   *     secondary source"
   */
  @LibraryFunction
  public static PartSister partSister(
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
      @Column(value = "deflection_limit", preset = "180") Figure<Ratio> deflectionLimit,
      @Column("support_ratio") Figure<Ratio> supportRatio,
      @Column("sister_length_ft") Figure<Length> sisterLength,
      @Column("arm_in") Figure<Length> arm,
      @Column(value = "end_distance_in", preset = "3") Figure<Length> endDistance,
      @Column("lateral_lb") Figure<Force> lateral,
      @Column(value = "nail_stiffness_lb_per_in", preset = "6000")
          Figure<LineForce> nailStiffness) {
    var rafter = Ply.rafter(rafterThickness, rafterDepth);
    var sister = Ply.dressed("sister", sisterSize.choice().argument("sister_size"));
    var rafterCan = rafter.capacity(SisterArguments.bending("rafter", rafterBending));
    var sisterCan = sister.capacity(SisterArguments.bending("sister", sisterBending));
    var stiffnesses =
        new Stiffnesses(
            rafter.stiffness(SisterArguments.modulus("rafter", rafterModulus)),
            sister.stiffness(SisterArguments.modulus("sister", sisterModulus)));
    var load = new SpanLoad(spacing, span, live, dead);
    var added = load.addedTo(load.locked(existing, jacked));
    var s = SisterArguments.arm(arm);
    var end = SisterArguments.endDistance(endDistance);
    var z = SisterArguments.lateral(lateral);

    var length =
        SisterArguments.support(
            supportRatio,
            PartSisterLengths.groupsFit(
                PartSisterLengths.stiffener(SisterArguments.sisterLength(sisterLength), load),
                s,
                end));
    var a = PartSisterLengths.sisterEnd(length, load);
    var far = a.plus(end).as("far_group_in", Units.INCH, NailGroups.GROUPS).symbol("x_1");
    var groups = new NailGroups(load, added, stiffnesses, far, s);

    var atEnd = load.momentAt(a, "end");
    var share = stiffnesses.share().sister();
    var couple = share.times(atEnd).dividedBy(s).as("couple_lb", Units.POUND, NailGroups.GROUPS);
    var nails = SisterSplices.nails(couple.max(groups.rigid), z, "group_nails", NailGroups.GROUPS);
    var force = groups.force(nails, SisterArguments.slip(nailStiffness));

    var whole = load.middleMoment(load.total, "whole");
    var alone = Check.of("bending of the old rafter alone", "alone_ratio", whole, rafterCan);
    var endCheck =
        Check.of(
            "bending of the old rafter where the sister ends",
            "end_ratio",
            atEnd,
            rafterCan
                .times(PartSisterLengths.PRYING_FACTOR)
                .as("end_capacity_in_lb", Units.INCH_POUND, PartSisterLengths.PRYING));
    var along =
        Check.of(
            "bending of the old rafter along the sister",
            "rafter_ratio",
            groups.rafterMoment(whole, force),
            rafterCan);
    var addedMoment = load.middleMoment(added, "added");
    var brought = force.times(s).as("brought_moment_in_lb", Units.INCH_POUND, NailGroups.GROUPS);
    var sisterMoment =
        brought
            .max(share.times(addedMoment).in(Units.INCH_POUND))
            .as("sister_moment_in_lb", Units.INCH_POUND, NailGroups.GROUPS);
    var bent = Check.of("bending of the sister", "sister_ratio", sisterMoment, sisterCan);
    var liveForce =
        force.times(load.live).dividedBy(added).as("live_group_lb", Units.POUND, NailGroups.GROUPS);
    var sag =
        load.sag(load.live, stiffnesses.rafter, "sag_alone_in")
            .minus(groups.relief(liveForce))
            .as("sag_in", Units.INCH, NailGroups.GROUPS);
    var sags = Check.of("live-load deflection", "sag_ratio", sag, load.sagAllowed(deflectionLimit));
    return new PartSister(
        alone,
        endCheck,
        along,
        bent,
        sags,
        sag,
        brought.dividedBy(addedMoment).as("sister_part", Units.RATIO, NailGroups.GROUPS),
        couple,
        groups.rigid,
        force,
        nails,
        Condition.all(endCheck.ok(), along.ok(), bent.ok(), sags.ok()).as("ok"),
        RepairStops.byStrength(alone.ok()));
  }
}
