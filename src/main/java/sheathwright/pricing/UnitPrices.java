package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Unit prices, built up in the open. */
public final class UnitPrices {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private static final Limits NAIL_COUNT = Limits.between(0, 500, "whole nails");
  private static final Limits NAIL_PRICE = Limits.between(0, 5, "one nail, not a box");
  private static final Limits TAX = Limits.between(0, 30, "write 6.5 for 6.5 %");
  private static final Limits HOURS = Limits.between(0, 40, "labour-hours for one");
  private static final Limits LABOUR = Limits.between(0, 500, "with taxes and insurance");
  private static final Limits OVERHEAD =
      Limits.between(0, 200, "on direct cost; write 18 for 18 %");
  private static final Limits MARGIN = Limits.between(0, 90, "of the price; write 12 for 12 %");

  private UnitPrices() {}

  /**
   * What one sheet costs to take out and replace, and what it sells for.
   *
   * <pre>
   * direct = (sheet × (1 + waste) + nails × nail price + extras) × (1 + tax) + hours × labour + disposal
   * exact  = direct × (1 + overhead) ÷ (1 − margin)
   * quoted = exact, up to a whole dollar
   * </pre>
   *
   * <p>Does not cover tax on labour, minimum charges, or a second trip. Margin is a share of the
   * price, not a markup on cost: 12 % of margin is 13.64 % of markup.
   *
   * <pre>{@code
   * sheetUnitPrice(usdPerSheet(38.50), pct(5), nailsPerSheet(43), usdPerNail(0.02), pct(6.5), hoursPerSheet(0.90), usdPerHour(46), lbPerSheet(45), usdPerTon(78), pct(18), pct(12), usdPerSheet(0)).quoted() // $117.00/sheet
   * }</pre>
   *
   * @param sheet one sheet at the yard, before tax, 0 $/sheet to 1000 $/sheet
   * @param waste share of sheets lost to cuts and breakage, 0 % to 100 %
   * @param nails nails in each sheet, 0 to 500
   * @param nailPrice one nail before tax, 0 $/nail to 5 $/nail
   * @param tax sales tax on material, 0 % to 30 %
   * @param hours labour for each sheet, 0 h to 40 h
   * @param labour one hour with its burden, 0 $/h to 500 $/h
   * @param disposal weight of the old sheet, 0 lb to 500 lb
   * @param disposalPrice one ton at the tip, 0 $/ton to 2000 $/ton
   * @param overhead on direct cost, 0 % to 200 %
   * @param margin share of the price that is kept, 0 % to 90 %
   * @param extras other taxed material for each sheet, such as clips, 0 $/sheet to 1000 $/sheet
   * @return direct cost, exact price, and price up to a whole dollar, each for one sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction
  public static UnitPrice sheetUnitPrice(
      @Column(value = "sheet_usd", unit = "$/sheet") Figure<Per<Money, Sheets>> sheet,
      @Column("waste_pct") Figure<Ratio> waste,
      @Column(value = "nails", unit = "nails/sheet") Figure<Per<Nails, Sheets>> nails,
      @Column(value = "nail_usd", unit = "$/nail") Figure<Per<Money, Nails>> nailPrice,
      @Column("tax_pct") Figure<Ratio> tax,
      @Column(value = "hours", unit = "h/sheet") Figure<Per<Time, Sheets>> hours,
      @Column("labour_usd_per_h") Figure<Per<Money, Time>> labour,
      @Column(value = "disposal_lb", unit = "lb/sheet") Figure<Per<Force, Sheets>> disposal,
      @Column("disposal_usd_per_ton") Figure<Per<Money, Force>> disposalPrice,
      @Column("overhead_pct") Figure<Ratio> overhead,
      @Column("margin_pct") Figure<Ratio> margin,
      @Column(value = "extras_usd", unit = "$/sheet", preset = "0")
          Figure<Per<Money, Sheets>> extras) {
    var sheetCost =
        sheet.within("sheet_usd", Units.USD_PER_SHEET, Limits.between(0, 1000, "before tax"));
    var lost =
        waste.within(
            "waste_pct", Units.PERCENT, Limits.between(0, 100, "0 to 5 for scattered sheets"));
    var nailCount = nails.within("nails", Units.NAILS_PER_SHEET, NAIL_COUNT);
    var nailCost =
        nailPrice.within("nail_usd", Units.USD_PER_NAIL, NAIL_PRICE).symbol("nail price");
    var taxRate = tax.within("tax_pct", Units.PERCENT, TAX);
    var time = hours.within("hours", Units.HOURS_PER_SHEET, HOURS);
    var wage = labour.within("labour_usd_per_h", Units.USD_PER_HOUR, LABOUR).symbol("wage");
    var weight =
        disposal.within(
            "disposal_lb",
            Units.POUNDS_PER_SHEET,
            Limits.between(0, 500, "about 45 for a half-inch sheet"));
    var tip =
        disposalPrice
            .within(
                "disposal_usd_per_ton",
                Units.USD_PER_TON,
                Limits.between(0, 2000, "a ton of 2,000 lb"))
            .symbol("price of the tip");
    var overheadRate = overhead.within("overhead_pct", Units.PERCENT, OVERHEAD);
    var marginRate = margin.within("margin_pct", Units.PERCENT, MARGIN);
    var other =
        extras.within(
            "extras_usd",
            Units.USD_PER_SHEET,
            Limits.between(0, 1000, "taxed material for one sheet"));

    var material =
        sheetCost
            .times(ONE.plus(lost))
            .in(Units.USD_PER_SHEET)
            .plus(nailCount.times(nailCost))
            .plus(other)
            .as("material_usd", Units.USD_PER_SHEET);
    var tipping = weight.times(tip).as("tipping_usd", Units.USD_PER_SHEET);
    var direct =
        material
            .times(ONE.plus(taxRate))
            .in(Units.USD_PER_SHEET)
            .plus(time.times(wage))
            .plus(tipping)
            .as("direct_usd", Units.USD_PER_SHEET);
    var exact = sellingPrice(direct, overheadRate, marginRate);
    return new UnitPrice(direct, exact, upToADollar(exact));
  }

  /**
   * What one piece of lumber costs to put in, such as a sister or a shim, and what it sells for.
   *
   * <pre>
   * direct = (material + nails × nail price) × (1 + tax) + hours × labour
   * exact  = direct × (1 + overhead) ÷ (1 − margin)
   * quoted = exact, up to a whole dollar
   * </pre>
   *
   * <p>Does not cover tax on labour, minimum charges, disposal, or work that an engineer asks for
   * besides.
   *
   * <pre>{@code
   * pieceUnitPrice(usdPerPiece(17.10), nailsPerPiece(26), usdPerNail(0.026), pct(6.5), hoursPerPiece(1.5), usdPerHour(46), pct(18), pct(12)).quoted() // $118.00/piece
   * }</pre>
   *
   * @param material the stick or shim at the yard, before tax, 0 $/piece to 1000 $/piece
   * @param nails nails in each piece, 0 to 500
   * @param nailPrice one nail before tax, 0 $/nail to 5 $/nail
   * @param tax sales tax on material, 0 % to 30 %
   * @param hours labour for each piece, 0 h to 40 h
   * @param labour one hour with its burden, 0 $/h to 500 $/h
   * @param overhead on direct cost, 0 % to 200 %
   * @param margin share of the price that is kept, 0 % to 90 %
   * @return direct cost, exact price, and price up to a whole dollar, each for one piece
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction
  public static PiecePrice pieceUnitPrice(
      @Column(value = "material_usd", unit = "$/piece") Figure<Per<Money, Pieces>> material,
      @Column(value = "nails", unit = "nails/piece") Figure<Per<Nails, Pieces>> nails,
      @Column(value = "nail_usd", unit = "$/nail") Figure<Per<Money, Nails>> nailPrice,
      @Column("tax_pct") Figure<Ratio> tax,
      @Column(value = "hours", unit = "h/piece") Figure<Per<Time, Pieces>> hours,
      @Column("labour_usd_per_h") Figure<Per<Money, Time>> labour,
      @Column("overhead_pct") Figure<Ratio> overhead,
      @Column("margin_pct") Figure<Ratio> margin) {
    var stick =
        material.within("material_usd", Units.USD_PER_PIECE, Limits.between(0, 1000, "before tax"));
    var nailCount = nails.within("nails", Units.NAILS_PER_PIECE, NAIL_COUNT);
    var nailCost =
        nailPrice.within("nail_usd", Units.USD_PER_NAIL, NAIL_PRICE).symbol("nail price");
    var taxRate = tax.within("tax_pct", Units.PERCENT, TAX);
    var time = hours.within("hours", Units.HOURS_PER_PIECE, HOURS);
    var wage = labour.within("labour_usd_per_h", Units.USD_PER_HOUR, LABOUR).symbol("wage");
    var overheadRate = overhead.within("overhead_pct", Units.PERCENT, OVERHEAD);
    var marginRate = margin.within("margin_pct", Units.PERCENT, MARGIN);

    var direct =
        stick
            .plus(nailCount.times(nailCost))
            .times(ONE.plus(taxRate))
            .in(Units.USD_PER_PIECE)
            .plus(time.times(wage))
            .as("direct_usd", Units.USD_PER_PIECE);
    var exact = sellingPrice(direct, overheadRate, marginRate);
    return new PiecePrice(direct, exact, upToADollar(exact));
  }

  private static <Q extends Quantity> Figure<Q> sellingPrice(
      Figure<Q> direct, Figure<Ratio> overhead, Figure<Ratio> margin) {
    return direct
        .times(ONE.plus(overhead))
        .dividedBy(ONE.minus(margin))
        .as("exact_usd", direct.unit(), Source.COMMON_PRACTICE);
  }

  private static <Q extends Quantity> Figure<Q> upToADollar(Figure<Q> exact) {
    return exact.roundedUp().as("quoted_usd", exact.unit(), Source.COMMON_PRACTICE);
  }
}
