package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.QuoteLines;
import sheathwright.job.Survey;
import sheathwright.job.table.ProblemLines;
import sheathwright.leveling.plan.LevelCost;
import sheathwright.pricing.PiecePrice;
import sheathwright.pricing.UnitPrice;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Tab;

/**
 * The office's own workbook of a job: what is known, what to buy, what it costs and why. Not for
 * the homeowner.
 */
public final class EstimateBook {

  private final Estimate estimate;
  private final Job job;
  private final Book book = new Book();
  private final LevelPages levels;
  private final Selfcheck selfcheck;

  private EstimateBook(Estimate estimate) {
    this.estimate = estimate;
    this.job = estimate.job();
    this.levels = new LevelPages(book, estimate);
    this.selfcheck = new Selfcheck(estimate.ties());
  }

  /** The workbook of an estimate, as the bytes of an .xlsx file; refused if a cell has no value. */
  public static byte[] bytes(Estimate estimate) {
    EstimateBook book = new EstimateBook(estimate);
    return JobBooks.laidOut(book.book, book::written);
  }

  /** The same, for tests that need to know where each input stands. */
  public static Book book(Estimate estimate, java.util.function.Consumer<byte[]> bytes) {
    EstimateBook written = new EstimateBook(estimate);
    bytes.accept(JobBooks.laidOut(written.book, written::written));
    return written.book;
  }

  private byte[] written() {
    String subtitle = job.text("job_name").plain() + " · estimate, for the office only";
    JobTabs tabs = JobTabs.of(book, estimate, subtitle);
    known(tabs.known());
    DeckPages.found(tabs.found(), estimate);
    DeckPages.work(tabs.work(), estimate);
    levels.charts(tabs.work());
    Sections.cautions(tabs.work());
    buy(tabs.buy());
    costs(tabs.costs());
    ProofPage.write(tabs.proof(), estimate);
    selfcheck.write(tabs.check(), headlines());
    front(tabs.front());
    Sections.titles(book, selfcheck);
    return book.finished(tabs.working(), tabs.tables());
  }

  private List<Figure<Money>> headlines() {
    return List.of(estimate.total(), estimate.quote().worstCase());
  }

