package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.life.Item;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.bill.NextOrder;
import sheathwright.life.bill.PreAgreed;
import sheathwright.life.bill.Share;

/**
 * The first page of a change order, which the owner reads on a phone: what, why, how much, by when.
 */
final class OrderPhonePage {

  private static final int MOST_REASONS = 4;

  private final PhonePage page;
  private final Job job;
  private final NextOrder order;
  private final Moment on;

  OrderPhonePage(PhonePage page, Job job, NextOrder order, Moment on) {
    this.page = page;
    this.job = job;
    this.order = order;
    this.on = on;
  }

  void write() {
    page.headline("This change order", order.sum());
    page.text(job.fact(JobFields.JOB_NAME).value() + ", " + job.fact(JobFields.SITE).value());
    page.heading("How many");
    order.asked().forEach(this::howMany);
    order.chosen().forEach(option -> page.line(option.labelInUnits(), option.now()));
    page.heading("Why");
    reasons();
    page.heading("The sum");
    page.line("Agreed", order.accounts().agreement().total());
    page.line("New total", order.newTotal());
    order
        .leftBelowCeiling()
        .ifPresent(left -> page.line("Sheets left below the agreed ceiling", left));
    order.priceOpen().forEach(this::open);
    // Days rest on what the office reckons with: they are told, and not worked out here.
    order.days().ifPresent(days -> page.line("Days more", Choice.literal(days.plain())));
    page.heading("Who says yes, and by when");
    page.text(approval());
    order.accounts().agreement().preAgreed().ifPresent(this::rain);
    page.signature("Owner");
    page.signature("Contractor");
  }

  private void howMany(ItemAccount item) {
    boolean isBeyond = item.agreed().included().value() > 0;
    String beyond =
        isBeyond ? ", beyond the %s in the price".formatted(item.agreed().included().plain()) : "";
    page.line(UnitWords.heading(item.agreed()) + beyond, item.now());
  }

  /** The reasons of its marks, each once with its places; the rest stands on the next page. */
  private void reasons() {
    Map<String, List<String>> placesByReason = new LinkedHashMap<>();
    for (ItemAccount item : order.asked()) {
      for (Share share : item.shares()) {
        if (MarksPage.isAsked(share)) {
          placesByReason
              .computeIfAbsent(MarksPage.why(share), any -> new ArrayList<>())
              .add(share.key());
        }
      }
    }
    placesByReason.entrySet().stream()
        .limit(MOST_REASONS)
        .forEach(entry -> page.text(sentence(entry.getKey(), entry.getValue())));
    order.chosen().forEach(option -> page.text(MarksPage.why(option)));
    int more = placesByReason.size() - MOST_REASONS;
    if (more > 0) {
      page.text("Further reasons on the next page: %d.".formatted(more));
    }
  }

  /**
   * {@code Replace A-4-6, B-5-3: an awl goes in 3/8 in.} from a reason that begins with its action.
   */
  private static String sentence(String reason, List<String> places) {
    String where = String.join(", ", places);
    int end = reason.indexOf(": ");
    return end < 0 || reason.lastIndexOf(' ', end) >= 0
        ? "%s: %s.".formatted(where, reason)
        : "%s%s %s: %s."
            .formatted(
                reason.substring(0, 1).toUpperCase(Locale.ROOT),
                reason.substring(1, end),
                where,
                reason.substring(end + 2));
  }

  private void open(ItemAccount item) {
    page.line(
        "Beyond what was agreed to count, so we talk first; not in the sum: " + item.item().label(),
        item.open());
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
        .ifPresent(within -> page.line("This order stays within that", within.as("is_pre_agreed")));
  }
}
