package sheathwright.framing;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.YesNo;

/**
 * What is asked of a rafter against what it can give, four ways, and whether all four are within
 * it.
 */
public record RafterCheck(
    @Column("bending_ratio") Check bending,
    @Column("shear_ratio") Check shear,
    @Column("deflection_ratio") Check deflection,
    @Column("bearing_ratio") Check bearing,
    @Column("ok") Choice<YesNo> ok) {

  /** The four, in order. */
  public List<Check> checks() {
    return List.of(bending, shear, deflection, bearing);
  }
}
