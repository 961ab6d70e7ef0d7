package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What stops a repair by numbers alone, before anybody has looked. */
public final class ReckonedStops {

  private static final Source BEAMS = Source.secondHand("IRC 2021, R802.4.4");
  private static final Source GROWTH = Source.fromMemory("IEBC 2021, 706.2");
  private static final Figure<Ratio> STEEP_ENOUGH =
      Figure.constant("least_rise_without_a_beam", 3, Units.RISE_IN_12, BEAMS).symbol("3 in 12");
  private static final Figure<Ratio> ALLOWED =
      Figure.constant("dead_load_growth_allowed", 0.05, Units.RATIO, GROWTH).symbol("5 %");

  private ReckonedStops() {}

  /**
   * Whether a slope asks for a ridge beam that nobody has seen.
   *
   * <pre>
   * stop where rise &lt; 3 in 12 and the ridge is not a beam
   * </pre>
   *
   * <p>Does not cover whether the beam is strong enough, or roofs of 3 in 12 and more whose ties
   * are missing: those need a beam too, see {@code framing_stop}. A rise of 1 or 2 in 12 is not a
   * rafter as this code means it. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * ridgeStop(pitch(2), ONLY_A_RIDGE_BOARD) // ridge-board
   * ridgeStop(pitch(2), RIDGE_BEAM) // nothing
   * framingStop(number(0.5), ridgeStop(pitch(2.5), RIDGE_NOT_SEEN)).decides() // a licensed engineer
   * }</pre>
   *
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @param ridge what the rafters meet at the top; unknown is taken as a board
   * @return the finding for {@code framing_stop}: nothing or ridge-board
   * @throws RefusedException if the rise lies outside its range
   * @see "IRC 2021, R802.4.4, secondary source: below 3 in 12 ridges, hips and valleys are designed
   *     as beams"
   */
  @LibraryFunction(words = {"ridge beam", "low slope", "shallow"})
  @Column("seen")
  public static Choice<StopFinding> ridgeStop(
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column(value = "ridge", preset = "unknown") OneOf<Ridge> ridge) {
    var slope =
        rise.within(
            "rise_in_12", Units.RISE_IN_12, Limits.between(0, 48, "rise in inches for 12 of run"));
    var top = ridge.choice().argument("ridge");
    var withoutBeam =
        Choice.choose(top.is(Ridge.RIDGE_BEAM), StopFinding.NOTHING, StopFinding.RIDGE_BOARD)
            .as("ridge_found_below_3_in_12");
    return Choice.choose(slope.isAtLeast(STEEP_ENOUGH), StopFinding.NOTHING, withoutBeam)
        .as("seen", BEAMS);
  }

  /**
   * Whether a new covering weighs so much more than the old one that the structure has to be shown
   * to carry it.
   *
   * <pre>
   * stop where new &gt; old × (1 + 5 %)
   * </pre>
   *
   * <p>Does not cover a light second layer over a single one, which the code lets pass up to 3 psf
   * and this stops: whoever decides may say so. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * coveringStop(CoveringChange.from(psf(2)).to(psf(2.1))) // nothing
   * coveringStop(CoveringChange.from(psf(2)).to(psf(2.2))) // heavier-covering
   * framingStop(number(0.5), coveringStop(CoveringChange.from(psf(4)).to(psf(16)))).decision() // STOP: a licensed engineer decides before any repair
   * }</pre>
   *
   * @param change what comes off and what goes on, each 0 psf to 200 psf
   * @return the finding for {@code framing_stop}: nothing or heavier-covering
   * @throws RefusedException if a weight lies outside its range
   * @see "IEBC 2021, 706.2, from memory: the dead load of the roofing may grow by 5 % at most"
   */
  @LibraryFunction(words = {"tile", "slate", "heavier", "weight of covering"})
  @Column("seen")
  public static Choice<StopFinding> coveringStop(CoveringChange change) {
    var allowed = change.old().times(ALLOWED).as("covering_growth_allowed_psf", Units.PSF, GROWTH);
    var most =
        change
            .old()
            .plus(allowed)
            .as("covering_most_psf", Units.PSF, Source.derived("old and growth allowed"));
    return Choice.choose(
            change.renewed().isAtMost(most), StopFinding.NOTHING, StopFinding.HEAVIER_COVERING)
        .as("seen", GROWTH);
  }

  /** The least slope on which rafters may lean on a ridge board. */
  public static Figure<Ratio> leastRise() {
    return STEEP_ENOUGH;
  }

  /** What a screening of the old rafters found. */
  public static Choice<StopFinding> strength(Condition strong) {
    return Choice.choose(strong, StopFinding.NOTHING, StopFinding.OVERLOADED)
        .as("strength_found", Source.COMMON_PRACTICE);
  }

  /** What it means that a roof is framed with trusses, or is not. */
  public static Choice<StopFinding> trusses(Condition areTrusses) {
    return Choice.choose(areTrusses, StopFinding.TRUSS, StopFinding.NOTHING)
        .as("trusses_found", Source.COMMON_PRACTICE);
  }

  /** What it means that a strut stands on nothing that bears, or is not known to. */
  public static Choice<StopFinding> strut(Condition standsOnNothing) {
    return Choice.choose(standsOnNothing, StopFinding.LOST_STRUT, StopFinding.NOTHING)
        .as("strut_found", Source.COMMON_PRACTICE);
  }
}
