package sheathwright.framing.sister;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Units;
import sheathwright.wood.LumberSize;

/**
 * What a stick costs that is long enough for a sister, by its size; nothing where it is not sold.
 *
 * @param price2x4 of a 2x4
 * @param price2x6 of a 2x6
 * @param price2x8 of a 2x8
 * @param price2x10 of a 2x10
 * @param price2x12 of a 2x12
 */
public record StickPrices(
    @Column(
            value = "price_2x4_usd",
            unit = "$/piece",
            preset = "0",
            least = 0,
            most = StickPrices.MOST,
            rule = StickPrices.RULE)
        Figure<Per<Money, Pieces>> price2x4,
    @Column(
            value = "price_2x6_usd",
            unit = "$/piece",
            preset = "0",
            least = 0,
            most = StickPrices.MOST,
            rule = StickPrices.RULE)
        Figure<Per<Money, Pieces>> price2x6,
    @Column(
            value = "price_2x8_usd",
            unit = "$/piece",
            preset = "0",
            least = 0,
            most = StickPrices.MOST,
            rule = StickPrices.RULE)
        Figure<Per<Money, Pieces>> price2x8,
    @Column(
            value = "price_2x10_usd",
            unit = "$/piece",
            preset = "0",
            least = 0,
            most = StickPrices.MOST,
            rule = StickPrices.RULE)
        Figure<Per<Money, Pieces>> price2x10,
    @Column(
            value = "price_2x12_usd",
            unit = "$/piece",
            preset = "0",
            least = 0,
            most = StickPrices.MOST,
            rule = StickPrices.RULE)
        Figure<Per<Money, Pieces>> price2x12) {

  private static final double MOST = 1000;
  private static final String RULE = "per stick; 0 if it is not sold";
  private static final Columns COLUMNS = Columns.of(StickPrices.class);

  public StickPrices {
    price2x4 = COLUMNS.let("price2x4", price2x4);
    price2x6 = COLUMNS.let("price2x6", price2x6);
    price2x8 = COLUMNS.let("price2x8", price2x8);
    price2x10 = COLUMNS.let("price2x10", price2x10);
    price2x12 = COLUMNS.let("price2x12", price2x12);
  }

  /** A yard that sells nothing until a price is said. */
  public static StickPrices none() {
    return new StickPrices(null, null, null, null, null);
  }

  public StickPrices price2x4(Figure<Per<Money, Pieces>> stick) {
    return new StickPrices(stick, price2x6, price2x8, price2x10, price2x12);
  }

  public StickPrices price2x6(Figure<Per<Money, Pieces>> stick) {
    return new StickPrices(price2x4, stick, price2x8, price2x10, price2x12);
  }

  public StickPrices price2x8(Figure<Per<Money, Pieces>> stick) {
    return new StickPrices(price2x4, price2x6, stick, price2x10, price2x12);
  }

  public StickPrices price2x10(Figure<Per<Money, Pieces>> stick) {
    return new StickPrices(price2x4, price2x6, price2x8, stick, price2x12);
  }

  public StickPrices price2x12(Figure<Per<Money, Pieces>> stick) {
    return new StickPrices(price2x4, price2x6, price2x8, price2x10, stick);
  }

  /** The price of a stick of this size, under a name of its own. */
  Figure<Per<Money, Pieces>> of(LumberSize size) {
    Figure<Per<Money, Pieces>> price =
        switch (size) {
          case SIZE_2X4 -> price2x4;
          case SIZE_2X6 -> price2x6;
          case SIZE_2X8 -> price2x8;
          case SIZE_2X10 -> price2x10;
          case SIZE_2X12 -> price2x12;
        };
    return price
        .as("stick_" + size.word() + "_usd", Units.USD_PER_PIECE)
        .symbol("price of a " + size.word());
  }
}
