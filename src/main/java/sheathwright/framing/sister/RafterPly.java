package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Stress;

/**
 * An old rafter that is to bend beside a sister: what it measures and what its wood may be asked.
 *
 * @param section as measured
 * @param bending that its wood is allowed
 * @param elasticity of its wood
 */
public record RafterPly(MeasuredRafter section, BendingValue bending, Elasticity elasticity) {

  public RafterPly {
    section = Objects.requireNonNullElseGet(section, () -> new MeasuredRafter(null, null));
    bending = Objects.requireNonNullElseGet(bending, () -> new BendingValue(null));
    elasticity = Objects.requireNonNullElseGet(elasticity, () -> new Elasticity(null));
  }

  /** A rafter of this depth; its bending value is still to be said. */
  public static RafterPly depth(Figure<Length> measured) {
    return new RafterPly(MeasuredRafter.depth(measured), null, null);
  }

  public RafterPly thickness(Figure<Length> measured) {
    return new RafterPly(section.thickness(measured), bending, elasticity);
  }

  public RafterPly bending(Figure<Stress> adjusted) {
    return new RafterPly(section, BendingValue.of(adjusted), elasticity);
  }

  public RafterPly modulus(Figure<Stress> modulus) {
    return new RafterPly(section, bending, Elasticity.of(modulus));
  }

  /** How it bends. */
  public BentPly bent() {
    return BentPly.of(section.section(), bending, elasticity);
  }
}
