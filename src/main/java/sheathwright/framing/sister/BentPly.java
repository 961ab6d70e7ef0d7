package sheathwright.framing.sister;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Stiffness;

/**
 * One of two pieces that bend side by side.
 *
 * @param stiffness E I
 * @param capacity the moment at which its bending value is used up
 */
public record BentPly(Figure<Stiffness> stiffness, Figure<Moment> capacity) {

  static BentPly of(PlySection section, BendingValue bending, Elasticity elasticity) {
    return new BentPly(section.stiffness(elasticity), section.capacity(bending));
  }
}
