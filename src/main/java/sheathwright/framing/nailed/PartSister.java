package sheathwright.framing.nailed;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * An old rafter with a sister, centered, that ends short of the supports.
 *
 * @param alone bending of the old rafter before anything is done
 * @param end bending of the old rafter where the sister ends
 * @param rafter bending of the old rafter along the sister
 * @param sister bending of the sister
 * @param deflection sag of both under the live load
 * @param sag how far the rafter sags under the live load
 * @param part the sister's part of the moment that is added, at mid-span
 * @param couple force on each nail group if the full share began at the sister's ends
 * @param rigid force on each nail group if no nail slipped
 * @param group force on each nail group with nails that slip
 * @param groupNails in each of the four groups
 * @param ok whether all four are within 1
 * @param decision what has to be said beside it
 */
public record PartSister(
    @Column("alone_ratio") Check alone,
    @Column("end_ratio") Check end,
    @Column("rafter_ratio") Check rafter,
    @Column("sister_ratio") Check sister,
    @Column("sag_ratio") Check deflection,
    @Column("sag_in") Figure<Length> sag,
    @Column("sister_part") Figure<Ratio> part,
    @Column("couple_lb") Figure<Force> couple,
    @Column("rigid_lb") Figure<Force> rigid,
    @Column("group_lb") Figure<Force> group,
    @Column(value = "group_nails", unit = "nail") Figure<Nails> groupNails,
    @Column("ok") Choice<YesNo> ok,
    @Column("decision") Choice<Decision> decision) {

  /** The old rafter alone, then what the sister makes of it, in order. */
  public List<Check> checks() {
    return List.of(alone, end, rafter, sister, deflection);
  }
}
