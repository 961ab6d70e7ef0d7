package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.framing.stop.RepairStops;
import sheathwright.wood.Seat;
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
   * sisterReactions(SharedReaction.added(lb(500)).existing(lb(0)).rafterShare(number(0.5)).sisterBears(YES), SeatedRafter.depth(in(7.25)).shear(psi(155)).bearing(psi(425)), SeatedSister.size(SIZE_2X8).shear(psi(155)).bearing(psi(425)), in(1.5)).sisterReaction() // 250 lb
   * sisterReactions(SharedReaction.added(lb(500)).existing(lb(0)).rafterShare(number(0.5)).sisterBears(NO), SeatedRafter.depth(in(7.25)).shear(psi(155)).bearing(psi(425)), SeatedSister.size(SIZE_2X8).shear(psi(155)).bearing(psi(425)), in(1.5)).carriedBy() // rafter-alone
   * }</pre>
   *
   * @param reaction what comes to the support, and which piece takes it
   * @param rafter the old rafter's end
   * @param sister the sister's end
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
      SharedReaction reaction,
      @Column(prefix = "rafter_") SeatedRafter rafter,
      @Column(prefix = "sister_") SeatedSister sister,
      @Column(value = "bearing_in", preset = "1.5") Figure<Length> seat) {
    var seatLength = Columns.of(Seat.class).let("bearing", seat);
    Condition bears = reaction.sisterBears().choice().is(YesNo.YES);
    var after = reaction.added();

    var whole =
        reaction
            .existing()
            .plus(after)
            .as("whole_reaction_lb", Units.POUND, SimpleSpan.STATICS)
            .symbol("R");
    var sisterPart =
        Figure.choose(bears, ONE.minus(reaction.rafterShare()), Figure.of(0, Units.RATIO))
            .as("sister_part", Units.RATIO, Stiffnesses.SAME_CURVE);
    var sisterReaction =
        sisterPart.times(after).as("sister_reaction_lb", Units.POUND, SisteredSpan.LOCKED);
    var rafterReaction =
        whole.minus(sisterReaction).as("rafter_reaction_lb", Units.POUND, SimpleSpan.STATICS);

    var rafterEnd =
        new EndStrength(PlySection.RAFTER, rafter.section().section(), rafter.end(), seatLength);
    var sisterEnd = new EndStrength(PlySection.SISTER, sister.section(), sister.end(), seatLength);
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
        Choice.choose(
                bears,
                SisterReaction.CarriedBy.RAFTER_AND_SISTER,
                SisterReaction.CarriedBy.RAFTER_ALONE)
            .as("carried_by"),
        Condition.all(rafterInShear.ok(), rafterOnSeat.ok(), sisterInShear.ok(), sisterOnSeat.ok())
            .as("ok"),
        RepairStops.byStrength(Condition.all(aloneShear.ok(), aloneBearing.ok())));
  }

  /**
   * What an old rafter and its sister bring to a support.
   *
   * @param rafterReaction on the old rafter
   * @param sisterReaction on the sister; none if it does not bear
   * @param aloneShear the old rafter alone, before anything is done
   * @param aloneBearing the old rafter alone, before anything is done
   * @param rafterShear the old rafter beside the sister
   * @param rafterBearing the old rafter beside the sister
   * @param sisterShear the sister
   * @param sisterBearing the sister
   * @param carriedBy which of the two carry
   * @param ok whether shear and bearing of both are within 1
   * @param decision what has to be said beside it
   */
  public record SisterReaction(
      @Column("rafter_reaction_lb") Figure<Force> rafterReaction,
      @Column("sister_reaction_lb") Figure<Force> sisterReaction,
      @Column("alone_shear_ratio") Check aloneShear,
      @Column("alone_bearing_ratio") Check aloneBearing,
      @Column("rafter_shear_ratio") Check rafterShear,
      @Column("rafter_bearing_ratio") Check rafterBearing,
      @Column("sister_shear_ratio") Check sisterShear,
      @Column("sister_bearing_ratio") Check sisterBearing,
      @Column("carried_by") Choice<CarriedBy> carriedBy,
      @Column("ok") Choice<YesNo> ok,
      @Column("decision") Choice<Decision> decision) {

    /** Which pieces carry at a support. */
    public enum CarriedBy implements Option<CarriedBy> {
      /** The sister bears on the plate itself. */
      RAFTER_AND_SISTER,
      /** The sister ends short of the plate or hangs beside it: it has no credit here. */
      RAFTER_ALONE
    }

    /** The old rafter alone, then each piece, in order. */
    public List<Check> checks() {
      return List.of(
          aloneShear, aloneBearing, rafterShear, rafterBearing, sisterShear, sisterBearing);
    }
  }
}
