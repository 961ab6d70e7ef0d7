package sheathwright.workbook.page;

import sheathwright.job.Estimate;
import sheathwright.job.QuoteLines;
import sheathwright.job.Survey;
import sheathwright.job.price.FoundPrice;
import sheathwright.leveling.plan.LevelCost;
import sheathwright.pricing.PiecePrice;
import sheathwright.pricing.UnitPrice;
import sheathwright.workbook.book.Tab;

/** What it costs: how each price was built up, and the quote's lines. */
final class CostPage {

  private static final String WORST = "every place of the old deck, by the bill's rule";

  private CostPage() {}

  /** Writes the page. */
  static void write(Tab tab, Estimate estimate, QuoteLines quote) {
    builtUp(tab, estimate);
    Sections.lines(tab, estimate, quote);
    tab.heading("If more is found");
    tab.repeat("An extra sheet", quote.extraSheet(), "");
    tab.repeat("Credit for a sheet not needed", quote.credit(), "");
    quote.extras().forEach((unit, price) -> tab.repeat(unit.label(), price, "each " + unit.each()));
    tab.entry("Sheets of the whole deck at worst", estimate.sheetsAtWorst(), WORST);
    tab.entry("Sheets that could still turn out bad", quote.mostExtraSheets(), "all of the deck");
    quote
        .mostBoards()
        .ifPresent(
            feet -> {
              tab.entry("Feet of board of the deck at worst", feet, "every board of it");
              tab.entry("All of them", quote.allBoards().orElseThrow(), "");
            });
    tab.total(
        "Most it can come to",
        quote.worstCase(),
        quote.held().isPresent()
            ? "all of the deck replaced; without what waits for the engineer"
            : "all of the deck replaced");
  }

  private static void builtUp(Tab tab, Estimate estimate) {
    sheet(tab, "A planned sheet", estimate.plannedSheet());
    sheet(tab, "An extra sheet, found on the day", estimate.extraSheet());
    estimate.found().forEach(price -> found(tab, price));
    estimate
        .rafterLeveling()
        .ifPresent(
            leveling -> {
              piece(tab, "A sistered rafter", leveling.sisterPrice());
              piece(tab, "A shimmed rafter", leveling.shimPrice());
              leveling.survey().ifPresent(survey -> survey(tab, survey));
            });
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
    tab.aside("Direct cost", price.direct(), "material with waste and tax, labor, dump fee");
    tab.aside("With overhead and margin", price.exact(), "");
    tab.total("Quoted", price.quoted(), "up to the step of prices");
  }

  private static void found(Tab tab, FoundPrice price) {
    tab.heading(price.unit().label() + ", each " + price.unit().each());
    tab.aside("Direct cost", price.direct(), "material with tax, labor");
    tab.aside("With overhead and margin", price.exact(), "");
    tab.total("Quoted", price.quoted(), "up to the step of prices");
  }

  private static void piece(Tab tab, String what, PiecePrice price) {
    tab.heading(what);
    tab.aside("Direct cost", price.direct(), "material with tax, labor");
    tab.aside("With overhead and margin", price.exact(), "");
    tab.total("Quoted", price.quoted(), "up to the step of prices");
  }
}
