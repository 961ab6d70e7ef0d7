package sheathwright.framing.stop;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Option;
import sheathwright.figure.YesNo;

/**
 * Whether the crew may repair the framing, and if not, who must decide.
 *
 * @param decision in words, for the head of every repair list
 * @param mayRepair yes, if nothing stops the repair
 */
public record RepairDecision(
    @Column("decision") Choice<Decision> decision, @Column("may_repair") Choice<YesNo> mayRepair) {

  /** What stands at the head of every repair list. */
  public enum Decision implements Option<Decision> {
    WITHIN("within the screening limits"),
    AS_ASSUMED("within the screening limits only as assumed: look first"),
    NOT_INSPECTED("not inspected: nobody may say"),
    NOT_CHECKED("nothing seen that stops the repair; the rafters' strength was not checked"),
    STOP_ENGINEER("STOP: a licensed engineer decides before any repair"),
    STOP_TRUSS("STOP: the truss designer or a licensed engineer decides before any repair"),
    STOP_ELECTRICIAN("STOP: an electrician or the utility decides before any repair"),
    STOP_ENVIRONMENTAL("STOP: an environmental firm decides before any repair"),
    STOP_OFFICIAL("STOP: the building official decides before any repair"),
    STOP_MAKER("STOP: the covering's maker decides before any repair");

    private final String word;

    Decision(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
