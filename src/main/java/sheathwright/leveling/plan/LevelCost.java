package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * What a leveling plan costs before tax, and its hours: pieces times price, hours times wage.
 *
 * @param sticks for each rafter a one under the stick on sale that its sister is cut from, in the
 *     order of the prices
 * @param sisters for all sticks
 * @param shims for all strips
 * @param hours in all
 * @param labor for those
 * @param total of wood and labor
 */
public record LevelCost(
    Roll sticks,
    Figure<Money> sisters,
    Figure<Money> shims,
    Figure<Time> hours,
    Figure<Money> labor,
    Figure<Money> total) {

  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);

  /** The cost of a plan, every sister out of a stick of its own. */
  public static LevelCost of(LevelPlan plan, LevelPrices prices) {
    String plane = plan.plane();
    LevelTotals totals = plan.totals();
    Roll sticks = sticks(plan, prices.sticks());
    Figure<Money> sisters = sisters(plan, prices.sticks(), sticks);
    Figure<Money> shims =
        totals
            .shims()
            .times(prices.shim())
            .as("shims_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC);
    Figure<Time> hours =
        totals
            .sisters()
            .times(prices.sisterHours())
            .plus(totals.shims().times(prices.shimHours()))
            .as("leveling_of_" + plane + "_h", Units.HOUR, Source.ARITHMETIC);
    Figure<Money> labor =
        hours
            .times(prices.wage())
            .as("leveling_labor_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC);
    return new LevelCost(
        sticks,
        sisters,
        shims,
        hours,
        labor,
        sisters
            .plus(shims)
            .plus(labor)
            .as("leveling_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC));
  }

  /** For each rafter a one under the stick that its sister is cut from. */
  private static Roll sticks(LevelPlan plan, List<LevelPrices.Stick> onSale) {
    List<Roll.Column<PlannedRafter>> columns = new ArrayList<>();
    columns.add(Roll.column("rafter", each -> Choice.literal(each.rafter())));
    columns.add(Roll.column("stock_ft", each -> each.sister().stock()));
    for (int i = 0; i < onSale.size(); i++) {
      Figure<Length> stock = onSale.get(i).stock();
      columns.add(
          Roll.column(
              column(i),
              each ->
                  Figure.choose(
                      each.sister().stock().isTheSameAs(stock), each.sister().pieces(), NONE)));
    }
    return Roll.of(
        "sister_sticks_of_" + plan.plane(), "the sticks for sisters", plan.rafters(), columns);
  }

  private static String column(int stick) {
    return "stick_" + (stick + 1);
  }

  private static Figure<Money> sisters(
      LevelPlan plan, List<LevelPrices.Stick> onSale, Roll sticks) {
    Figure<Money> cost = Figure.of(0, Units.USD);
    Figure<Pieces> priced = NONE;
    for (int i = 0; i < onSale.size(); i++) {
      String name = column(i) + "_of_" + plan.plane();
      Figure<Pieces> count = sticks.sum(column(i), Units.PIECE).as(name, Units.PIECE);
      priced = priced.plus(count).as(name + "_and_before", Units.PIECE);
      cost = cost.plus(count.times(onSale.get(i).price())).as(name + "_usd", Units.USD);
    }
    return cost.onlyIf(
            priced.isAtLeast(plan.totals().sisters()),
            "not every stick has a price; give one for each length that the sisters need")
        .as("sisters_of_" + plan.plane() + "_usd", Units.USD, Source.ARITHMETIC);
  }
}
