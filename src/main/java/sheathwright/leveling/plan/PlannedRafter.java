package sheathwright.leveling.plan;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.Profile;

/**
 * What is done to one rafter.
 *
 * @param rafter its name
 * @param center from the plane's left edge
 * @param greatest build-up on it
 * @param least build-up on it, negative where it stands above the target
 * @param highPart what is done where it stands high: leave, plane or stop
 * @param upToShim what is done if no sister is needed: leave, shim, plane or stop
 * @param deepPart what is done where it is low by more than a strip makes up
 * @param action what is done: leave, shim, sister, plane or stop
 * @param sister that it gets
 * @param shims that it gets
 */
public record PlannedRafter(
    String rafter,
    Figure<Length> center,
    Figure<Length> greatest,
    Figure<Length> least,
    Choice<LevelAction> highPart,
    Choice<LevelAction> upToShim,
    Choice<LevelAction> deepPart,
    Choice<LevelAction> action,
    PlannedSister sister,
    PlannedShims shims) {

  private static final Figure<Pieces> ONE = Figure.of(1, Units.PIECE);
  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);

  static PlannedRafter of(
      LevelRafter rafter,
      LevelRules rules,
      WhatTrussesAllow allowed,
      SideBySide.Depths depths,
      BuildUpParts parts,
      Solution solution) {
    Profile profile = parts.profile();
    Figure<Length> greatest =
        solution.figure("greatest_in", profile.greatest(), Units.INCH, LevelPlan.FOUND);
    Figure<Length> least =
        solution.figure("least_in", profile.least(), Units.INCH, LevelPlan.FOUND);
    Choice<LevelAction> high =
        LevelActions.high(least, rules.leave(), allowed.whereHigh()).as("high_part");
    Choice<LevelAction> upToShim =
        LevelActions.shallow(greatest, rules.leave(), high).as("up_to_shim");
    Figure<Length> covered =
        solution.figure("covered_ft", parts.sisterLength() / 12, Units.FOOT, LevelPlan.FOUND);
    Choice<LevelAction> deep = // low beyond the bearings alone, where no sister lies
        Choice.choose(covered.isMoreThan(NO_LENGTH), allowed.whereDeep(), LevelAction.STOP)
            .as("deep_part");
    Choice<LevelAction> action =
        LevelActions.low(greatest, rules.shim(), deep, upToShim)
            .as("action", Source.COMMON_PRACTICE);
    return new PlannedRafter(
        rafter.buildUp().rafter(),
        rafter.buildUp().center(),
        greatest,
        least,
        high,
        upToShim,
        deep,
        action,
        PlannedSister.of(action, covered, greatest, depths, rules.sisters()),
        PlannedShims.of(action, parts, solution));
  }

  /** The columns of a list of them, each after those that it is made from. */
  static Roll roll(String plane, List<PlannedRafter> rafters) {
    return Roll.of(
        "leveling_of_" + plane,
        "the rafters",
        rafters,
        Roll.<PlannedRafter>column("rafter", each -> Choice.literal(each.rafter())),
        Roll.column("center_in", PlannedRafter::center),
        Roll.column("greatest_in", PlannedRafter::greatest),
        Roll.column("least_in", PlannedRafter::least),
        Roll.column("high_part", PlannedRafter::highPart),
        Roll.column("up_to_shim", PlannedRafter::upToShim),
        Roll.column("covered_ft", each -> each.sister().covered()),
        Roll.column("deep_part", PlannedRafter::deepPart),
        Roll.column("action", PlannedRafter::action),
        Roll.column("leaves", each -> each.counted(LevelAction.LEAVE)),
        Roll.column("planed", each -> each.countedHigh(LevelAction.PLANE)),
        Roll.column("stops", each -> each.counted(LevelAction.STOP)),
        Roll.column("high_stops", each -> each.countedHigh(LevelAction.STOP)),
        Roll.column("shimmed", each -> each.counted(LevelAction.SHIM)),
        Roll.column("sisters", each -> each.sister().pieces()),
        Roll.column("length_ft", each -> each.sister().length()),
        Roll.column("stock_wanted_ft", each -> each.sister().wanted()),
        Roll.column("stock_sold_ft", each -> each.sister().sold()),
        Roll.column("stock_ft", each -> each.sister().stock()),
        Roll.column("nails_wanted", each -> each.sister().nailsWanted()),
        Roll.column("nails_each", each -> each.sister().nails()),
        Roll.column(
            "nails", each -> each.sister().nails().times(each.sister().pieces()).in(Units.NAIL)),
        Roll.column("next_shorter_ft", each -> each.sister().shorter()),
        Roll.column("lacking_in", each -> each.sister().lacking()),
        Roll.column("near_miss_in", each -> each.sister().nearMiss()),
        Roll.column("lap_if_sistered_in", each -> each.sister().lapIfSistered()),
        Roll.column("lap_in", each -> each.sister().lap()),
        Roll.column("strips", each -> each.shims().strips()),
        Roll.column("strip_ft", each -> each.shims().stripLength()),
        Roll.column("strips_beside", each -> each.shims().besideStrips()),
        Roll.column("strip_beside_ft", each -> each.shims().besideLength()),
        Roll.column("shims_beside", each -> each.shims().ifSistered()),
        Roll.column("shims", each -> each.shims().pieces()),
        Roll.column("shim_beside_ft", each -> each.shims().lengthIfSistered()),
        Roll.column("shim_ft", each -> each.shims().length()));
  }

  @Override
  public String toString() {
    return "rafter %s: %s, if the first line of its plan allows it".formatted(rafter, action);
  }

  private Figure<Pieces> counted(LevelAction what) {
    return Figure.choose(action.is(what), ONE, NONE);
  }

  private Figure<Pieces> countedHigh(LevelAction what) {
    return Figure.choose(highPart.is(what), ONE, NONE);
  }
}
