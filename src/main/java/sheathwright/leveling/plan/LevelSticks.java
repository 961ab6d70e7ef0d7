package sheathwright.leveling.plan;

import java.util.List;
import java.util.stream.DoubleStream;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.stick.StickOrder;
import sheathwright.cutting.stick.StickPiece;
import sheathwright.cutting.stick.StockLength;

/**
 * Pieces of a leveling plan as an order of sticks to cut.
 *
 * @param order for {@link sheathwright.cutting.stick.StickCutting}, its pieces in the order of the
 *     list
 * @param unit turns the order's whole numbers back into inches
 * @param pieces with their labels
 */
public record LevelSticks(StickOrder order, CommonUnit unit, List<LevelPiece> pieces) {

  /** To the dollar: the search counts whole numbers. */
  private static final double CENTS = 100;

  /**
   * A stick on sale.
   *
   * @param feet long
   * @param dollars for one
   */
  public record OnSale(double feet, double dollars) {}

  /**
   * An order for pieces of one kind.
   *
   * @param pieces sisters or strips
   * @param onSale lengths and prices, any number of each
   * @param kerf inches of saw cut between neighbors
   */
  public static LevelSticks of(List<LevelPiece> pieces, List<OnSale> onSale, double kerf) {
    DoubleStream lengths =
        DoubleStream.concat(
            pieces.stream().mapToDouble(LevelPiece::inches),
            onSale.stream().mapToDouble(stick -> 12 * stick.feet()));
    CommonUnit unit = CommonUnit.of(DoubleStream.concat(DoubleStream.of(kerf), lengths).toArray());
    StickOrder order =
        new StickOrder(
            onSale.stream()
                .map(
                    stick ->
                        new StockLength(
                            unit.units(12 * stick.feet()),
                            Math.round(CENTS * stick.dollars()),
                            StockLength.ANY))
                .toList(),
            pieces.stream().map(piece -> new StickPiece(unit.units(piece.inches()), 1)).toList(),
            unit.units(kerf),
            0);
    return new LevelSticks(order, unit, List.copyOf(pieces));
  }
}
