package sheathwright.job.price;

import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Units;
import sheathwright.job.table.Field;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.Rates;
import sheathwright.pricing.SheetMaterial;

/** What material costs, and what the office reckons with. */
public final class OfficeFields {

  public static final Field<Figure<Per<Money, Sheets>>> SHEET_PRICE =
      Field.number("sheet", "Sheet", Units.USD_PER_SHEET, 0, 1_000).usually(5, 300);

  public static final Field<Figure<Per<Money, Nails>>> NAIL_PRICE =
      Field.number("nail", "Sheet nail", Units.USD_PER_NAIL, 0, 5).usually(0.001, 1);

  public static final Field<Figure<Per<Money, Sheets>>> SHEET_EXTRAS_PRICE =
      Field.number("sheet_extras", "Clips etc., per sheet", Units.USD_PER_SHEET, 0, 1_000)
          .ifKnown();

  public static final List<Field<?>> PRICES = List.of(SHEET_PRICE, NAIL_PRICE, SHEET_EXTRAS_PRICE);

  public static final Field<Figure<Per<Money, Nails>>> SISTER_NAIL_PRICE =
      Field.number("sister_nail", "Sister nail", Units.USD_PER_NAIL, 0, 5).usually(0.001, 1);

  public static final Field<Figure<Per<Money, Pieces>>> SHIM_PRICE =
      Field.number("shim", "Shims, per rafter", Units.USD_PER_PIECE, 0, 1_000).usually(0.01, 100);

  public static final List<Field<?>> SISTER_PRICES = List.of(SHIM_PRICE);

  /** Scabs and blocks take these nails too. */
  public static final List<Field<?>> SISTER_NAILS = List.of(SISTER_NAIL_PRICE);

  public static final Field<Figure<Per<Money, Time>>> LABOR =
      Field.<Figure<Per<Money, Time>>>of(Rates.class, "labor", "Labor rate, burdened")
          .usually(10, 250);

  public static final Field<Figure<Ratio>> OVERHEAD =
      Field.<Figure<Ratio>>of(Rates.class, "overhead", "Overhead on direct cost")
          .usuallyOrNone(1, 100);

  public static final Field<Figure<Ratio>> MARGIN =
      Field.<Figure<Ratio>>of(Rates.class, "margin", "Margin on the price").usually(3, 60);

  public static final Field<Figure<Ratio>> TAX =
      Field.<Figure<Ratio>>of(Rates.class, "tax", "Sales tax on material").usuallyOrNone(1, 15);

  public static final Field<Figure<Ratio>> WASTE =
      Field.<Figure<Ratio>>of(SheetMaterial.class, "waste", "Sheet waste, cuts and breakage")
          .usually(1, 50);

  public static final Field<Figure<Per<Money, Force>>> DISPOSAL =
      Field.<Figure<Per<Money, Force>>>of(Disposal.class, "fee", "Dump fee").usuallyOrNone(5, 500);

  public static final Field<Figure<Per<Force, Sheets>>> SHEET_DISPOSAL =
      Field.<Figure<Per<Force, Sheets>>>of(Disposal.class, "weight", "Old sheet")
          .named("sheet_disposal_lb")
          .usuallyOrNone(10, 150);

  public static final Field<Figure<Per<Time, Sheets>>> PLANNED_SHEET_HOURS =
      Field.number("planned_sheet_h", "Planned sheet", Units.HOURS_PER_SHEET, 0, 40)
          .usually(0.05, 8);

  public static final Field<Figure<Per<Time, Sheets>>> EXTRA_SHEET_HOURS =
      Field.number("extra_sheet_h", "Extra sheet, found on site", Units.HOURS_PER_SHEET, 0, 40)
          .usually(0.05, 8);

  public static final Field<Figure<Ratio>> ORDER_SPARE =
      Field.number("order_spare_pct", "Overage", Units.PERCENT, 0, 100).usuallyOrNone(1, 50);

  public static final Field<Figure<Nails>> NAILS_PER_BOX =
      Field.whole("nails_per_box", "Nails in a box", Units.NAIL, 1, 100_000).usually(50, 50_000);

  public static final List<Field<?>> RATES =
      List.of(
          LABOR,
          OVERHEAD,
          MARGIN,
          TAX,
          WASTE,
          DISPOSAL,
          SHEET_DISPOSAL,
          PLANNED_SHEET_HOURS,
          EXTRA_SHEET_HOURS,
          ORDER_SPARE,
          NAILS_PER_BOX);

  public static final Field<Figure<Per<Time, Pieces>>> SISTER_HOURS =
      Field.number("sister_h", "Sister", Units.HOURS_PER_PIECE, 0, 40).usually(0.05, 16);

  public static final Field<Figure<Per<Time, Pieces>>> SHIM_HOURS =
      Field.number("shim_h", "Shimmed rafter", Units.HOURS_PER_PIECE, 0, 40).usually(0.05, 8);

  public static final List<Field<?>> SISTER_RATES = List.of(SISTER_HOURS, SHIM_HOURS);

  private OfficeFields() {}
}
