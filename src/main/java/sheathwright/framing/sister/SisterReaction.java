package sheathwright.framing.sister;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * What an old rafter and its sister bring to a support.
 *
 * @param rafterReaction on the old rafter
 * @param sisterReaction on the sister; none if it does not bear
 * @param aloneShear the old rafter alone, before anything is done
 * @param aloneBearing the old rafter alone, before anything is done
 * @param rafterShear the old rafter beside the sister
 * @param rafterBearing the old rafter beside the sister
 * @param sisterShear the sister
 * @param sisterBearing the sister
 * @param carriedBy which of the two carry
 * @param ok whether shear and bearing of both are within 1
 * @param decision what has to be said beside it
 */
public record SisterReaction(
    @Column("rafter_reaction_lb") Figure<Force> rafterReaction,
    @Column("sister_reaction_lb") Figure<Force> sisterReaction,
    @Column("alone_shear_ratio") Check aloneShear,
    @Column("alone_bearing_ratio") Check aloneBearing,
    @Column("rafter_shear_ratio") Check rafterShear,
    @Column("rafter_bearing_ratio") Check rafterBearing,
    @Column("sister_shear_ratio") Check sisterShear,
    @Column("sister_bearing_ratio") Check sisterBearing,
    @Column("carried_by") Choice<CarriedBy> carriedBy,
    @Column("ok") Choice<YesNo> ok,
    @Column("decision") Choice<Decision> decision) {

  /** Which pieces carry at a support. */
  public enum CarriedBy implements Option<CarriedBy> {
    /** The sister bears on the plate itself. */
    RAFTER_AND_SISTER,
    /** The sister ends short of the plate or hangs beside it: it has no credit here. */
    RAFTER_ALONE
  }

  /** The old rafter alone, then each piece, in order. */
  public List<Check> checks() {
    return List.of(
        aloneShear, aloneBearing, rafterShear, rafterBearing, sisterShear, sisterBearing);
  }
}
