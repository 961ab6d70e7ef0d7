package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.workbook.book.Tab;

/**
 * The page on which the workbook checks itself, and the line at the top of every page that says how
 * it stands.
 */
public final class Selfcheck {

  private static final String HOLDS_OR_LOOK = "\"LOOK\";\"LOOK\";\"holds\"";

  /** So many names that a formula which adds them up stays short. */
  private static final int SUMMED_TOGETHER = 12;

  private static final Figure<Ratio> FAILS = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> HOLDS = Figure.of(0, Units.RATIO);

  private final List<Estimate.Tie> ties;
  private final List<Figure<Ratio>> checks = new ArrayList<>();
  private final Figure<Ratio> failing;
  private final Optional<Figure<Ratio>> unmade;
  private final Choice<String> state;

  /** The self-check of a document that lists no proof. */
  public Selfcheck(List<Estimate.Tie> ties) {
    this(ties, Optional.empty());
  }

  /**
   * The self-check of a job.
   *
   * @param unmade how many of the checks that its proof lists nobody could make
   */
  Selfcheck(List<Estimate.Tie> ties, Figure<Ratio> unmade) {
    this(ties, Optional.of(unmade));
  }

  private Selfcheck(List<Estimate.Tie> ties, Optional<Figure<Ratio>> unmade) {
    this.ties = ties;
    this.unmade = unmade;
    Figure<Ratio> sum = null;
    for (Estimate.Tie tie : ties) {
      Figure<Ratio> check =
          Figure.choose(tie.holds(), HOLDS, FAILS)
              .as("check_" + (checks.size() + 1), Units.RATIO, Source.ARITHMETIC);
      checks.add(check);
      sum = sum == null ? check : sum.plus(check);
      if (checks.size() % SUMMED_TOGETHER == 0) {
        sum = sum.as("checks_failing_of_the_first_" + checks.size(), Units.RATIO);
      }
    }
    failing = (sum == null ? HOLDS : sum).as("checks_failing", Units.RATIO);
    Condition none = failing.isAtMost(HOLDS);
    Choice<String> holding =
        unmade.map(Selfcheck::holding).orElse(Choice.literal("Self-check: every check holds"));
    state =
        Choice.choose(none, holding, Choice.literal("Self-check: LOOK at its own tab"))
            .as("self_check_state");
  }

  private static Choice<String> holding(Figure<Ratio> unmade) {
    return Choice.choose(
            unmade.isAtMost(HOLDS),
            Choice.literal("Self-check: every check holds"),
            Choice.literal("Self-check: every check that was made holds"))
        .as("self_check_where_none_fails");
  }

  /** Writes the page. */
  public void write(Tab tab, List<Figure<Money>> headlines) {
    tab.heading("What must hold");
    for (int i = 0; i < ties.size(); i++) {
      tab.state(ties.get(i).what(), checks.get(i), HOLDS_OR_LOOK);
    }
    tab.total("Checks that do not hold", failing, "0 when all is well");
    unmade.ifPresent(
        count ->
            tab.entry(
                "Checks that nobody looked at",
                count,
                "on Proof; they are not counted among those that hold"));
    tab.entry("In words", state, "");
    if (!headlines.isEmpty()) {
      sinceWritten(tab, headlines);
    }
  }

  private static void sinceWritten(Tab tab, List<Figure<Money>> headlines) {
    tab.heading("Since this file was written");
    tab.paragraph(
        "Each headline as the library computed it, against what the workbook says now. A headline changes when an input"
            + " is edited; that is what the workbook is for.");
    for (Figure<Money> headline : headlines) {
      Figure<Money> written =
          Figure.constant(
              "written_" + headline.name(),
              headline.toCents().value(),
              Units.USD,
              Source.derived("written by the library"));
      Choice<String> same =
          Choice.choose(
                  headline.toCents().isTheSameAs(written),
                  Choice.literal("as written"),
                  Choice.literal("changed since it was written"))
              .as("state_of_" + headline.name());
      String name = sheathwright.figure.Shown.inWords(headline.name());
      tab.link(name + " now", headline, "");
      tab.aside(name + " as written", written, "");
      tab.entry(name + " is", same, "");
    }
  }

  public Choice<String> state() {
    return state;
  }
}
