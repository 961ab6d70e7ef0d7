package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.QuoteLines;
import sheathwright.job.table.Field;
import sheathwright.life.doubt.Doubts;
import sheathwright.workbook.book.Tab;

/** The page that is read first. */
final class FrontPage {

  private static final List<Field<Choice<String>>> FACTS =
      List.of(
          JobFields.JOB_NAME,
          JobFields.CUSTOMER,
          JobFields.SITE,
          JobFields.PREPARED_BY,
          JobFields.QUOTE_NUMBER,
          JobFields.QUOTE_DATE);

  private final Tab tab;
  private final Estimate estimate;
  private final Job job;
  private final QuoteLines quote;
  private final String document;
  private final Doubts doubts;

  FrontPage(Tab tab, Estimate estimate, QuoteLines quote, String document, Doubts doubts) {
    this.document = document;
    this.doubts = doubts;
    this.tab = tab;
    this.estimate = estimate;
    this.job = estimate.job();
    this.quote = quote;
  }

  private void facts() {
    for (Field<Choice<String>> fact : FACTS) {
      tab.link(fact.label(), job.fact(fact), "");
    }
    tab.document(document);
  }

  /** Which tables the office keeps for all its jobs, and where they were found. */
  private void office() {
    List<String> above = job.fromAbove();
    if (!above.isEmpty()) {
      tab.paragraph(
          "From above the job's folder, for all jobs of the office: %s."
              .formatted(String.join(", ", above)));
    }
  }

  /** Writes the page. */
  void write() {
    tab.heading("The job");
    facts();
    office();
    tab.heading("In short");
    tab.repeatedTotal("The homeowner pays", quote.total(), "");
    tab.repeat("At worst, every sheet replaced", quote.worstCase(), "");
    tab.repeat("Deck", estimate.deckArea(), "");
    tab.repeat("Sheets in the price", estimate.plannedSheets(), "");
    tab.repeat("An extra sheet", quote.extraSheet(), "found on the day");
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              tab.repeat("Rafters to sister", leveling.sisters(), "");
              tab.repeat("Rafters to shim", leveling.shims(), "");
            });
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    SitePage.front(tab, estimate);
    asked();
    tab.heading("How to use this workbook");
    tab.paragraph(
        "Straw-colored cells with a frame are inputs: change them and everything follows. All other cells are formulas or"
            + " text and are locked, without a password, against slips only.");
    tab.paragraph(
        "The tabs called as the job's tables are (job, planes, prices, ...) hold the inputs; What we know and What we found show them; What to do, Order, Layout and What it costs the answers; Proof the checks that an inspector asks"
            + " for; Self-check whether it all still ties; Working every step with its source; Tables the published values.");
    tab.paragraph(
        "Once inputs are changed, lines too, give this file to the command quote instead of the job's folder: what must be solved is solved anew,"
            + " and History tells what changed.");
    tab.paragraph(
        "This file holds costs, overhead and margin. The homeowner gets quote.xlsx, which holds none of them.");
    Sections.cautions(tab);
  }

  /** What stood in the tables and is hardly what was meant. */
  private void asked() {
    List<String> questions = doubts.lines();
    if (!questions.isEmpty()) {
      tab.heading("To be asked, as the tables were read");
      questions.forEach(tab::caution);
    }
  }
}
