package sheathwright.workbook.page;

import java.util.List;
import sheathwright.figure.Choice;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.QuoteLines;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemLines;
import sheathwright.sheathing.place.BillRule;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.LinesChart;

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

  private final Book book;
  private final Tab tab;
  private final Estimate estimate;
  private final Job job;
  private final QuoteLines quote;

  FrontPage(Book book, Tab tab, Estimate estimate, QuoteLines quote) {
    this.book = book;
    this.tab = tab;
    this.estimate = estimate;
    this.job = estimate.job();
    this.quote = quote;
  }

  /**
   * Writes the page.
   *
   * @param lines where the quote's lines stand
   */
  void write(Listing lines) {
    if (tab.audience().isOffice()) {
      office();
    } else {
      homeowner(lines);
    }
  }

  private void facts() {
    for (Field<Choice<String>> fact : FACTS) {
      tab.link(fact.label(), job.fact(fact), "");
    }
  }

  private void office() {
    tab.heading("The job");
    facts();
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
        "What we know and What we found hold the inputs; What to do, Order, Layout and What it costs the answers; Proof the checks that an inspector asks"
            + " for; Self-check whether it all still ties; Working every step with its source; Tables the published values.");
    tab.paragraph(
        "This file holds costs, overhead and margin. The homeowner gets quote.xlsx, which holds none of them.");
    Sections.cautions(tab);
  }

  /** What stood in the tables and is hardly what was meant. */
  private void asked() {
    List<String> questions = ProblemLines.of(job.questions());
    if (!questions.isEmpty()) {
      tab.heading("To be asked, as the tables were read");
      questions.forEach(tab::caution);
    }
  }

  private void homeowner(Listing lines) {
    tab.heading("Your quote");
    facts();
    tab.link(
        JobFields.VALID_DAYS.label(), job.fact(JobFields.VALID_DAYS), "from the date of the quote");
    tab.heading("The price");
    tab.repeatedTotal("You pay", quote.total(), "line by line on the tab What it costs");
    tab.repeat("Deck sheets in that price", estimate.plannedSheets(), "");
    tab.repeat(
        "Each sheet more, if it is found bad",
        quote.extraSheet(),
        "shown to you before it is covered");
    tab.repeat("Credit for each sheet that is not needed", quote.credit(), "");
    tab.repeat("Most it can come to, every sheet bad", quote.worstCase(), "");
    PlainWords words = new PlainWords(tab, estimate.framing());
    tab.linkedVerdict("Your rafters", estimate.framing().decision());
    words.decision();
    tab.repeat("Checks that nobody could make", estimate.checksNotLookedAt(), "see Proof");
    tab.paragraph(
        "Where Proof says not looked at, nobody has seen that part of your roof. It is neither safe nor unsafe until somebody does.");
    tab.paragraph(Cautions.SCREENING + " " + Cautions.SISTERS);
    tab.paragraph(
        "What was found, who decides about it, why, and what may go on meanwhile stand on the tab "
            + StopPage.TAB
            + "; what to look out for while we work, on the tab What to do.");
    tab.heading("Where the money goes");
    LinesChart.draw(book, tab, lines);
    tab.heading("Why a price for sheets that nobody has seen");
    tab.paragraph(
        "The wood deck under the old roof cannot be seen until the roof is off. So the price holds a number of sheets, and"
            + " says now what each one more, or each one fewer, will change. A sheet is taken out, replaced, nailed and"
            + " carried away.");
    tab.entry("One sheet is", oneSheet(), "");
    said(JobFields.LOOKED_AT, "We looked at: ");
    said(JobFields.NOT_LOOKED_AT, "We could not see: ");
    tab.heading("Agreed");
    words.signatures();
    tab.paragraph(
        "Local law decides what a contract must say. This quote is not one until both have signed a contract that does.");
  }

  /** What counts as one sheet, in words that follow the bill's rule. */
  private Choice<String> oneSheet() {
    Choice<BillRule> rule = estimate.billRule();
    Choice<String> byArea = Choice.literal("32 sq ft of it, the sum up to the next quarter");
    Choice<String> byHalves =
        Choice.literal("a piece of over 16 sq ft; one of up to 16 sq ft is half a sheet");
    Choice<String> byPlaces = Choice.literal("any one piece that lies there, whole or cut");
    Choice<String> notByPlaces =
        Choice.choose(rule.is(BillRule.HALF), byHalves, byArea).as("one_sheet_by_size_is");
    return Choice.choose(rule.is(BillRule.PLACE), byPlaces, notByPlaces).as("one_sheet_is");
  }

  private void said(Field<Choice<String>> fact, String before) {
    if (job.knows(fact)) {
      tab.paragraph(before + job.fact(fact).value());
    }
  }
}
