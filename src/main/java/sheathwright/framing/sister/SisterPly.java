package sheathwright.framing.sister;

import java.util.Objects;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Stress;
import sheathwright.wood.LumberSize;

/**
 * A sister that is to bend beside an old rafter.
 *
 * @param ply its size and stiffness
 * @param bending that its wood is allowed
 */
public record SisterPly(Ply ply, BendingValue bending) {

  public SisterPly {
    ply = Objects.requireNonNullElseGet(ply, () -> new Ply(null, null));
    bending = Objects.requireNonNullElseGet(bending, () -> new BendingValue(null));
  }

  /** A sister of this size; its bending value is still to be said. */
  public static SisterPly size(OneOf<LumberSize> nominal) {
    return new SisterPly(Ply.size(nominal), null);
  }

  public SisterPly bending(Figure<Stress> adjusted) {
    return new SisterPly(ply, BendingValue.of(adjusted));
  }

  public SisterPly modulus(Figure<Stress> modulus) {
    return new SisterPly(ply.modulus(modulus), bending);
  }

  /** How it bends. */
  public BentPly bent() {
    return BentPly.of(ply.section(PlySection.SISTER), bending, ply.elasticity());
  }
}
