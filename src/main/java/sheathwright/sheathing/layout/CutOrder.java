package sheathwright.sheathing.layout;

import java.util.List;
import java.util.stream.DoubleStream;
import sheathwright.cutting.CommonUnit;
import sheathwright.cutting.sheet.Offcut;
import sheathwright.cutting.sheet.SheetOrder;
import sheathwright.cutting.sheet.SheetPiece;

/**
 * Inches made whole numbers for the search, so that what fits exactly is seen to fit.
 *
 * @param order in units
 * @param unit how long one is
 */
public record CutOrder(SheetOrder order, CommonUnit unit) {

  /**
   * An order of pieces.
   *
   * @param sheet what is bought
   * @param onHand offcuts, used before a sheet is bought
   * @param kerf inches of saw cut between neighbors
   */
  public static CutOrder of(
      StockSheet sheet, List<StockSheet> onHand, double kerf, List<CutPiece> pieces) {
    CommonUnit unit = CommonUnit.of(lengths(sheet, onHand, kerf, pieces));
    SheetOrder order =
        new SheetOrder(
            unit.units(sheet.width()),
            unit.units(sheet.height()),
            onHand.stream()
                .map(each -> new Offcut(unit.units(each.width()), unit.units(each.height()), 1))
                .toList(),
            pieces.stream()
                .map(
                    each ->
                        new SheetPiece(
                            unit.units(each.width()), unit.units(each.height()), each.count()))
                .toList(),
            unit.units(kerf));
    return new CutOrder(order, unit);
  }

  private static double[] lengths(
      StockSheet sheet, List<StockSheet> onHand, double kerf, List<CutPiece> pieces) {
    DoubleStream fixed = DoubleStream.of(sheet.width(), sheet.height(), kerf);
    DoubleStream stock =
        onHand.stream().flatMapToDouble(each -> DoubleStream.of(each.width(), each.height()));
    DoubleStream wanted =
        pieces.stream().flatMapToDouble(each -> DoubleStream.of(each.width(), each.height()));
    return DoubleStream.concat(fixed, DoubleStream.concat(stock, wanted)).toArray();
  }
}
