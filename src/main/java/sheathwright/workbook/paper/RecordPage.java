package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.life.bill.Accounts;
import sheathwright.life.bill.ItemAccount;
import sheathwright.life.found.Found;
import sheathwright.sheathing.Layouts;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.told.OnceMore;
import sheathwright.workbook.told.Places;
import sheathwright.workbook.told.Sheaf;
import sheathwright.workbook.told.Waiting;

/**
 * The first page of a deck record: which house, what was done, what lies there now, what was left.
 */
final class RecordPage {

  private static final int[] WIDTHS = {40, 12, 12, 13, 14, 17};

  private final Sheaf sheaf;
  private final Estimate estimate;
  private final Job job;
  private final Accounts accounts;

  RecordPage(Paper paper, Estimate estimate, Accounts accounts) {
    sheaf = paper.sheaf("Deck record", WIDTHS);
    this.estimate = estimate;
    this.job = estimate.job();
    this.accounts = accounts;
  }

  /**
   * Writes the page.
   *
   * @param sums how much of each item was done, as another page counts it
   * @param photographs how many there are, in words
   * @param again takes its numbers, to be told once more
   */
  void write(Map<ItemAccount, Figure<Ratio>> sums, String photographs, OnceMore again) {
    Tab tab = sheaf.tab();
    tab.paragraph(
        "Keep this for as long as the house stands, and hand it on with the house. It says what was seen and done; what nobody saw is neither sound nor unsound.");
    house();
    tab.heading("What was done");
    sums.forEach(
        (item, sum) -> {
          Figure<Ratio> shown = sum.as("shown_" + sum.name(), Units.RATIO);
          tab.entry(UnitWords.label(item.agreed()), shown, "");
          again.count(UnitWords.label(item.agreed()), shown);
        });
    if (sums.isEmpty()) {
      tab.paragraph("Nothing of the deck was replaced, nailed again or otherwise put right.");
    }
    tab.heading("What lies there, and how it is held");
    Paper.fact(tab, "Gap between sheets", Spoken.of(gap()) + ", between those that are new");
    estimate.site().inspected().stream()
        .filter(asked -> asked.value().refusal().isEmpty())
        .forEach(asked -> Paper.fact(tab, asked.what(), Spoken.of(asked.value())));
    sheaf.heading("Photographs");
    sheaf.paragraph(photographs);
    left();
  }

  /** Says below all else whether a number was changed since. */
  void close(Choice<String> state) {
    sheaf.keep(Tab.LINE_HEIGHT);
    sheaf.tab().value(sheaf.tab().line(), 0, state, Part.NOTE);
  }

  private void house() {
    Tab tab = sheaf.tab();
    tab.heading("The house");
    for (Field<Choice<String>> fact :
        List.of(JobFields.JOB_NAME, JobFields.SITE, JobFields.CUSTOMER, JobFields.PREPARED_BY)) {
      Paper.fact(tab, fact.label(), job.fact(fact).value());
    }
    for (Field<Choice<String>> day :
        List.of(LifeFields.AGREED_ON, LifeFields.OPENED_ON, LifeFields.CLOSED_ON)) {
      if (job.knows(day)) {
        Paper.fact(tab, day.label(), Moment.spoken(job.fact(day).value()));
      }
    }
  }

  private Figure<?> gap() {
    return job.knows(JobFields.GAP) ? job.fact(JobFields.GAP) : Layouts.usual().gap();
  }

  /** What was found and not done, and what the owner decided otherwise. */
  private void left() {
    Places places = Places.of(estimate);
    List<String> all = new ArrayList<>(Declined.sentences(job));
    for (ItemAccount item : accounts.items()) {
      item.shares().stream()
          .filter(share -> share.declined().value() > 0)
          .forEach(
              share ->
                  all.add(
                      "The owner refused it: %s, %s."
                          .formatted(
                              places.told(share.mark(), share.key()),
                              places.reason(share.reason()))));
    }
    for (Found found : accounts.uncharged()) {
      all.add(
          "%s: %s."
              .formatted(places.told(found.mark(), found.key()), places.reason(found.reason())));
    }
    Waiting.sentences(estimate).forEach(each -> all.add("Somebody else decides: " + each));
    sheaf.heading("What was left as it is");
    if (all.isEmpty()) {
      sheaf.paragraph("Nothing that was found was left.");
    }
    all.forEach(sheaf::paragraph);
  }
}
