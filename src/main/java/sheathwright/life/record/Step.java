package sheathwright.life.record;

import java.util.EnumSet;
import java.util.Set;
import sheathwright.job.life.Stage;

/** What a command does with a job, and at which stages it may: the one table of it. */
public enum Step {
  DRAFT(
      "a quote",
      EnumSet.of(Stage.SURVEYED, Stage.QUOTED),
      "what was agreed is printed again, not quoted anew"),
  ISSUE(
      "issuing a quote",
      EnumSet.of(Stage.SURVEYED, Stage.QUOTED),
      "what was agreed is not quoted anew; what is found besides goes into a change order"),
  TAKE(
      "taking what was changed in a workbook",
      EnumSet.of(Stage.ASKED, Stage.SURVEYED, Stage.QUOTED),
      "what was agreed is not changed any more; what is found besides goes into a change order"),
  AGREE(
      "an agreement",
      EnumSet.of(Stage.QUOTED),
      "it is made once; what is found besides goes into a change order"),
  CREW(
      "a crew's workbook",
      EnumSet.of(Stage.SURVEYED, Stage.QUOTED, Stage.AGREED, Stage.OPENED),
      "nobody goes onto that roof any more for it"),
  TAKE_IN(
      "what comes back from the roof",
      EnumSet.of(Stage.ASKED, Stage.SURVEYED, Stage.QUOTED, Stage.AGREED, Stage.OPENED),
      "what is told of it since belongs into callbacks.csv"),
  CHANGE_ORDER(
      "a change order", EnumSet.of(Stage.OPENED), "nothing is ordered after the last invoice"),
  ORDER_LIST(
      "an order list",
      EnumSet.of(Stage.QUOTED, Stage.AGREED, Stage.OPENED),
      "nothing more is bought for it"),
  MAKER_RECORD(
      "a record for the covering's maker",
      EnumSet.of(Stage.QUOTED, Stage.AGREED, Stage.OPENED),
      "nothing more is written for it"),
  INSPECTION_RECORD(
      "an inspection record", EnumSet.of(Stage.OPENED), "nothing more is written for it"),
  CLOSE("the last invoice", EnumSet.of(Stage.OPENED), "it is written once");

  private final String what;
  private final Set<Stage> stages;
  private final String tooLate;

  Step(String what, Set<Stage> stages, String tooLate) {
    this.what = what;
    this.stages = stages;
    this.tooLate = tooLate;
  }

  /** Whether it may be done at a stage. */
  public boolean isAllowedAt(Stage stage) {
    return stages.contains(stage);
  }

  /**
   * Why it may not be done at a stage, with what is needed and what to run.
   *
   * @param job its folder, as it is to be typed
   */
  String refusal(Stage stage, String job) {
    Stage last = stages.stream().reduce((one, next) -> next).orElseThrow();
    String needed = String.join(" or ", stages.stream().map(Stage::word).toList());
    return "the job is at the stage %s; %s takes %s: %s"
        .formatted(
            stage.word(),
            what,
            needed,
            stage.isAtLeast(last) ? tooLate : wayTo(Stage.values()[stage.ordinal() + 1], job));
  }

  /** What makes a job come to a stage. */
  static String wayTo(Stage stage, String job) {
    return switch (stage) {
      case ASKED, SURVEYED ->
          "when it is measured, write %s behind stage in job.csv".formatted(stage.word());
      case QUOTED -> "run " + command("quote", job, "--issue --on DATE");
      case AGREED -> "run " + command("agree", job, "--on DATE");
      case OPENED -> "when the old covering is off, write the day behind opened_on in job.csv";
      case CLOSED -> "run " + command("close", job, "--on DATE");
    };
  }

  /** A command as it is to be typed. */
  public static String command(String name, String job, String options) {
    String quoted = job.chars().anyMatch(Character::isWhitespace) ? '"' + job + '"' : job;
    return "./sheathwright %s %s %s".formatted(name, quoted, options).strip();
  }
}
