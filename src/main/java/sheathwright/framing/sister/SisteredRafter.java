package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * An old rafter with a full-length sister.
 *
 * @param rafterShare the old rafter's part of what is added after nailing
 * @param sisterShare the sister's part of it
 * @param alone bending of the old rafter before anything is done
 * @param rafter bending of the old rafter beside the sister
 * @param sister bending of the sister
 * @param deflection sag of both under the live load
 * @param sag how far both sag under the live load
 * @param capacity the moment that both can take if all of it is shared
 * @param ok whether bending and sag of the pair are within 1
 * @param decision what has to be said beside it
 */
public record SisteredRafter(
    @Column("rafter_share") Figure<Ratio> rafterShare,
    @Column("sister_share") Figure<Ratio> sisterShare,
    @Column("alone_ratio") Check alone,
    @Column("rafter_ratio") Check rafter,
    @Column("sister_ratio") Check sister,
    @Column("sag_ratio") Check deflection,
    @Column("sag_in") Figure<Length> sag,
    @Column("capacity_in_lb") Figure<Moment> capacity,
    @Column("ok") Choice<YesNo> ok,
    @Column("decision") Choice<Decision> decision) {

  /** The old rafter alone, then the pair, in order. */
  public List<Check> checks() {
    return List.of(alone, rafter, sister, deflection);
  }
}
