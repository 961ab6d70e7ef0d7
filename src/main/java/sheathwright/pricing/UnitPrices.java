package sheathwright.pricing;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** Unit prices, built up in the open. */
public final class UnitPrices {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private static final Limits HOURS = Limits.between(0, 40, "labor-hours for one");

  private UnitPrices() {}

  /**
   * What one sheet costs to take out and replace, and what it sells for.
   *
   * <pre>
   * direct = (sheet × (1 + waste) + nails × nail price + extras) × (1 + tax) + hours × wage + disposal
   * exact  = direct × (1 + overhead) ÷ (1 − margin)
   * quoted = exact, up to a whole dollar
   * </pre>
   *
   * <p>Does not cover tax on labor, minimum charges, or a second trip. Margin is a share of the
   * price, not a markup on cost: 12 % of margin is 13.64 % of markup.
   *
   * <pre>{@code
   * sheetUnitPrice(SheetMaterial.sheet(usdPerSheet(38.50)).waste(pct(5)).nails(nailsPerSheet(43), usdPerNail(0.02)), hoursPerSheet(0.90), Disposal.of(lbPerSheet(45), usdPerTon(78)), Rates.labor(usdPerHour(46)).tax(pct(6.5)).overhead(pct(18)).margin(pct(12))).quoted() // $117.00/sheet
   * }</pre>
   *
   * @param material what is bought for one sheet
   * @param hours labor for each sheet, 0 h to 40 h
   * @param disposal of the old sheet
   * @param rates what the office charges by
   * @return direct cost, exact price, and price up to a whole dollar, each for one sheet
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction(words = {"quote", "bid", "labor", "markup", "sheet price"})
  public static UnitPrice sheetUnitPrice(
      SheetMaterial material,
      @Column(value = "hours", unit = "h/sheet") Figure<Per<Time, Sheets>> hours,
      Disposal disposal,
      Rates rates) {
    var time = hours.within("hours", Units.HOURS_PER_SHEET, HOURS);

    var bought =
        material
            .sheet()
            .times(ONE.plus(material.waste()))
            .in(Units.USD_PER_SHEET)
            .plus(material.nails().times(material.nailPrice()))
            .plus(material.extras())
            .as("material_usd", Units.USD_PER_SHEET);
    var dumped = disposal.weight().times(disposal.fee()).as("disposal_usd", Units.USD_PER_SHEET);
    var direct =
        rates
            .taxed(bought)
            .plus(time.times(rates.labor()))
            .plus(dumped)
            .as("direct_usd", Units.USD_PER_SHEET);
    var exact = rates.sellingPrice(direct);
    return new UnitPrice(direct, exact, upToADollar(exact));
  }

  /**
   * What one piece of lumber costs to put in, such as a sister or a shim, and what it sells for.
   *
   * <pre>
   * direct = (material + nails × nail price) × (1 + tax) + hours × wage
   * exact  = direct × (1 + overhead) ÷ (1 − margin)
   * quoted = exact, up to a whole dollar
   * </pre>
   *
   * <p>Does not cover tax on labor, minimum charges, disposal, or work that an engineer asks for
   * besides.
   *
   * <pre>{@code
   * pieceUnitPrice(PieceMaterial.piece(usdPerPiece(17.10)).nails(nailsPerPiece(26), usdPerNail(0.026)), hoursPerPiece(1.5), Rates.labor(usdPerHour(46)).tax(pct(6.5)).overhead(pct(18)).margin(pct(12))).quoted() // $118.00/piece
   * }</pre>
   *
   * @param material what is bought for one piece
   * @param hours labor for each piece, 0 h to 40 h
   * @param rates what the office charges by
   * @return direct cost, exact price, and price up to a whole dollar, each for one piece
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction(words = {"quote", "bid", "labor", "markup", "sister price"})
  public static PiecePrice pieceUnitPrice(
      PieceMaterial material,
      @Column(value = "hours", unit = "h/piece") Figure<Per<Time, Pieces>> hours,
      Rates rates) {
    var time = hours.within("hours", Units.HOURS_PER_PIECE, HOURS);

    var bought = material.material().plus(material.nails().times(material.nailPrice()));
    var direct =
        rates.taxed(bought).plus(time.times(rates.labor())).as("direct_usd", Units.USD_PER_PIECE);
    var exact = rates.sellingPrice(direct);
    return new PiecePrice(direct, exact, upToADollar(exact));
  }

  /**
   * What one foot of work costs, such as blocking an edge or sawing a tight joint, and what it
   * sells for.
   *
   * <pre>
   * direct = (material + nails × nail price) × (1 + tax) + hours × wage
   * exact  = direct × (1 + overhead) ÷ (1 − margin)
   * quoted = exact, up to the next multiple of the step
   * </pre>
   *
   * <p>Does not cover tax on labor, minimum charges, or a trip of its own.
   *
   * <pre>{@code
   * footUnitPrice(FootMaterial.foot(usdPerFoot(0.5125)).nails(nailsPerFoot(2), usdPerNail(0.026)), hoursPerFoot(0.05), Rates.labor(usdPerHour(46)).tax(pct(6.5)).overhead(pct(18)).margin(pct(12)), usdPerFoot(0.05)).quoted() // $3.90/ft
   * }</pre>
   *
   * @param material what is bought for one foot
   * @param hours labor for each foot, 0 h to 40 h
   * @param rates what the office charges by
   * @param step the price is a multiple of it, 0.01 $/ft to 10 $/ft
   * @return direct cost, exact price, and price up to the next step, each for one foot
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source"
   */
  @LibraryFunction(words = {"quote", "bid", "labor", "markup", "blocking price", "price per foot"})
  public static FootPrice footUnitPrice(
      FootMaterial material,
      @Column(value = "hours", unit = "h/ft") Figure<Per<Time, Length>> hours,
      Rates rates,
      @Column(value = "round_usd", unit = "$/ft", preset = "0.05")
          Figure<Per<Money, Length>> step) {
    var time = hours.within("hours", Units.HOURS_PER_FOOT, HOURS);
    var upTo =
        step.within(
            "round_usd",
            Units.USD_PER_FOOT,
            Limits.between(0.01, 10, "prices by the foot are often in steps of 0.05"));

    var bought = material.material().plus(material.nails().times(material.nailPrice()));
    var direct =
        rates.taxed(bought).plus(time.times(rates.labor())).as("direct_usd", Units.USD_PER_FOOT);
    var exact = rates.sellingPrice(direct);
    var quoted =
        exact
            .roundedUpTo(upTo)
            .toCents()
            .as("quoted_usd", Units.USD_PER_FOOT, Source.COMMON_PRACTICE);
    return new FootPrice(direct, exact, quoted);
  }

  private static <Q extends Quantity> Figure<Q> upToADollar(Figure<Q> exact) {
    return exact.roundedUp().as("quoted_usd", exact.unit(), Source.COMMON_PRACTICE);
  }
}
