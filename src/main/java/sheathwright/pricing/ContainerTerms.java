package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;

/**
 * What a hauler asks for containers.
 *
 * @param tons that the price of one holds
 * @param price of one
 * @param over each ton more
 */
public record ContainerTerms(
    @Column(
            value = "container_tons",
            unit = "ton",
            least = 0.1,
            most = 50,
            rule = "what one container's price holds, 4 for instance")
        Figure<Force> tons,
    @Column(
            value = "container_usd",
            unit = "$/piece",
            least = 0,
            most = 10_000,
            rule = "one container, 465 for instance")
        Figure<Per<Money, Pieces>> price,
    @Column(
            value = "over_usd_per_ton",
            least = 0,
            most = 2_000,
            rule = "each ton more, 82 for instance")
        Figure<Per<Money, Force>> over) {

  private static final Columns COLUMNS = Columns.of(ContainerTerms.class);

  public ContainerTerms {
    tons = COLUMNS.let("tons", tons);
    price = COLUMNS.let("price", price);
    over = COLUMNS.let("over", over);
  }

  /** A container that holds so much for its price; the prices are still to be said. */
  public static ContainerTerms tons(Figure<Force> each) {
    return new ContainerTerms(each, null, null);
  }

  public ContainerTerms price(Figure<Per<Money, Pieces>> one) {
    return new ContainerTerms(tons, one, over);
  }

  public ContainerTerms over(Figure<Per<Money, Force>> ton) {
    return new ContainerTerms(tons, price, ton);
  }
}
