package sheathwright.workbook.paper;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.AgreedItem;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.Order;
import sheathwright.life.bill.Payments;
import sheathwright.life.bill.Payments.Payment;
import sheathwright.life.bill.PreAgreed;
import sheathwright.life.bill.Share;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Told;

/**
 * The first page of a change order, which the owner reads on a phone: what, why, how much, by when.
 */
final class OrderPhonePage {

  private static final int MOST_REASONS = 3;
  private static final int MOST_PLACES = 4;

  private final PhonePage page;
  private final Job job;
  private final Places places;
  private final NextOrder order;
  private final Moment on;
  private final OnceMore again = new OnceMore();

  OrderPhonePage(PhonePage page, Job job, Places places, NextOrder order, Moment on) {
    this.page = page;
    this.job = job;
    this.places = places;
    this.order = order;
    this.on = on;
  }

  /**
   * Writes the page.
   *
   * @param asked what each item comes to, as the next page counts it
   * @param chosen what each option comes to, as it stands there
   * @return its numbers, to be told once more
   */
  OnceMore write(List<Asked> asked, List<Chosen> chosen) {
    Figure<Money> sum = sum(asked, chosen);
    page.headline("This change order", sum);
    again.amount("This change order", sum);
    page.text(job.fact(JobFields.JOB_NAME).value() + ", " + job.fact(JobFields.SITE).value());
    page.heading("How many");
    asked.forEach(this::howMany);
    chosen.forEach(this::howMany);
    page.heading("Why");
    reasons();
    chosen.forEach(option -> page.text(option.sentence()));
    page.heading("The sum");
    total(sum);
    left();
    order.priceOpen().forEach(this::open);
    // Days rest on what the office reckons with: they are told, and not worked out here.
    order.days().ifPresent(days -> page.line("Days more", Choice.literal(days.plain())));
    page.heading("Who says yes, and by when");
    page.text(approval());
    order.accounts().agreement().since().forEach(each -> page.text(each.sentence()));
    order.accounts().agreement().preAgreed().ifPresent(this::rain);
    return again;
  }

  /** Where both sign, and whether a number was changed since. */
  void close(Choice<String> state) {
    page.signature("Owner");
    page.signature("Contractor");
    page.note(state);
  }

  private static Figure<Money> sum(List<Asked> asked, List<Chosen> chosen) {
    Figure<Money> sum = Figure.of(0, Units.USD);
    for (Asked item : asked) {
      sum = sum.plus(item.amount());
    }
    for (Chosen option : chosen) {
      sum = sum.plus(option.amount());
    }
    return sum.toCents().as("change_usd", Units.USD);
  }

  private void howMany(Asked item) {
    AgreedItem agreed = item.account().agreed();
    boolean isBeyond = agreed.included().value() > 0;
    String beyond =
        isBeyond ? ", beyond the %s in the price".formatted(agreed.included().plain()) : "";
    Figure<Ratio> shown = item.quantity().as("shown_" + item.account().item().word(), Units.RATIO);
    page.line(UnitWords.heading(agreed) + beyond, shown);
    again.count(UnitWords.label(agreed), shown);
  }

  /** An option has its own price, which no list of agreed prices tells: it stands here too. */
  private void howMany(Chosen chosen) {
    String label = chosen.option().labelInUnits();
    String name = "shown_" + chosen.name();
    Figure<Ratio> quantity = chosen.quantity().as(name, Units.RATIO);
    Figure<Money> each = chosen.price().as(name + "_each_usd", Units.USD);
    Figure<Money> all = chosen.amount().as(name + "_amount_usd", Units.USD);
    page.line(label, quantity);
    page.line("Each", each);
    page.line("In all", all);
    again.count(label, quantity).amount("Each", each).amount("In all", all);
  }

  /** What was agreed, every order that is not refused, and this one; the last payment takes it. */
  private void total(Figure<Money> sum) {
    Accounts accounts = order.accounts();
    Figure<Money> agreed = Told.of("agreed_usd", accounts.agreement().total());
    page.line("Agreed", agreed);
    Figure<Money> total = agreed;
    for (Order earlier : accounts.orders().all()) {
      if (earlier.isCounted()) {
        String number = earlier.number().replaceAll("\\W", "_");
        Figure<Money> each = Told.of("order_" + number + "_usd", earlier.sum());
        page.line("Change order %s, %s".formatted(earlier.number(), earlier.status().word()), each);
        total = total.plus(each);
      }
    }
    total = total.plus(sum).toCents().as("new_total_usd", Units.USD);
    page.line("New total", total);
    again.amount("New total", total);
    last(total);
  }

