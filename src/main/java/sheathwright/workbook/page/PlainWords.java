package sheathwright.workbook.page;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.job.Framing;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;

/** What was decided of the rafters, in the homeowner's own words, and what may be signed. */
final class PlainWords {

  private static final int LINES = 2;

  private final Tab tab;
  private final Framing framing;

  PlainWords(Tab tab, Framing framing) {
    this.tab = tab;
    this.framing = framing;
  }

  /** What the decision means to whoever lives below it. */
  void decision() {
    int line = tab.next();
    tab.entry("In plain words", said(), "");
    tab.row(line).height(LINES * Tab.LINE_HEIGHT + 3);
  }

  /** Where both sign; nowhere above a stop. */
  void signatures() {
    signature("homeowner_signs", "Homeowner, date", "Nothing is signed yet:");
    signature("contractor_signs", "Contractor, date", "see Your rafters above");
  }

  private void signature(String name, String open, String stopped) {
    Condition mayBeSigned = framing.mayBeSigned();
    int line = tab.line();
    tab.value(
        line,
        0,
        Choice.choose(mayBeSigned, Choice.literal(open), Choice.literal(stopped)).as(name),
        Part.LABEL);
    tab.text(line, 1, "", Part.RESULT_TEXT);
  }

  private Choice<String> said() {
    return chosen(
        Decision.WITHIN,
        "We checked your rafters by screening rules and nothing was seen that stops the work.",
        chosen(
            Decision.AS_ASSUMED,
            "Some of what we checked your rafters with is only assumed. We look before we work on them.",
            chosen(
                Decision.NOT_CHECKED,
                "Nothing was seen that stops the work, but nobody has checked how strong your rafters are.",
                chosen(
                    Decision.NOT_INSPECTED,
                    "Nobody has looked at your rafters well enough: nobody may say whether they are sound.",
                    Choice.literal(
                        "Whoever is named above decides about your rafters first; no work on them until then.")))));
  }

  private Choice<String> chosen(Decision decision, String words, Choice<String> otherwise) {
    return Choice.choose(framing.decision().is(decision), Choice.literal(words), otherwise)
        .as("said_of_" + decision.name().toLowerCase(java.util.Locale.ROOT));
  }
}
