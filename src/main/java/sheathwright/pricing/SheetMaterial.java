package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;

/**
 * What is bought to replace one sheet, at the yard's prices before tax.
 *
 * @param sheet one sheet
 * @param waste share of sheets lost to cuts and breakage
 * @param nails nails in each sheet
 * @param nailPrice one nail
 * @param extras other material for each sheet, such as clips
 */
public record SheetMaterial(
    @Column(value = "sheet_usd", unit = "$/sheet", least = 0, most = 1000, rule = "before tax")
        Figure<Per<Money, Sheets>> sheet,
    @Column(value = "waste_pct", least = 0, most = 100, rule = "0 to 5 for scattered sheets")
        Figure<Ratio> waste,
    @Column(value = "nails", unit = "nails/sheet", least = 0, most = 500, rule = "whole nails")
        Figure<Per<Nails, Sheets>> nails,
    @Column(
            value = "nail_usd",
            unit = "$/nail",
            least = 0,
            most = 5,
            rule = "one nail, not a box",
            symbol = "nail price")
        Figure<Per<Money, Nails>> nailPrice,
    @Column(
            value = "extras_usd",
            unit = "$/sheet",
            preset = "0",
            least = 0,
            most = 1000,
            rule = "taxed material for one sheet")
        Figure<Per<Money, Sheets>> extras) {

  private static final Columns COLUMNS = Columns.of(SheetMaterial.class);

  public SheetMaterial {
    sheet = COLUMNS.let("sheet", sheet);
    waste = COLUMNS.let("waste", waste);
    nails = COLUMNS.let("nails", nails);
    nailPrice = COLUMNS.let("nailPrice", nailPrice);
    extras = COLUMNS.let("extras", extras);
  }

  /** A sheet at this price; its waste and nails are still to be said. */
  public static SheetMaterial sheet(Figure<Per<Money, Sheets>> price) {
    return new SheetMaterial(price, null, null, null, null);
  }

  public SheetMaterial waste(Figure<Ratio> share) {
    return new SheetMaterial(sheet, share, nails, nailPrice, extras);
  }

  /** Nails in each sheet, and what one costs. */
  public SheetMaterial nails(Figure<Per<Nails, Sheets>> count, Figure<Per<Money, Nails>> price) {
    return new SheetMaterial(sheet, waste, count, price, extras);
  }

  public SheetMaterial extras(Figure<Per<Money, Sheets>> price) {
    return new SheetMaterial(sheet, waste, nails, nailPrice, price);
  }
}
