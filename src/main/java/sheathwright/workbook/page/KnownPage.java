package sheathwright.workbook.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.QuoteLines;
import sheathwright.job.life.LifeFields;
import sheathwright.job.price.FoundFields;
import sheathwright.job.table.Row;
import sheathwright.workbook.book.Tab;

/** What is known of a job before any of it is worked out. */
final class KnownPage {

  private KnownPage() {}

  static void write(Tab tab, Estimate estimate, QuoteLines quote, LevelPages levels) {
    Job job = estimate.job();
    tab.heading("Facts of the job");
    Map<String, Traced> facts = new LinkedHashMap<>(job.labeledFacts());
    facts.keySet().removeAll(job.siteFacts().keySet());
    entries(tab, facts);
    if (!job.knows(JobFields.BILL_RULE)) {
      tab.entry(JobFields.BILL_RULE.label(), estimate.billRule(), "the usual rule");
    }
    called(tab, job);
    SitePage.known(tab, estimate, job.siteFacts());
    unsaid(tab, estimate);
    DeckPages.measured(tab, estimate);
    levels.readings(tab);
    levels.whenDone(tab);
    tab.heading("Prices, before tax");
    entries(tab, job.labeledPrices());
    job.lumber()
        .roll()
        .ifPresent(
            roll -> {
              tab.heading("Lumber on sale, before tax");
              tab.list(
                  roll,
                  List.of("Size", "Length, ft", "Each"),
                  Sections.units(null, Units.FOOT, Units.USD_PER_PIECE));
            });
    tab.heading("Rates");
    entries(tab, job.labeledRates());
    job.priceSteps()
        .usual()
        .ifPresent(step -> tab.entry(FoundFields.ROUND.label(), step, "the usual step"));
  }

  /** What was asked before anybody went there, as far as it was answered. */
  private static void called(Tab tab, Job job) {
    List<Row> answered =
        job.lines(JobTable.FIRST_CALL).stream().filter(row -> row.has(LifeFields.ANSWER)).toList();
    if (!answered.isEmpty()) {
      tab.heading("Said on the first call");
      answered.forEach(
          row -> tab.shown(row.of(LifeFields.QUESTION).value(), row.of(LifeFields.ANSWER), ""));
    }
  }

  /** What nobody has looked at yet has cells of its own, so that it can be said later. */
  private static void unsaid(Tab tab, Estimate estimate) {
    Map<String, Traced> unsaid = estimate.loadPath().unsaid();
    if (!unsaid.isEmpty()) {
      tab.heading("Not looked at yet");
      tab.note("Whoever looks says these at the end of the tab job; the page Proof follows.");
      entries(tab, unsaid);
    }
  }

  /** Each with where it stood. */
  private static void entries(Tab tab, Map<String, Traced> labeled) {
    labeled.forEach((label, value) -> tab.shown(label, value, value.source().text()));
  }
}
