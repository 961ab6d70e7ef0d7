package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;

/**
 * An old rafter at its support.
 *
 * @param section as measured
 * @param end its seat cut, and the shear and bearing that its wood is allowed there
 */
public record SeatedRafter(MeasuredRafter section, PlyEnd end) {

  public SeatedRafter {
    section = Objects.requireNonNullElseGet(section, () -> new MeasuredRafter(null, null));
    end = Objects.requireNonNullElseGet(end, () -> new PlyEnd(null, null, null));
  }

  /** A rafter of this depth without a notch; its values are still to be said. */
  public static SeatedRafter depth(Figure<Length> measured) {
    return new SeatedRafter(MeasuredRafter.depth(measured), null);
  }

  public SeatedRafter thickness(Figure<Length> measured) {
    return new SeatedRafter(section.thickness(measured), end);
  }

  public SeatedRafter notch(Figure<Length> deep) {
    return new SeatedRafter(section, end.notch(deep));
  }

  public SeatedRafter shear(Figure<Stress> adjusted) {
    return new SeatedRafter(section, end.shear(adjusted));
  }

  public SeatedRafter bearing(Figure<Stress> adjusted) {
    return new SeatedRafter(section, end.bearing(adjusted));
  }
}
