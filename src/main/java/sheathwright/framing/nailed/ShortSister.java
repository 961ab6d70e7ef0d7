package sheathwright.framing.nailed;

import java.util.Objects;
import sheathwright.catalog.Column;
import sheathwright.catalog.Columns;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Units;
import sheathwright.framing.sister.PlySection;
import sheathwright.framing.sister.SisterPly;
import sheathwright.wood.LumberSize;

/**
 * A sister that ends short of the supports, centered.
 *
 * @param ply its size and wood
 * @param length measured as the span is
 */
public record ShortSister(
    SisterPly ply,
    @Column(
            value = "length_ft",
            least = 1,
            most = 40,
            rule = "measured as the span is, on the projection")
        Figure<Length> length) {

  private static final Columns COLUMNS = Columns.of(ShortSister.class);

  public ShortSister {
    ply = Objects.requireNonNullElseGet(ply, () -> new SisterPly(null, null));
    length = COLUMNS.let("length", length);
  }

  /** A sister of this size; its length and its bending value are still to be said. */
  public static ShortSister size(OneOf<LumberSize> nominal) {
    return new ShortSister(SisterPly.size(nominal), null);
  }

  public ShortSister length(Figure<Length> onProjection) {
    return new ShortSister(ply, onProjection);
  }

  public ShortSister bending(Figure<Stress> adjusted) {
    return new ShortSister(ply.bending(adjusted), length);
  }

  public ShortSister modulus(Figure<Stress> modulus) {
    return new ShortSister(ply.modulus(modulus), length);
  }

  /** A sister's length, whatever else is known of it, in inches. */
  static Figure<Length> inches(Figure<Length> length) {
    return COLUMNS
        .of(PlySection.SISTER)
        .let("length", length)
        .as("sister_length_in", Units.INCH)
        .symbol("l");
  }
}
