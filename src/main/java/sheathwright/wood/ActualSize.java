package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;

/**
 * What a stick really measures beside its nominal size: by how it came to that size, or by rule.
 *
 * @param stock how it came to its size, which says what it measures; ripped stock is refused
 * @param thickness as measured; 0 takes what the stock says
 * @param depth as measured; 0 takes what the stock says
 */
public record ActualSize(
    @Column(value = "stock", preset = "dressed") OneOf<Stock> stock,
    @Column(
            value = "thickness_in",
            preset = "0",
            least = 0,
            most = 6,
            rule = "by rule; 0 takes the stock's")
        Figure<Length> thickness,
    @Column(
            value = "depth_in",
            preset = "0",
            least = 0,
            most = 24,
            rule = "by rule; 0 takes the stock's")
        Figure<Length> depth) {

  private static final Columns COLUMNS = Columns.of(ActualSize.class);

  public ActualSize {
    stock = COLUMNS.let("stock", stock);
    thickness = COLUMNS.let("thickness", thickness);
    depth = COLUMNS.let("depth", depth);
  }

  /** As stock of this kind measures. */
  public static ActualSize of(OneOf<Stock> stock) {
    return new ActualSize(stock, null, null);
  }

  public ActualSize thickness(Figure<Length> measured) {
    return new ActualSize(stock, measured, depth);
  }

  public ActualSize depth(Figure<Length> measured) {
    return new ActualSize(stock, thickness, measured);
  }
}
