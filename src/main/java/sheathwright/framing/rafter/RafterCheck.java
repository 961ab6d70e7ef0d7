package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * What is asked of a rafter against what it can give, four ways, and whether all four are within
 * it.
 *
 * @param bending at mid-span, under the whole load
 * @param shear at the support
 * @param deflection under the live load
 * @param bearing on the plate
 * @param ok whether all four are within what is allowed
 * @param governs which of the four has the highest ratio at this span
 * @param longest the longest span at which all four are within what is allowed, not capped
 * @param decision who decides before any repair
 */
public record RafterCheck(
    @Column("bending_ratio") Check bending,
    @Column("shear_ratio") Check shear,
    @Column("deflection_ratio") Check deflection,
    @Column("bearing_ratio") Check bearing,
    @Column("ok") Choice<YesNo> ok,
    @Column("governs") Choice<RafterLimit> governs,
    @Column(value = "longest_span_ft", marked = Marked.DOWN) Figure<Length> longest,
    @Column("decision") Choice<Decision> decision) {

  /** The four, in order. */
  public List<Check> checks() {
    return List.of(bending, shear, deflection, bearing);
  }
}
