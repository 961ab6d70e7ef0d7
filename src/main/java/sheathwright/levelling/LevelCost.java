package sheathwright.levelling;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * What a levelling plan costs before tax, and its hours: pieces times price, hours times wage.
 *
 * @param sisters for all sticks
 * @param shims for all strips
 * @param hours in all
 * @param labour for those
 * @param total of wood and labour
 */
public record LevelCost(
    Figure<Money> sisters,
    Figure<Money> shims,
    Figure<Time> hours,
    Figure<Money> labour,
    Figure<Money> total) {

  /** The cost of a plan, every sister out of a stick of its own. */
  public static LevelCost of(LevelPlan plan, LevelPrices prices) {
    String plane = plan.plane();
    LevelTotals totals = plan.totals();
    Figure<Money> sisters =
        totals
            .sisters()
            .times(prices.sister())
            .as("sisters_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC);
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
            .as("levelling_of_" + plane + "_h", Units.HOUR, Source.ARITHMETIC);
    Figure<Money> labour =
        hours
            .times(prices.wage())
            .as("levelling_labour_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC);
    return new LevelCost(
        sisters,
        shims,
        hours,
        labour,
        sisters
            .plus(shims)
            .plus(labour)
            .as("levelling_of_" + plane + "_usd", Units.USD, Source.ARITHMETIC));
  }
}
