package sheathwright.framing.rafter;

import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.catalog.Marked;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * All that is asked of an old rafter against what it can give.
 *
 * @param deadBending bending under dead load alone
 * @param liveBending bending under dead and roof live load
 * @param snowBending bending under dead load and snow
 * @param deadShear shear over the seat under dead load alone
 * @param liveShear shear over the seat under dead and roof live load
 * @param snowShear shear over the seat under dead load and snow
 * @param deflection sag under roof live load or snow
 * @param totalDeflection sag under all load, with creep of the dead load
 * @param bearing on the plate
 * @param notch seat-cut depth
 * @param ok whether all of these are within what is allowed
 * @param governs which of them has the highest ratio
 * @param longest the longest span at which all of them are within what is allowed, not capped; 0 if
 *     the notch is too deep
 * @param deckOffBending bending with its upper edge held by braces alone
 * @param deckOffSlenderness slenderness with its upper edge held by braces alone
 * @param deckOffOk whether both of these are within what is allowed
 * @param deckOffDead what lies on the rafters for good while the deck is off
 * @param deckOffBrace the greatest distance between braces, or between nailed sheets; 0 where none
 *     is short enough
 * @param deckOffPlankBrace the same where whoever works stands on planks over three rafters
 * @param deckOffWay what a crew does about it
 * @param thrust what the tie of one pair of rafters holds
 * @param decision who decides before any repair
 */
public record RafterScreening(
    @Column("dead_bending_ratio") Check deadBending,
    @Column("roof_live_bending_ratio") Check liveBending,
    @Column("snow_bending_ratio") Check snowBending,
    @Column("dead_shear_ratio") Check deadShear,
    @Column("roof_live_shear_ratio") Check liveShear,
    @Column("snow_shear_ratio") Check snowShear,
    @Column("deflection_ratio") Check deflection,
    @Column("total_deflection_ratio") Check totalDeflection,
    @Column("bearing_ratio") Check bearing,
    @Column("notch_ratio") Check notch,
    @Column("ok") Choice<YesNo> ok,
    @Column("governs") Choice<RafterLimit> governs,
    @Column(value = "longest_span_ft", marked = Marked.DOWN) Figure<Length> longest,
    @Column("deck_off_bending_ratio") Check deckOffBending,
    @Column("deck_off_slenderness_ratio") Check deckOffSlenderness,
    @Column("deck_off_ok") Choice<YesNo> deckOffOk,
    @Column("deck_off_dead_psf") Figure<Pressure> deckOffDead,
    @Column(value = "deck_off_brace_in", marked = Marked.DOWN) Figure<Length> deckOffBrace,
    @Column(value = "deck_off_plank_brace_in", marked = Marked.DOWN)
        Figure<Length> deckOffPlankBrace,
    @Column("deck_off_way") Choice<DeckOffWay> deckOffWay,
    @Column("thrust_lb") Figure<Force> thrust,
    @Column("decision") Choice<Decision> decision) {

  /** The ten that hold with the deck on, in order. */
  public List<Check> checks() {
    return List.of(
        deadBending,
        liveBending,
        snowBending,
        deadShear,
        liveShear,
        snowShear,
        deflection,
        totalDeflection,
        bearing,
        notch);
  }

  /** The two that hold while the deck is off. */
  public List<Check> deckOffChecks() {
    return List.of(deckOffBending, deckOffSlenderness);
  }
}
