package sheathwright.fastening.strength;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.wood.Nds;

/**
 * A nail as it is driven through a panel.
 *
 * @param diameter D of the shank
 * @param length of the nail
 * @param head diameter D_H of a round head
 * @param shank smooth, ring or stainless
 * @param rings length of the ringed part; matters for a ring shank only
 */
public record Nail(
    @Column(
            value = "diameter_in",
            least = Nds.LEAST_NAIL_IN,
            most = Nds.MOST_NAIL_IN,
            rule = Nds.NAIL_RULE,
            symbol = "D")
        Figure<Length> diameter,
    @Column(
            value = "length_in",
            least = 0.5,
            most = 16,
            rule = "an 8d common has 2-1/2",
            symbol = "L")
        Figure<Length> length,
    @Column(
            value = "head_diameter_in",
            least = 0.1,
            most = 1,
            rule = "0.281 is usual",
            symbol = "D_H")
        Figure<Length> head,
    @Column("shank") OneOf<Shank> shank,
    @Column(
            value = "rings_in",
            preset = "1.5",
            least = 0,
            most = 8,
            rule = "1-1/2 for sheathing nails")
        Figure<Length> rings) {

  private static final Columns COLUMNS = Columns.of(Nail.class);

  public Nail {
    diameter = COLUMNS.let("diameter", diameter);
    length = COLUMNS.let("length", length);
    head = COLUMNS.let("head", head);
    shank = COLUMNS.let("shank", shank);
    rings = COLUMNS.let("rings", rings);
  }

  /** A nail with this shank; its measures are still to be said. */
  public static Nail shank(OneOf<Shank> kind) {
    return new Nail(null, null, null, kind, null);
  }

  public Nail diameter(Figure<Length> across) {
    return new Nail(across, length, head, shank, rings);
  }

  public Nail length(Figure<Length> overall) {
    return new Nail(diameter, overall, head, shank, rings);
  }

  public Nail head(Figure<Length> across) {
    return new Nail(diameter, length, across, shank, rings);
  }

  public Nail rings(Figure<Length> ringed) {
    return new Nail(diameter, length, head, shank, ringed);
  }
}