  private void front(Tab tab) {
    tab.heading("The job");
    for (String fact :
        List.of("job_name", "customer", "site", "prepared_by", "quote_number", "quote_date")) {
      tab.link(Sections.label(job, fact), job.text(fact), "");
    }
    tab.heading("In short");
    tab.linkedTotal("The homeowner pays", estimate.total(), "");
    tab.link("At worst, every sheet replaced", estimate.quote().worstCase(), "");
    tab.link("Deck", estimate.deckArea(), "");
    tab.link("Sheets in the price", estimate.plannedSheets(), "");
    tab.link("An extra sheet", estimate.extraSheet().quoted(), "found on the day");
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              tab.link("Rafters to sister", leveling.sisters(), "");
              tab.link("Rafters to shim", leveling.shims(), "");
            });
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    asked(tab);
    tab.heading("How to use this workbook");
    tab.paragraph(
        "Straw-colored cells with a frame are inputs: change them and everything follows. All other cells are formulas or"
            + " text and are locked, without a password, against slips only.");
    tab.paragraph(
        "What we know and What we found hold the inputs; What to do, What to buy and What it costs the answers; Proof the checks that an inspector asks"
            + " for; Working every step with its source; Tables the published values; Self-check whether it all still ties.");
    tab.paragraph(
        "This file holds costs, overhead and margin. The homeowner gets quote.xlsx, which holds none of them.");
    Sections.cautions(tab);
  }

  /** What stood in the tables and is hardly what was meant. */
  private void asked(Tab tab) {
    List<String> questions = ProblemLines.of(job.questions());
    if (!questions.isEmpty()) {
      tab.heading("To be asked, as the tables were read");
      questions.forEach(tab::caution);
    }
  }

  private void known(Tab tab) {
    tab.heading("Facts of the job");
    job.labeledFacts().forEach((label, value) -> tab.entry(label, value, value.source().text()));
    DeckPages.measured(tab, estimate);
    levels.readings(tab);
    tab.heading("Prices, before tax");
    job.labeledPrices().forEach((label, value) -> tab.entry(label, value, value.source().text()));
    tab.heading("Rates");
    job.labeledRates().forEach((label, value) -> tab.entry(label, value, value.source().text()));
  }

  private void buy(Tab tab) {
    tab.heading("The order");
    tab.linkedVerdict("The rafters", estimate.framing().decision());
    List<Unit<?>> units = new ArrayList<>();
    units.add(null);
    units.add(Units.RATIO);
    units.add(null);
    units.add(Units.RATIO);
    units.add(Units.RATIO);
    tab.list(
        estimate.order(),
        List.of("What", "Needed", "Unit", "In a package", "Packages to buy, incl. overage"),
        units);
    tab.heading("Counts behind it");
    tab.entry("Deck sheets, by area", estimate.deckSheets(), "a quick count, not a layout");
    tab.entry("Nails in each sheet", estimate.nailsInASheet(), "at the job's spacing");
    DeckPages.layout(tab, estimate);
    DeckPages.cutting(tab, estimate);
    levels.stock(tab);
  }

  private void costs(Tab tab) {
    sheet(tab, "A planned sheet", estimate.plannedSheet());
    sheet(tab, "An extra sheet, found on the day", estimate.extraSheet());
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              piece(tab, "A sistered rafter", leveling.sisterPrice());
              piece(tab, "A shimmed rafter", leveling.shimPrice());
              leveling.survey().ifPresent(survey -> survey(tab, survey));
            });
    QuoteLines quote = estimate.quote();
    Sections.lines(tab, estimate, quote);
    tab.heading("If more is found");
    tab.link("An extra sheet", quote.extraSheet(), "");
    tab.link("Credit for a sheet not needed", quote.credit(), "");
    tab.entry(
        "Sheets of the whole deck at worst",
        estimate.sheetsAtWorst(),
        "by area or as they are laid, whichever are more");
    tab.entry("Sheets that could still turn out bad", quote.mostExtraSheets(), "all of the deck");
    tab.total("At worst", quote.worstCase(), "every sheet of the deck replaced");
  }

  /** What straightening takes, as the survey has it. */
  private static void survey(Tab tab, Survey survey) {
    for (int i = 0; i < survey.planes().size(); i++) {
      LevelCost cost = survey.costs().get(i);
      tab.heading("Straightening plane " + survey.planes().get(i).name() + ", before tax");
      tab.list(cost.sticks());
      tab.entry("Sticks for sisters", cost.sisters(), "each out of a stick of its own");
      tab.entry("Strips", cost.shims(), "");
      tab.entry("Hours", cost.hours(), "");
      tab.entry("Labor", cost.labor(), "");
      tab.total("Direct cost", cost.total(), "");
    }
    survey
        .cutting()
        .ifPresent(
            cutting -> {
              tab.entry("Sticks by the cut list", cutting.cost(), "of all planes together");
              tab.entry("At least", cutting.atLeast(), "no cutting of these costs less");
            });
  }

  private static void sheet(Tab tab, String what, UnitPrice price) {
    tab.heading(what);
    tab.entry("Direct cost", price.direct(), "material with waste and tax, labor, dump fee");
    tab.entry("With overhead and margin", price.exact(), "");
    tab.total("Quoted", price.quoted(), "up to a whole dollar");
  }

  private static void piece(Tab tab, String what, PiecePrice price) {
    tab.heading(what);
    tab.entry("Direct cost", price.direct(), "material with tax, labor");
    tab.entry("With overhead and margin", price.exact(), "");
    tab.total("Quoted", price.quoted(), "up to a whole dollar");
  }
}
