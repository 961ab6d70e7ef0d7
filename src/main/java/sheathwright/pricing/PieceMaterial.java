package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;

/**
 * What is bought to put in one piece of lumber, such as a sister or a shim, at the yard's prices
 * before tax.
 *
 * @param material the stick or shim
 * @param nails nails in each piece
 * @param nailPrice one nail
 */
public record PieceMaterial(
    @Column(value = "material_usd", unit = "$/piece", least = 0, most = 1000, rule = "before tax")
        Figure<Per<Money, Pieces>> material,
    @Column(value = "nails", unit = "nails/piece", least = 0, most = 500, rule = "whole nails")
        Figure<Per<Nails, Pieces>> nails,
    @Column(
            value = "nail_usd",
            unit = "$/nail",
            least = 0,
            most = 5,
            rule = "one nail, not a box",
            symbol = "nail price")
        Figure<Per<Money, Nails>> nailPrice) {

  private static final Columns COLUMNS = Columns.of(PieceMaterial.class);

  public PieceMaterial {
    material = COLUMNS.let("material", material);
    nails = COLUMNS.let("nails", nails);
    nailPrice = COLUMNS.let("nailPrice", nailPrice);
  }

  /** A piece at this price; its nails are still to be said. */
  public static PieceMaterial piece(Figure<Per<Money, Pieces>> price) {
    return new PieceMaterial(price, null, null);
  }

  /** Nails in each piece, and what one costs. */
  public PieceMaterial nails(Figure<Per<Nails, Pieces>> count, Figure<Per<Money, Nails>> price) {
    return new PieceMaterial(material, count, price);
  }
}
