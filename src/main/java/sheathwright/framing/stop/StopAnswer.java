package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.RepairDecision.Decision;

/**
 * Whether the crew may repair the framing after one look at it, and if not, who decides and what
 * may go on until then.
 *
 * @param decision in words, for the head of every repair list
 * @param mayRepair yes, if nothing stops the repair
 * @param decides who decides about what stops it
 * @param meanwhile what may go on until then
 */
public record StopAnswer(
    @Column("decision") Choice<Decision> decision,
    @Column("may_repair") Choice<YesNo> mayRepair,
    @Column("decides") Choice<String> decides,
    @Column("meanwhile") Choice<String> meanwhile) {}
