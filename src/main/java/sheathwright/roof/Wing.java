package sheathwright.roof;

import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;

/**
 * A gabled wing at the front of a house, of the body's slope and eave height, in plan.
 *
 * @param at from the left corner of the front, as one looks up the slope, to the wing
 * @param width across the wing's ridge, eave edge to eave edge
 * @param out from the body's eave to the wing's gable
 */
public record Wing(
    @Column(value = "wing_at_ft", preset = "0", least = 0, most = 400, rule = "0 at the corner")
        Figure<Length> at,
    @Column(value = "wing_width_ft", preset = "0", least = 0, most = 190, rule = "0 without a wing")
        Figure<Length> width,
    @Column(value = "wing_out_ft", preset = "0", least = 0, most = 200, rule = "0 without a wing")
        Figure<Length> out) {

  private static final Columns COLUMNS = Columns.of(Wing.class);

  public Wing {
    at = COLUMNS.let("at", at);
    width = COLUMNS.let("width", width);
    out = COLUMNS.let("out", out);
  }

  /** No wing. */
  public static Wing none() {
    return new Wing(null, null, null);
  }

  /** A wing that begins so far from the left corner; its width and reach are still to be said. */
  public static Wing at(Figure<Length> fromTheCorner) {
    return new Wing(fromTheCorner, null, null);
  }

  public Wing width(Figure<Length> acrossItsRidge) {
    return new Wing(at, acrossItsRidge, out);
  }

  public Wing out(Figure<Length> fromTheEave) {
    return new Wing(at, width, fromTheEave);
  }
}