  /** More is paid last; less comes off the last payment, then off those before it. */
  private void last(Figure<Money> total) {
    List<Payment> payments =
        Payments.of(order.accounts().agreement(), job.lines(JobTable.STAGES), order.newTotal())
            .list();
    if (payments.isEmpty()) {
      return;
    }
    List<Payment> earlier = payments.subList(0, payments.size() - 1);
    Figure<Money> rest = total;
    if (!earlier.isEmpty()) {
      Figure<Money> before = Figure.of(0, Units.USD);
      for (Payment payment : earlier) {
        before = before.plus(payment.amount());
      }
      Figure<Money> kept = Told.of("earlier_payments_usd", before);
      boolean isAsAgreed =
          earlier.stream().allMatch(each -> each.amount().value() == each.agreed().value());
      page.line(
          isAsAgreed
              ? "Payments before the last, as agreed"
              : "Payments before the last, less what comes off",
          kept);
      rest = rest.minus(kept);
    }
    Payment last = payments.get(payments.size() - 1);
    Figure<Money> now = rest.toCents().as("last_payment_usd", Units.USD);
    page.line(
        last.amount().value() < 0
            ? last.stage()
            : "The last payment, %s, is then".formatted(last.stage()),
        now);
    again.amount("The last payment", now);
  }

  private void left() {
    left(Item.SHEET, "Sheets");
    left(Item.BOARD, "Feet of board");
  }

  private void left(Item item, String what) {
    order
        .leftBelowCeiling(item)
        .ifPresent(
            left -> {
              Figure<Ratio> told = Told.of(left.name(), left);
              page.line(what + " left below the agreed ceiling", told);
              again.count(what + " left below the ceiling", told);
            });
  }

  /** The reasons of its marks, each once with its places; the rest stands on the next page. */
  private void reasons() {
    Map<String, List<String>> placesByReason = new LinkedHashMap<>();
    for (ItemAccount item : order.asked()) {
      for (Share share : Asked.marksOf(item)) {
        placesByReason
            .computeIfAbsent(places.reason(Asked.why(share)), any -> new ArrayList<>())
            .add(places.where(share.mark(), share.key()));
      }
    }
    placesByReason.entrySet().stream()
        .limit(MOST_REASONS)
        .forEach(entry -> page.text(sentence(entry.getKey(), entry.getValue())));
    int more = placesByReason.size() - MOST_REASONS;
    if (more > 0) {
      page.text("Further reasons on the next page: %s.".formatted(more));
    }
  }

  private static String sentence(String reason, List<String> places) {
    String where =
        places.size() > MOST_PLACES
            ? places.size() + " places, listed on the next page"
            : places.stream().distinct().collect(joining("; "));
    int end = reason.indexOf(": ");
    return end < 0 || reason.lastIndexOf(' ', end) >= 0
        ? "%s: %s.".formatted(Places.headed(where), reason)
        : "%s%s (%s): %s."
            .formatted(
                reason.substring(0, 1).toUpperCase(Locale.ROOT),
                reason.substring(1, end),
                where,
                reason.substring(end + 2));
  }

  private void open(ItemAccount item) {
    page.line(
        "Beyond what was agreed to count, so we talk first; not in the sum: " + item.item().label(),
        Told.of("shown_" + item.item().word() + "_open", item.open()));
  }

  private String approval() {
    String who =
        job.knows(LifeFields.APPROVER) ? job.fact(LifeFields.APPROVER).value() : "The owner";
    String how =
        job.knows(LifeFields.APPROVER_CONTACT)
            ? " (%s)".formatted(job.fact(LifeFields.APPROVER_CONTACT).value())
            : "";
    String when =
        job.knows(LifeFields.ANSWER_WITHIN)
            ? ", " + on.after(job.fact(LifeFields.ANSWER_WITHIN))
            : "";
    return who + how + when + ".";
  }

  private void rain(PreAgreed agreed) {
    List<String> limits = new ArrayList<>();
    agreed.sheets().ifPresent(sheets -> limits.add(Item.SHEET.counted(sheets)));
    agreed.sum().ifPresent(sum -> limits.add(sum.shown()));
    page.heading("If nobody answers and rain comes");
    page.text(
        "As agreed, we do up to %s over all without a further yes, photograph it, and close the roof. What goes beyond waits under cover for your answer."
            .formatted(String.join(" and ", limits)));
    order
        .isPreAgreed()
        .ifPresent(
            within ->
                page.line(
                    "This order stays within that",
                    Choice.literal((within.holds() ? YesNo.YES : YesNo.NO).word())));
  }
}
