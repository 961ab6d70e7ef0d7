package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.sister.SisterReaction.CarriedBy;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.LumberSize;
import sheathwright.wood.SimpleSpan;

/** What a rafter and its sister bring to their supports. */
public final class SisterReactions {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private SisterReactions() {}

  /**
   * What an old rafter and its sister bring to a support, and whether each is strong enough there
   * in shear and in bearing: a sister that does not bear on the plate has no credit.
   *
   * <pre>
   * R_rafter = R_existing + a_rafter R_added     R_sister = a_sister R_added, if the sister bears
   * R_rafter = R_existing + R_added              R_sister = 0,                if it does not
   * shear   = R ÷ (2/3 F_v' b d_n (d_n ÷ d)²), d_n the depth left above the seat
   * bearing = R ÷ (F_c⊥' b l_b)
   * </pre>
   *
   * <p>Does not cover rot or splits at the support, toe-nails, hangers, the plate's own wood,
   * thrust, or a notch deeper than a quarter of the depth. The factor for the notch and its deepest
   * are from memory. Shear is taken at the support, not a depth away. Screening only: local code
   * and a licensed engineer decide, and where the old rafter alone passes 1 the engineer decides
   * before any repair.
   *
   * <pre>{@code
   * sisterReactions(lb(0), lb(500), number(0.5), YES, in(1.5), in(7.25), in(0), SIZE_2X8, in(0), psi(155), psi(155), psi(425), psi(425), in(1.5)).sisterReaction() // 250 lb
   * sisterReactions(lb(0), lb(500), number(0.5), NO, in(1.5), in(7.25), in(0), SIZE_2X8, in(0), psi(155), psi(155), psi(425), psi(425), in(1.5)).carriedBy() // rafter-alone
   * }</pre>
   *
   * @param existing reaction of what lies on the rafter when the sister is nailed, 0 lb to 20000
   *     lb; 0 if it is jacked
   * @param added reaction of everything that comes after, 0 lb to 20000 lb
   * @param rafterShare the old rafter's part of what is added, 0 to 1
   * @param sisterBears whether the sister stands on the plate itself
   * @param rafterThickness of the old rafter as measured, 0.5 in to 6 in
   * @param rafterDepth of the old rafter as measured, 2 in to 16 in
   * @param rafterNotch seat-cut depth in the old rafter, 0 in to 4 in
   * @param sisterSize nominal size of the sister, taken at its dry dressed size
   * @param sisterNotch seat-cut depth in the sister, 0 in to 4 in
   * @param rafterShear F_v' of the old rafter, adjusted, 10 psi to 1000 psi
   * @param sisterShear F_v' of the sister, adjusted, 10 psi to 1000 psi
   * @param rafterBearing F_c⊥' of the old rafter, adjusted, 50 psi to 3000 psi
   * @param sisterBearing F_c⊥' of the sister, adjusted, 50 psi to 3000 psi
   * @param seat length of the seat on the plate, 0.5 in to 12 in
   * @return reactions in pounds; ratios of the old rafter alone and of both pieces, each of which
   *     may be 1 at most; which pieces carry; yes or no; what has to be said beside it
   * @throws RefusedException if a number lies outside its range, or a notch takes more than a
   *     quarter of the depth
   * @see "NDS 2018 sections 3.4 and 3.10, secondary source, the notch from memory; the sharing is
   *     derived"
   */
  @LibraryFunction
  public static SisterReaction sisterReactions(
      @Column("existing_lb") Figure<Force> existing,
      @Column("added_lb") Figure<Force> added,
      @Column("rafter_share") Figure<Ratio> rafterShare,
      @Column("sister_bears") OneOf<YesNo> sisterBears,
      @Column(value = "rafter_thickness_in", preset = "1.5") Figure<Length> rafterThickness,
      @Column("rafter_depth_in") Figure<Length> rafterDepth,
      @Column(value = "rafter_notch_in", preset = "0") Figure<Length> rafterNotch,
      @Column("sister_size") OneOf<LumberSize> sisterSize,
      @Column(value = "sister_notch_in", preset = "0") Figure<Length> sisterNotch,
      @Column("rafter_shear_psi") Figure<Stress> rafterShear,
      @Column("sister_shear_psi") Figure<Stress> sisterShear,
      @Column("rafter_bearing_psi") Figure<Stress> rafterBearing,
      @Column("sister_bearing_psi") Figure<Stress> sisterBearing,
      @Column(value = "bearing_in", preset = "1.5") Figure<Length> seat) {
    var before =
        existing
            .within(
                "existing_lb",
                Units.POUND,
                Limits.between(0, 20_000, "half the load that lies on the rafter"))
            .symbol("R_existing");
    var after =
        added
            .within(
                "added_lb", Units.POUND, Limits.between(0, 20_000, "half the load that is added"))
            .symbol("R_added");
    var share =
        rafterShare
            .within("rafter_share", Units.RATIO, Limits.between(0, 1, "from sister_share"))
            .symbol("a_rafter");
    var seatLength =
        seat.within(
                "bearing_in",
                Units.INCH,
                Limits.between(0.5, 12, "1-1/2 on wood and 3 on masonry are the IRC's least"))
            .symbol("l_b");
    Condition bears = sisterBears.choice().argument("sister_bears").is(YesNo.YES);

    var whole =
        before.plus(after).as("whole_reaction_lb", Units.POUND, SimpleSpan.STATICS).symbol("R");
    var sisterPart =
        Figure.choose(bears, ONE.minus(share), Figure.of(0, Units.RATIO))
            .as("sister_part", Units.RATIO, Stiffnesses.SAME_CURVE);
    var sisterReaction =
        sisterPart.times(after).as("sister_reaction_lb", Units.POUND, SisteredSpan.LOCKED);
    var rafterReaction =
        whole.minus(sisterReaction).as("rafter_reaction_lb", Units.POUND, SimpleSpan.STATICS);

    var rafterEnd =
        new PlyEnd(
            "rafter",
            Ply.rafter(rafterThickness, rafterDepth),
            rafterNotch,
            rafterShear,
            rafterBearing,
            seatLength);
    var sisterEnd =
        new PlyEnd(
            "sister",
            Ply.dressed("sister", sisterSize.choice().argument("sister_size")),
            sisterNotch,
            sisterShear,
            sisterBearing,
            seatLength);
    var aloneShear = rafterEnd.shearCheck("the old rafter alone", "alone", whole);
    var aloneBearing = rafterEnd.bearingCheck("the old rafter alone", "alone", whole);
    var rafterInShear = rafterEnd.shearCheck("the old rafter", "rafter", rafterReaction);
    var rafterOnSeat = rafterEnd.bearingCheck("the old rafter", "rafter", rafterReaction);
    var sisterInShear = sisterEnd.shearCheck("the sister", "sister", sisterReaction);
    var sisterOnSeat = sisterEnd.bearingCheck("the sister", "sister", sisterReaction);
    return new SisterReaction(
        rafterReaction,
        sisterReaction,
        aloneShear,
        aloneBearing,
        rafterInShear,
        rafterOnSeat,
        sisterInShear,
        sisterOnSeat,
        Choice.choose(bears, CarriedBy.RAFTER_AND_SISTER, CarriedBy.RAFTER_ALONE).as("carried_by"),
        Condition.all(rafterInShear.ok(), rafterOnSeat.ok(), sisterInShear.ok(), sisterOnSeat.ok())
            .as("ok"),
        RepairStops.byStrength(Condition.all(aloneShear.ok(), aloneBearing.ok())));
  }
}
