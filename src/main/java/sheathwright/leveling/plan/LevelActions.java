package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.leveling.target.LevelThresholds;

/** What is done to a rafter that does not lie on the target. */
public final class LevelActions {

  private static final Figure<Length> NO_HEIGHT = Figure.of(0, Units.INCH);

  private LevelActions() {}

  /**
   * What is done where a rafter lies so far below the target: leave it, shim it, sister it; where
   * it stands above the target: plane it. A truss is never sistered and never planed.
   *
   * <pre>
   * build-up above shim         → sister, on a truss stop
   * build-up above leave        → shim
   * build-up from −leave to leave → leave
   * build-up below −leave       → plane, on a truss stop
   * </pre>
   *
   * <p>Does not cover whether the rafter is strong enough, cracked, cut or rotten: a licensed
   * engineer decides those first. Trusses are for their designer.
   *
   * <pre>{@code
   * levelingAction(in("3/8"), LevelThresholds.usual(), NO) // shim
   * levelingAction(in("1/2"), LevelThresholds.usual(), YES) // stop
   * }</pre>
   *
   * @param buildUp from the wood up to the target, negative where the wood is higher, -24 in to 24
   *     in
   * @param thresholds what is left alone, and what a shim strip makes up
   * @param truss whether it is a truss
   * @return leave, shim, sister, plane or stop
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: 1/8 in and 3/8 in; trusses by IRC R802.7.2, secondary source"
   */
  @LibraryFunction(words = {"straighten", "flatten", "dip", "hump"})
  @Column("action")
  public static Choice<LevelAction> levelingAction(
      @Column("build_up_in") Figure<Length> buildUp,
      LevelThresholds thresholds,
      @Column(value = "truss", preset = "no") OneOf<YesNo> truss) {
    var height =
        buildUp.within("build_up_in", Units.INCH, Limits.between(-24, 24, "low is positive"));
    var stays = thresholds.leave();
    var most = thresholds.shim();
    var strip =
        most.onlyIf(
                most.isAtLeast(stays),
                "shim_in, the most that a shim strip makes up, is less than leave_in, the most that is left alone;"
                    + " 1/8 and 3/8 are usual")
            .as("most_shim_in", Units.INCH);
    var isTruss = truss.choice().argument("truss");

    var allowed = WhatTrussesAllow.of(isTruss);
    var high = high(height, stays, allowed.whereHigh()).as("high_part");
    var shallow = shallow(height, stays, high).as("up_to_shim");
    return low(height, strip, allowed.whereDeep(), shallow).as("action", Source.COMMON_PRACTICE);
  }

  /** What is done where the wood stands high. */
  static Choice<LevelAction> high(
      Figure<Length> least, Figure<Length> leave, Choice<LevelAction> crown) {
    return Choice.choose(least.isLessThan(NO_HEIGHT.minus(leave)), crown, LevelAction.LEAVE);
  }

  /** What is done where the wood is low by no more than a strip makes up. */
  static Choice<LevelAction> shallow(
      Figure<Length> greatest, Figure<Length> leave, Choice<LevelAction> high) {
    return Choice.choose(greatest.isMoreThan(leave), LevelAction.SHIM, high);
  }

  /** What is done at last. */
  static Choice<LevelAction> low(
      Figure<Length> greatest,
      Figure<Length> shim,
      Choice<LevelAction> deep,
      Choice<LevelAction> shallow) {
    return Choice.choose(greatest.isMoreThan(shim), deep, shallow);
  }
}
