package sheathwright.life.firm;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.forecast.Chances;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.life.Stage;
import sheathwright.job.season.SeasonJob;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.Invoice;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.Payments;
import sheathwright.life.found.FoundWork;
import sheathwright.life.record.Bill;
import sheathwright.life.record.JobFolder;
import sheathwright.life.record.SentDocument;
import sheathwright.life.supply.Supply;
import sheathwright.life.supply.WorkHours;
import sheathwright.life.unseen.JobForecast;

/** How one job stands, for the summary of its season. */
final class JobStanding {

  private final JobTables tables;
  private final JobFolder folder;
  private final Job job;
  private final Estimate estimate;
  private final FoundWork work;
  private final JobLine line;

  private JobStanding(SeasonJob named) {
    tables = named.tables();
    folder = JobFolder.of(named.folder(), tables);
    job = folder.job();
    estimate = new Estimate(isOnlyQuoted() ? Job.of(tables.without(JobTable.STAGES)) : job);
    work = FoundWork.of(estimate);
    line = JobLine.of(named.name());
  }

  /** Its payments come to what the owner was told, whatever prices are today. */
  private boolean isOnlyQuoted() {
    return folder.stage() == Stage.QUOTED && folder.newestIssue().isPresent();
  }

  static JobLine of(SeasonJob job) {
    JobStanding standing = new JobStanding(job);
    standing.write();
    return standing.line;
  }

  private void write() {
    line.put(SeasonColumn.STAGE, folder.stage().word());
    Bill.soFar(estimate).ifPresentOrElse(this::agreed, this::offered);
    likely();
    supplied();
  }

  /** What the owner was last told, or would be told today; and what today's prices make of it. */
  private void offered() {
    double told =
        folder
            .newestIssue()
            .flatMap(SentDocument::total)
            .map(BigDecimal::doubleValue)
            .orElse(estimate.total().toCents().value());
    line.put(SeasonColumn.TOTAL_USD, told);
    line.put(SeasonColumn.WORST_USD, estimate.quote().worstCase().toCents().value());
    line.put(SeasonColumn.INCLUDED, estimate.plannedSheets().value());
    for (SeasonColumn none :
        List.of(
            SeasonColumn.FOUND,
            SeasonColumn.BILLED,
            SeasonColumn.APPROVED_USD,
            SeasonColumn.UNPAID_USD)) {
      line.put(none, 0);
    }
    goodUntil().ifPresent(day -> line.put(SeasonColumn.PRICE_UNTIL, day.toString()));
    if (isOnlyQuoted()) {
      double today = today();
      if (told != today) {
        line.put(SeasonColumn.NOW_USD, today);
      }
    }
  }

  /** What the same would be quoted for by the prices and rates that the office has today. */
  private double today() {
    JobTables now = tables.withTheOfficesToday().without(JobTable.STAGES);
    return new Estimate(Job.of(now)).total().toCents().value();
  }

  /** The earlier of the days until which the quote and its prices are good. */
  private Optional<LocalDate> goodUntil() {
    Optional<LocalDate> prices =
        job.knows(LifeFields.PRICE_UNTIL)
            ? Optional.of(LocalDate.parse(job.fact(LifeFields.PRICE_UNTIL).value()))
            : Optional.empty();
    return Stream.of(job.validity().until(), prices)
        .flatMap(Optional::stream)
        .min(LocalDate::compareTo);
  }

  private void agreed(Accounts accounts) {
    List<Order> approved = accounts.orders().that(OrderStatus.APPROVED);
    Figure<Money> total = total(accounts, approved);
    Payments payments = Payments.of(accounts.agreement(), job.lines(JobTable.STAGES), total);
    line.put(SeasonColumn.TOTAL_USD, total.value());
    line.put(
        SeasonColumn.APPROVED_USD,
        approved.stream().mapToDouble(order -> order.usd().value()).sum());
    Optional<ItemAccount> sheets =
        accounts.items().stream().filter(account -> account.item() == Item.SHEET).findFirst();
    line.put(
        SeasonColumn.INCLUDED, sheets.map(each -> each.agreed().included().value()).orElse(0d));
    line.put(SeasonColumn.FOUND, sheets.map(each -> each.found().value()).orElse(0d));
    line.put(
        SeasonColumn.BILLED,
        approved.stream().mapToDouble(order -> order.quantity(Item.SHEET).value()).sum());
    line.put(SeasonColumn.WORST_USD, worst(accounts, total, sheets));
    line.put(SeasonColumn.UNPAID_USD, payments.due().value());
    payments.list().stream()
        .filter(payment -> payment.paidOn().isEmpty() && payment.amount().value() != 0)
        .map(Payments.Payment::stage)
        .findFirst()
        .ifPresent(stage -> line.put(SeasonColumn.UNPAID_STAGE, stage));
  }

  /** What was agreed and approved; what was not needed is given back when the job is closed. */
  private Figure<Money> total(Accounts accounts, List<Order> approved) {
    if (folder.stage() == Stage.CLOSED) {
      return Invoice.of(accounts, job.lines(JobTable.STAGES)).total();
    }
    Figure<Money> sum = accounts.agreement().total();
    for (Order order : approved) {
      sum = sum.plus(order.usd());
    }
    return sum.toCents();
  }

  /** A closed job comes to no more; before that, every sheet up to the ceiling is bad. */
  private double worst(Accounts accounts, Figure<?> total, Optional<ItemAccount> sheets) {
    double agreed = accounts.agreement().total().value();
    double most =
        sheets
            .flatMap(
                each ->
                    each.agreed()
                        .most()
                        .map(
                            ceiling ->
                                Math.max(0, ceiling.value() - each.agreed().included().value())
                                    * each.agreed().price().value()))
            .orElse(0d);
    return folder.stage() == Stage.CLOSED ? total.value() : Math.max(total.value(), agreed + most);
  }

  /** Places that are likely bad, by all that is known of the job now. */
  private void likely() {
    Chances bad = JobForecast.now(estimate, work, Set.of()).chances();
    line.put(SeasonColumn.P50_SHEETS, bad.percentile(0.50));
    line.put(SeasonColumn.P80_SHEETS, bad.percentile(0.80));
    line.put(SeasonColumn.P95_SHEETS, bad.percentile(0.95));
  }

  private void supplied() {
    Supply supply = new Supply(estimate, work.quantities());
    line.put(SeasonColumn.SHEETS, supply.sheets().toBuy().value());
    new WorkHours(estimate, work.quantities(), supply)
        .days()
        .ifPresent(days -> line.put(SeasonColumn.DAYS, days.value()));
  }
}
