package sheathwright.life.record;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.OrderStatus;
import sheathwright.job.table.Field;
import sheathwright.job.table.Row;
import sheathwright.life.bill.Accounts;
import sheathwright.life.found.Found;
import sheathwright.sheathing.place.BillRule;

/** The line that a closed job adds to what the firm knows of its jobs; blank what is unknown. */
final class History {

  private static final List<Field<?>> OF_THE_JOB =
      List.of(
          LifeFields.LAYERS_ON,
          LifeFields.BUILT_YEAR,
          LifeFields.KNOWN_LEAK,
          LifeFields.FAN_INTO_ATTIC);

  private final Map<String, String> row = new LinkedHashMap<>();

  private History() {}

  /**
   * The line of a job.
   *
   * @param name of the job, among the firm's
   * @param on the day it is closed
   */
  static Map<String, String> row(String name, String on, Estimate estimate, Accounts accounts) {
    History history = new History();
    history.put(FirmFields.JOB, name);
    history.put(FirmFields.CLOSED_ON, on);
    history.sheets(estimate, accounts);
    OF_THE_JOB.forEach(field -> history.fact(field, estimate.job()));
    history.work(estimate.job().lines(JobTable.LOG));
    return history.row;
  }

  private void put(Field<?> field, String value) {
    row.put(field.name(), value);
  }

  private void put(Field<?> field, double number) {
    put(field, quantity(number));
  }

  /** A number without zeros behind it. */
  private static String quantity(double number) {
    BigDecimal plain = Cents.quantity(number);
    return plain.toPlainString();
  }

  private void fact(Field<?> field, Job job) {
    if (job.knows(field)) {
      put(field, job.fact(field).plain());
    }
  }

  private void sheets(Estimate estimate, Accounts accounts) {
    double places = places(estimate);
    put(FirmFields.SHEETS, places);
    put(FirmFields.BAD, replaced(accounts.found()));
    SeenBefore.of(estimate.job())
        .ifPresent(
            seen -> {
              put(FirmFields.SEEN, seen.places());
              put(FirmFields.SEEN_BAD, seen.bad());
            });
    accounts.agreement().billRule().ifPresent(rule -> put(FirmFields.BILL_RULE, rule.word()));
    accounts.items().stream()
        .filter(account -> account.item() == Item.SHEET)
        .findFirst()
        .ifPresent(
            sheets -> {
              put(FirmFields.INCLUDED, sheets.agreed().included().value());
              put(FirmFields.CREDITED, sheets.unused().value());
              put(
                  FirmFields.BILLED,
                  accounts.orders().that(OrderStatus.APPROVED).stream()
                      .mapToDouble(order -> order.quantity(Item.SHEET).value())
                      .sum());
            });
  }

  /** Places of the old deck. */
  static double places(Estimate estimate) {
    return estimate
        .deck()
        .units()
        .of(estimate.deckArea())
        .by(Choice.literal(BillRule.PLACE), "places_of_the_deck")
        .value();
  }

  /** Places that are new, whatever the bill counts. */
  static long replaced(List<Found> found) {
    return found.stream()
        .filter(each -> each.isOpened() && !each.isVoid())
        .filter(each -> each.item().equals(Optional.of(Item.SHEET)))
        .map(Found::key)
        .distinct()
        .count();
  }

  private void work(List<Row> log) {
    if (!log.isEmpty()) {
      put(
          FirmFields.HOURS,
          log.stream().mapToDouble(row -> row.of(OrderFields.HOURS).value()).sum());
    }
    long visits =
        log.stream()
            .filter(row -> row.has(OrderFields.VISIT))
            .map(row -> row.of(OrderFields.VISIT).value())
            .distinct()
            .count();
    if (visits > 0) {
      put(FirmFields.VISITS, visits);
    }
  }
}
