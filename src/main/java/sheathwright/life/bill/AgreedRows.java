package sheathwright.life.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Row;

/**
 * The rows of the table {@code agreed} that freeze a quote: its lines and their sum, the prices of
 * all that may be found, what is included, the ceiling, the re-open count, what is pre-agreed, the
 * options chosen, and the payments.
 */
public final class AgreedRows {

  private static final String NONE = "0.00";

  private final Estimate estimate;
  private final Job job;
  private final List<Map<String, String>> rows = new ArrayList<>();

  private AgreedRows(Estimate estimate) {
    this.estimate = estimate;
    this.job = estimate.job();
  }

  /**
   * The rows that a job's quote makes, by column.
   *
   * @throws sheathwright.job.table.ProblemsException if its payments do not come to its total
   */
  public static List<Map<String, String>> of(Estimate estimate) {
    AgreedRows made = new AgreedRows(estimate);
    made.addItems();
    made.addSums();
    made.addLimits();
    return List.copyOf(made.rows);
  }

  private void addItems() {
    if (estimate.deck().hasSheets()) {
      addSheets();
    }
    addExtras();
    boolean mayRepair = mayRepair();
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              addRafters(
                  Item.SISTER, leveling.sisterPrice().quoted(), leveling.sisters(), mayRepair);
              addRafters(Item.SHIM, leveling.shimPrice().quoted(), leveling.shims(), mayRepair);
            });
  }

  private void addSheets() {
    Figure<?> most =
        job.knows(LifeFields.CEILING_SHEETS)
            ? job.fact(LifeFields.CEILING_SHEETS)
            : estimate.sheetsAtWorst();
    rows.add(
        item(Item.SHEET, estimate.billRule().value().word(), estimate.quote().extraSheet())
            .with(AgreedFields.INCLUDED, Optional.of(estimate.plannedSheets()))
            .with(AgreedFields.CREDIT, Cells.money(estimate.quote().credit().value()))
            .with(AgreedFields.MOST, Optional.of(most))
            .row());
  }

  private void addExtras() {
    estimate
        .quote()
        .extras()
        .forEach(
            (unit, price) -> {
              Item item = Words.of(Item.values(), unit.word()).orElseThrow();
              rows.add(
                  item(item, item.unit(), price)
                      .with(AgreedFields.INCLUDED, item == Item.LIFT ? lifted() : Optional.empty())
                      .with(AgreedFields.MOST, item == Item.BOARD ? boards() : Optional.empty())
                      .row());
            });
  }

  private boolean mayRepair() {
    return estimate.framing().mayRepair().value() == YesNo.YES;
  }

  /** The sheets that the price lifts for the rafters, if it sells their leveling. */
  private Optional<Figure<?>> lifted() {
    return estimate.deck().sheetsToLift().filter(any -> mayRepair()).map(sheets -> sheets);
  }

  /** No more feet of board are billed than the deck has. */
  private Optional<Figure<?>> boards() {
    return estimate.quote().mostBoards().map(feet -> feet);
  }

  private void addRafters(Item item, Figure<?> price, Figure<?> planned, boolean mayRepair) {
    rows.add(
        item(item, item.unit(), price)
            .with(AgreedFields.INCLUDED, Optional.of(planned).filter(any -> mayRepair))
            .row());
  }

  private static Cells item(Item item, String unit, Figure<?> price) {
    return row(item.word(), unit, Cells.money(price.value()), item.label());
  }

  private static Cells row(String item, String unit, String usd, String words) {
    return new Cells()
        .with(AgreedFields.ITEM, item)
        .with(AgreedFields.UNIT, unit)
        .with(AgreedFields.USD, usd)
        .with(AgreedFields.WORDS, words);
  }

  private void addSums() {
    Figure<Money> total = estimate.total();
    int number = 0;
    for (List<Traced> line : estimate.quote().roll().rows()) {
      number++;
      rows.add(
          row(
                  AgreedPart.LINE.row(number),
                  line.get(2).plain(),
                  Cells.money(((Figure<?>) line.get(3)).value()),
                  line.get(0).plain())
              .with(AgreedFields.INCLUDED, Optional.of((Figure<?>) line.get(1)))
              .row());
    }
    number = 0;
    for (Row option : job.lines(JobTable.OPTIONS)) {
      if (AgreedFields.isChosen(option)) {
        number++;
        AgreedSum sum = chosen(option);
        total = total.plus(sum.amount());
        rows.add(
            row(
                    AgreedPart.OPTION.row(number),
                    sum.unit(),
                    Cells.money(sum.each().value()),
                    sum.what())
                .with(AgreedFields.INCLUDED, Optional.of(sum.quantity()))
                .row());
      }
    }
    rows.add(row(AgreedPart.TOTAL.row(1), "", Cells.money(total.value()), "All of it").row());
    number = 0;
    for (AgreedStage stage : Payments.agreed(job.lines(JobTable.STAGES), total)) {
      number++;
      rows.add(
          row(AgreedPart.STAGE.row(number), "", Cells.money(stage.amount().value()), stage.name())
              .row());
    }
  }

  private static AgreedSum chosen(Row option) {
    return new AgreedSum(
        AgreedFields.agreedAs(option),
        option.or(AgreedFields.QUANTITY, Figure.of(1, Units.RATIO)),
        option.has(AgreedFields.UNIT) ? option.of(AgreedFields.UNIT).value() : "",
        option.or(AgreedFields.USD, OrderLine.NOTHING));
  }

  private void addLimits() {
    if (job.knows(LifeFields.REOPEN_SHEETS)) {
      rows.add(
          row(
                  AgreedPart.REOPEN.row(1),
                  "",
                  NONE,
                  "Beyond so many sheets nothing is billed before both sides have talked again")
              .with(AgreedFields.MOST, Optional.of(job.fact(LifeFields.REOPEN_SHEETS)))
              .row());
    }
    boolean saysSheets = job.knows(LifeFields.PRE_AGREED_SHEETS);
    boolean saysSum = job.knows(LifeFields.PRE_AGREED_SUM);
    if (saysSheets || saysSum) {
      rows.add(
          row(
                  AgreedPart.PRE_AGREED.row(1),
                  "",
                  saysSum ? Cells.money(job.fact(LifeFields.PRE_AGREED_SUM).value()) : NONE,
                  "May be done without a further yes")
              .with(
                  AgreedFields.MOST,
                  saysSheets
                      ? Optional.of(job.fact(LifeFields.PRE_AGREED_SHEETS))
                      : Optional.empty())
              .row());
    }
  }
}
