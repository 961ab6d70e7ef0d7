package sheathwright.workbook.paper;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.LaterOption;
import sheathwright.workbook.told.Told;

/**
 * What an option that the owner chose since he agreed comes to on a change order, as he can follow
 * it: so many at the price of the option.
 *
 * @param option that is asked for, or given back
 * @param quantity how many are asked for
 * @param price of one
 * @param amount what they come to
 */
record Chosen(
    LaterOption option, Figure<Ratio> quantity, Figure<Money> price, Figure<Money> amount) {

  /** An option. */
  static Chosen of(LaterOption option) {
    Figure<Ratio> quantity = Told.of(name(option) + "_ordered", option.now());
    Figure<Money> price = Told.of(name(option) + "_usd", option.each());
    Figure<Money> amount =
        quantity.times(price).in(Units.USD).toCents().as(name(option) + "_amount_usd", Units.USD);
    return new Chosen(option, quantity, price, amount);
  }

  private static String name(LaterOption option) {
    return "option_" + option.name().replaceAll("\\W", "_");
  }

  /** What its numbers are called in the file. */
  String name() {
    return name(option);
  }

  /** Why it is asked for, or given back. */
  String why() {
    return option.now().value() < 0
        ? "You gave it up; it was ordered before"
        : "You chose it on " + Moment.spoken(option.chosenOn());
  }

  /** The same in a sentence that says of what. */
  String sentence() {
    return "%s: %s.".formatted(why(), option.what());
  }
}
