package sheathwright.job.life;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedTable;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.zone.ZoneFields;

/**
 * The tables that tell of a job's life, as they were read, and what must hold between them. What
 * does not is said where it stands; nothing is raised here.
 *
 * @param job its facts
 * @param folder in which they lie, if they do
 */
public record LifeTables(
    KeyedTable job,
    ReadTable marks,
    ReadTable reports,
    ReadTable zones,
    ReadTable places,
    ReadTable photos,
    ReadTable agreed,
    ReadTable talks,
    ReadTable stages,
    ReadTable options,
    ReadTable orders,
    ReadTable orderLines,
    ReadTable inspections,
    ReadTable sent,
    Optional<Path> folder) {

  /** Says everything that does not hold. */
  public void hold(Field<Choice<String>> quoteDate) {
    agreed.once(AgreedFields.ITEM);
    stages.once(AgreedFields.STAGE);
    options.once(AgreedFields.OPTION);
    orders.once(OrderFields.ORDER);
    zones.once(ZoneFields.ZONE);
    places.once(ZoneFields.KEY);
    new DateRules(this).hold(quoteDate);
    new StageRules(this).hold();
    new PhotoRules(this).hold();
    new PaymentRules(this).hold();
    new OptionRules(this).hold();
    new TalkRules(this).hold();
    new OrderRules(this).hold();
    new ZoneRules(this).hold();
  }

  /** How far the job has come: what was agreed is opened on the day that the office gives. */
  public Stage stage() {
    return stage(job);
  }

  /** The same, from the facts of a job alone. */
  public static Stage stage(KeyedTable job) {
    Stage said =
        job.facts().knows(LifeFields.STAGE)
            ? job.facts().fact(LifeFields.STAGE).value()
            : Stage.QUOTED;
    return said == Stage.AGREED && job.facts().knows(LifeFields.OPENED_ON) ? Stage.OPENED : said;
  }

  /** A day that the job gives; nothing where it does not. */
  Optional<String> day(Field<Choice<String>> field) {
    return job.facts().knows(field)
        ? Optional.of(job.facts().fact(field).value())
        : Optional.empty();
  }

  /** What a row of agreed.csv is called; nothing where there is none. */
  Optional<Row> agreed(String item) {
    return AgreedFields.row(agreed.rows(), item);
  }

  /** The dates of a job in the order in which they come. */
  static List<Field<Choice<String>>> dates(Field<Choice<String>> quoteDate) {
    return List.of(
        LifeFields.ASKED_ON,
        LifeFields.LOOKED_ON,
        quoteDate,
        LifeFields.AGREED_ON,
        LifeFields.OPENED_ON,
        LifeFields.CLOSED_ON);
  }
}
