package sheathwright.framing.nailed;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.Stiffnesses;
import sheathwright.framing.stop.RepairStops;

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
   * partSister(RafterPly.depth(in(7.25)).bending(psi(1428)).modulus(psi(1600000)), ShortSister.size(SIZE_2X8).length(ft(9.75)).bending(psi(1428)).modulus(psi(1600000)), SisterLoad.of(SpanLoad.span(ft(13)).spacing(in(24)).live(psf(30)).dead(psf(10))).existing(psf(0)), SlippingGroups.of(GroupNailing.arm(in(24)).lateral(lb(135.7))), number(0.5)).groupNails() // 4 nails
   * }</pre>
   *
   * @param rafter the old rafter
   * @param sister nailed to its side; as long as 0.6 of the span at least
   * @param loads on both
   * @param nails in two groups near each of the sister's ends
   * @param supportRatio the greater of the old rafter's own shear and bearing ratios, 0 to 20
   * @return ratios of the old rafter alone, where the sister ends and along it, of the sister, and
   *     of the sag, each of which may be 1 at most; sag in inches; the sister's part at mid-span;
   *     forces on a group in pounds and its nails; yes or no; what has to be said beside it
   * @throws RefusedException if a number lies outside its range, the old rafter fails at its
   *     supports, the sister is too short to stiffen or longer than the span, or its groups overlap
   * @see "derived: two beams held together by nail groups that slip; NDS 2018 section 3.3,
   *     secondary source"
   */
  @LibraryFunction(words = {"partial sister", "short sister"})
  public static PartSister partSister(
      @Column(prefix = "rafter_") RafterPly rafter,
      @Column(prefix = "sister_") ShortSister sister,
      SisterLoad loads,
      SlippingGroups nails,
      @Column("support_ratio") Figure<Ratio> supportRatio) {
    var old = rafter.bent();
    var beside = sister.ply().bent();
    var stiffnesses = new Stiffnesses(old.stiffness(), beside.stiffness());
    var load = new LineLoads(loads.load());
    var added = load.addedTo(load.locked(loads));
    var s = nails.groups().arm();
    var end = nails.groups().endDistance();

    var length =
        PartSisterLengths.supported(
            supportRatio,
            PartSisterLengths.groupsFit(
                PartSisterLengths.stiffener(ShortSister.inches(sister.length()), load), s, end));
    var a = PartSisterLengths.sisterEnd(length, load);
    var far = a.plus(end).as("far_group_in", Units.INCH, NailGroups.GROUPS).symbol("x_1");
    var groups = new NailGroups(load, added, stiffnesses, far, s);

    var atEnd = load.momentAt(a, "end");
    var share = stiffnesses.share().sister();
    var couple = share.times(atEnd).dividedBy(s).as("couple_lb", Units.POUND, NailGroups.GROUPS);
    var groupNails =
        SisterSplices.nails(
            couple.max(groups.rigid), nails.groups().lateral(), "group_nails", NailGroups.GROUPS);
    var force = groups.force(groupNails, nails.stiffness());

    var whole = load.middleMoment(load.total(), "whole");
    var alone = Check.of("bending of the old rafter alone", "alone_ratio", whole, old.capacity());
    var endCheck =
        Check.of(
            "bending of the old rafter where the sister ends",
            "end_ratio",
            atEnd,
            old.capacity()
                .times(PartSisterLengths.PRYING_FACTOR)
                .as("end_capacity_in_lb", Units.INCH_POUND, PartSisterLengths.PRYING));
    var along =
        Check.of(
            "bending of the old rafter along the sister",
            "rafter_ratio",
            groups.rafterMoment(whole, force),
            old.capacity());
    var addedMoment = load.middleMoment(added, "added");
    var brought = force.times(s).as("brought_moment_in_lb", Units.INCH_POUND, NailGroups.GROUPS);
    var sisterMoment =
        brought
            .max(share.times(addedMoment).in(Units.INCH_POUND))
            .as("sister_moment_in_lb", Units.INCH_POUND, NailGroups.GROUPS);
    var bent = Check.of("bending of the sister", "sister_ratio", sisterMoment, beside.capacity());
    var liveForce =
        force
            .times(load.live())
            .dividedBy(added)
            .as("live_group_lb", Units.POUND, NailGroups.GROUPS);
    var sag =
        load.sag(load.live(), stiffnesses.rafter(), "sag_alone_in")
            .minus(groups.relief(liveForce))
            .as("sag_in", Units.INCH, NailGroups.GROUPS);
    var sags =
        Check.of(
            "live-load deflection", "sag_ratio", sag, load.sagAllowed(loads.deflectionLimit()));
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
        groupNails,
        Condition.all(endCheck.ok(), along.ok(), bent.ok(), sags.ok()).as("ok"),
        RepairStops.byStrength(alone.ok()));
  }
}
