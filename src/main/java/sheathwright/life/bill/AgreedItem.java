package sheathwright.life.bill;

import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.job.life.Item;

/**
 * What was agreed of one thing that is counted: its price, and how many of it are in the sum.
 *
 * @param item what it is
 * @param unit what it is counted in; of a sheet, the bill rule
 * @param price of one of them
 * @param included so many are in the agreed sum
 * @param credit what comes back for each of those that is not needed
 * @param most no more than so many are counted, if that was agreed
 * @param words as they were agreed
 */
public record AgreedItem(
    Item item,
    String unit,
    Figure<Money> price,
    Figure<Ratio> included,
    Figure<Money> credit,
    Optional<Figure<Ratio>> most,
    String words) {

  /** What got its price after the agreement: none of it is in the agreed sum. */
  static AgreedItem since(Item item, Figure<Money> price) {
    return new AgreedItem(
        item,
        item.unit(),
        price,
        OrderLine.NONE,
        OrderLine.NOTHING,
        Optional.empty(),
        item.label());
  }

  /** The same with another ceiling, if one is given. */
  AgreedItem upTo(Optional<Figure<Ratio>> ceiling) {
    return new AgreedItem(item, unit, price, included, credit, ceiling.or(() -> most), words);
  }

  /** So many, or the most that was agreed. */
  Figure<Ratio> counted(Figure<Ratio> found) {
    return most.map(found::min).orElse(found);
  }
}
