package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;

/**
 * What is bought for one foot of work, such as blocking, at the yard's prices before tax.
 *
 * @param material a foot of the stick; 0 where nothing is bought
 * @param nails nails in each foot
 * @param nailPrice one nail
 */
public record FootMaterial(
    @Column(value = "material_usd", unit = "$/ft", least = 0, most = 1000, rule = "before tax")
        Figure<Per<Money, Length>> material,
    @Column(
            value = "nails",
            unit = "nails/ft",
            least = 0,
            most = 500,
            rule = "2 is usual for a block")
        Figure<Per<Nails, Length>> nails,
    @Column(
            value = "nail_usd",
            unit = "$/nail",
            least = 0,
            most = 5,
            rule = "one nail, not a box",
            symbol = "nail price")
        Figure<Per<Money, Nails>> nailPrice) {

  private static final Columns COLUMNS = Columns.of(FootMaterial.class);

  public FootMaterial {
    material = COLUMNS.let("material", material);
    nails = COLUMNS.let("nails", nails);
    nailPrice = COLUMNS.let("nailPrice", nailPrice);
  }

  /** A foot at this price; its nails are still to be said. */
  public static FootMaterial foot(Figure<Per<Money, Length>> price) {
    return new FootMaterial(price, null, null);
  }

  /** Nails in each foot, and what one costs. */
  public FootMaterial nails(Figure<Per<Nails, Length>> count, Figure<Per<Money, Nails>> price) {
    return new FootMaterial(material, count, price);
  }
}
