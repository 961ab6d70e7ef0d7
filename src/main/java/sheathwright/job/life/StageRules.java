package sheathwright.job.life;

import java.util.function.Function;
import sheathwright.figure.YesNo;
import sheathwright.job.table.ReadTable;

/** A job at a stage has the tables that the stage needs, and those that its facts speak of. */
final class StageRules {

  private final LifeTables tables;

  /** A table that a job has from a stage on, and how it comes to it. */
  private enum Need {
    SENT(
        Stage.AGREED,
        LifeTables::sent,
        "quote --issue writes it: put it back, or give stage quoted and issue the quote"),
    AGREED(
        Stage.AGREED,
        LifeTables::agreed,
        "agree writes it: put it back, or give stage quoted and run agree"),
    STAGES(
        Stage.AGREED,
        LifeTables::stages,
        "give each payment a line, such as stage deposit, part_pct 10, when on signing"),
    MARKS(
        Stage.OPENED,
        LifeTables::marks,
        "if nothing is found yet, its heading alone says so: mark,plane,finding,sheet");

    private final Stage from;
    private final Function<LifeTables, ReadTable> table;
    private final String remedy;

    Need(Stage from, Function<LifeTables, ReadTable> table, String remedy) {
      this.from = from;
      this.table = table;
      this.remedy = remedy;
    }
  }

  StageRules(LifeTables tables) {
    this.tables = tables;
  }

  void hold() {
    Stage stage = tables.stage();
    for (Need need : Need.values()) {
      ReadTable table = need.table.apply(tables);
      if (stage.isAtLeast(need.from) && !table.isThere()) {
        table.problem(
            "this table is missing, but the job is at the stage %s (%s); a job has it from %s on; %s"
                .formatted(
                    stage.word(),
                    tables.job().place(LifeFields.STAGE),
                    need.from.word(),
                    need.remedy));
      }
    }
    if (stage.isAtLeast(Stage.OPENED) && tables.day(LifeFields.OPENED_ON).isEmpty()) {
      tables
          .job()
          .problem(
              LifeFields.STAGE,
              "%s is given, but the day is missing on which the deck was opened; give a line opened_on, such as 2027-05-10, or stage agreed"
                  .formatted(stage.word()));
    }
    leakIsMarked(stage);
  }

  /** Where a leak is known and somebody has looked, it was found somewhere. */
  private void leakIsMarked(Stage stage) {
    boolean isKnown =
        tables.job().facts().knows(LifeFields.KNOWN_LEAK)
            && tables.job().facts().fact(LifeFields.KNOWN_LEAK).value() == YesNo.YES;
    boolean isMarked = tables.marks().isThere() || tables.zones().isThere();
    if (isKnown && stage.isAtLeast(Stage.SURVEYED) && !isMarked) {
      tables
          .job()
          .problem(
              LifeFields.KNOWN_LEAK,
              "yes is given, which is for %s or %s, and this job has neither; mark where the water comes in, or make the places under it a zone, or give no"
                  .formatted(tables.marks().name(), tables.zones().name()));
    }
  }
}
