package sheathwright.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.fastening.count.NailCounts;
import sheathwright.fastening.count.Nailing;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.SheetMaterial;
import sheathwright.pricing.UnitPrice;
import sheathwright.pricing.UnitPrices;
import sheathwright.roof.SheetSize;
import sheathwright.sheathing.layout.SheetCounts;
import sheathwright.sheathing.place.BillRule;

/**
 * Everything that is worked out from a job's tables: what to buy, what it costs, and the proof of
 * both.
 */
public final class Estimate {

  /** One thing that must hold, in words. */
  public record Tie(String what, Condition holds) {

    /** That all hold, each in a cell of its own, so that no formula grows with their number. */
    public static Tie all(String what, String name, List<Condition> each) {
      List<Condition> named = new ArrayList<>();
      for (Condition condition : each) {
        named.add(condition.as(name + (named.size() + 1)).is(YesNo.YES));
      }
      return new Tie(what, Condition.all(named.toArray(Condition[]::new)));
    }
  }

  /** What one sheet is where the job does not say; whoever holds the workbook may. */
  private static final Choice<BillRule> USUAL_RULE =
      Choice.input(JobFields.BILL_RULE.name(), BillRule.HALF, Source.COMMON_PRACTICE);

  private final Job job;
  private final Deck deck;
  private final DeckAreas areas;
  private final Figure<Area> deckArea;
  private final Figure<Sheets> deckSheets;
  private final Choice<BillRule> billRule;
  private final Figure<Sheets> sheetsAtWorst;
  private final Figure<Sheets> plannedSheets;
  private final Figure<Per<Nails, Sheets>> nails;
  private final UnitPrice plannedSheet;
  private final UnitPrice extraSheet;
  private final Leveling leveling;
  private final Framing framing;
  private final QuoteLines quote;
  private final Roll order;
  private final Roll maker;

  /** Works out the job whose tables are in a folder: {@code estimate("quince-hollow")}. */
  public static Estimate estimate(String folder) {
    return new Estimate(Job.in(Path.of(folder)));
  }

  /**
   * Works a job out.
   *
   * @throws ProblemsException if a part of it is refused, with every part's refusal and its place.
   *     A single value may still be refused: that is found where it is written down
   */
  public Estimate(Job job) {
    this.job = job;
    Refusals refusals = new Refusals();
    Optional<Deck> laid = refusals.tried(() -> new Deck(job));
    Optional<Framing> screened = refusals.tried(() -> new Framing(job));
    Optional<Leveling> straightened =
        screened
            .filter(any -> job.levelsRafters())
            .flatMap(known -> refusals.tried(() -> RafterWork.of(job, known)));
    refusals.raise();
    deck = laid.orElseThrow();
    framing = screened.orElseThrow();
    leveling = straightened.orElse(null);
    areas = new DeckAreas(job, deck);
    deckArea = areas.total();
    deckSheets =
        SheetCounts.sheetsByArea(deckArea, Figure.of(0, Units.PERCENT))
            .as("deck_sheets", Units.SHEET);
    billRule = job.knows(JobFields.BILL_RULE) ? job.fact(JobFields.BILL_RULE) : USUAL_RULE;
    sheetsAtWorst = deck.units().of(deckArea).by(billRule, "sheets_at_worst");
    plannedSheets = job.fact(JobFields.PLANNED_SHEETS);
    nails =
        NailCounts.nailsPerSheet(
                job.fact(JobFields.SUPPORT_SPACING),
                Nailing.edge(job.fact(JobFields.EDGE_SPACING))
                    .field(job.fact(JobFields.FIELD_SPACING))
                    .blockedEdges(job.fact(JobFields.BLOCKED_EDGES)),
                SheetSize.FOUR_BY_EIGHT)
            .as("nails_in_a_sheet", Units.NAILS_PER_SHEET);
    plannedSheet = named("planned_sheet", sheetPrice(job, nails, OfficeFields.PLANNED_SHEET_HOURS));
    extraSheet = named("extra_sheet", sheetPrice(job, nails, OfficeFields.EXTRA_SHEET_HOURS));
    SheetWork work =
        new SheetWork(plannedSheets, sheetsAtWorst, nails, plannedSheet, extraSheet, straightened);
    quote = QuoteLines.of(job, work);
    order = OrderLines.of(job, work);
    maker = job.maker().isEmpty() ? null : MakerRequirement.roll(job.maker());
  }

  private static UnitPrice sheetPrice(
      Job job, Figure<Per<Nails, Sheets>> nails, Field<Figure<Per<Time, Sheets>>> hours) {
    return UnitPrices.sheetUnitPrice(
        SheetMaterial.sheet(job.price(OfficeFields.SHEET_PRICE))
            .waste(job.rate(OfficeFields.WASTE))
            .nails(nails, job.price(OfficeFields.NAIL_PRICE))
            .extras(job.priceIfGiven(OfficeFields.SHEET_EXTRAS_PRICE)),
        job.rate(hours),
        Disposal.of(job.rate(OfficeFields.SHEET_DISPOSAL), job.rate(OfficeFields.DISPOSAL)),
        job.rates());
  }

  private static UnitPrice named(String what, UnitPrice price) {
    return new UnitPrice(
        price.direct().as(what + "_direct_usd", Units.USD_PER_SHEET),
        price.exact().as(what + "_exact_usd", Units.USD_PER_SHEET),
        price.quoted().as(what + "_quoted_usd", Units.USD_PER_SHEET));
  }

  /** That the price does not hold more sheets than the map of the old deck has. */
  private Tie sheetsTie() {
    return new Tie(
        "The sheets in the price are not more than the map of the old deck counts",
        plannedSheets.isAtMost(sheetsAtWorst));
  }

  /** That what is quoted for a piece of work is its exact price, up to a whole dollar. */
  private Tie quotedTie() {
    List<Condition> all = new ArrayList<>();
    all.add(isUpToADollar(plannedSheet.exact(), plannedSheet.quoted()));
    all.add(isUpToADollar(extraSheet.exact(), extraSheet.quoted()));
    rafterLeveling()
        .ifPresent(
            leveling ->
                Stream.of(leveling.sisterPrice(), leveling.shimPrice())
                    .forEach(price -> all.add(isUpToADollar(price.exact(), price.quoted()))));
    return new Tie(
        "Every price quoted is its exact price, up to a whole dollar",
        Condition.all(all.toArray(Condition[]::new)));
  }

  private static Condition isUpToADollar(Figure<?> exact, Figure<?> quoted) {
    return exact.roundedUp().isTheSameAs(quoted);
  }

  /** That nobody has to decide before the crew repairs. */
  public Tie stopTie() {
    return new Tie(
        "Nothing stops the repair of the rafters; if not, a licensed engineer decides first",
        framing.mayRepair().is(YesNo.YES));
  }

  /** That whatever was solved was solved for what the tables say now. */
  private List<Tie> solvedTies() {
    return solutions().stream()
        .map(
            solution ->
                new Tie(
                    "Solved for what stands here now: " + Shown.inWords(solution.name()),
                    solution.state().is(Solution.CURRENT)))
        .toList();
  }

  /** Everything that was solved. */
  public List<Solution> solutions() {
    List<Solution> all = new ArrayList<>(deck.solutions());
    rafterLeveling().flatMap(Leveling::survey).ifPresent(survey -> all.addAll(survey.solutions()));
    return all;
  }

  /** What must hold for the sums to tie and the prices to make sense. */
  public List<Tie> ties() {
    return ties(quote);
  }

  /**
   * The same.
   *
   * @param quote its lines, as one reader is told their prices
   */
  public List<Tie> ties(QuoteLines quote) {
    List<Tie> ties = new ArrayList<>();
    ties.addAll(quote.ties());
    ties.add(
        new Tie(
            "The total is not more than the worst case",
            quote.total().isAtMost(quote.worstCase())));
    ties.add(quotedTie());
    ties.add(sheetsTie());
    ties.add(
        new Tie(
            "A planned sheet sells for at least its cost",
            plannedSheet.direct().isAtMost(plannedSheet.quoted())));
    ties.add(
        new Tie(
            "An extra sheet sells for at least its cost",
            extraSheet.direct().isAtMost(extraSheet.quoted())));
    ties.add(
        new Tie(
            "The credit for a sheet not needed is not more than its price",
            quote.credit().isAtMost(plannedSheet.quoted())));
    rafterLeveling()
        .flatMap(Leveling::atMiddle)
        .ifPresent(
            middle -> {
              ties.add(
                  new Tie(
                      "The stick that the sister price is for is long enough",
                      middle.stickIsEnough()));
              ties.add(
                  new Tie(
                      "Sisters and shims are not more than the rafters read",
                      leveling
                          .sisters()
                          .plus(leveling.shims())
                          .isAtMost(Figure.of(middle.readings().rows().size(), Units.PIECE))));
            });
    rafterLeveling().flatMap(Leveling::survey).ifPresent(survey -> ties.addAll(survey.ties()));
    if (maker != null) {
      ties.add(
          new Tie(
              "Everything that the covering's maker asks for is met",
              MakerRequirement.unmet(maker).isAtMost(Figure.of(0, Units.RATIO))));
    }
    ties.add(stopTie());
    ties.addAll(solvedTies());
    return ties;
  }

  public Job job() {
    return job;
  }

  /** What the covering's maker asks of the deck against what is there, if the job says so. */
  public Optional<Roll> maker() {
    return Optional.ofNullable(maker);
  }

  /** The planes as they are laid, what was found on them, and what is cut out. */
  public Deck deck() {
    return deck;
  }

  /** The planes and openings as they add up. */
  public DeckAreas areas() {
    return areas;
  }

  public Figure<Area> deckArea() {
    return deckArea;
  }

  public Figure<Sheets> deckSheets() {
    return deckSheets;
  }

  /** What one sheet is on the bill. */
  public Choice<BillRule> billRule() {
    return billRule;
  }

  /** Every place of the old deck, as the bill counts it. */
  public Figure<Sheets> sheetsAtWorst() {
    return sheetsAtWorst;
  }

  public Figure<Sheets> plannedSheets() {
    return plannedSheets;
  }

  public Figure<Per<Nails, Sheets>> nailsInASheet() {
    return nails;
  }

  public UnitPrice plannedSheet() {
    return plannedSheet;
  }

  public UnitPrice extraSheet() {
    return extraSheet;
  }

  public Optional<Leveling> rafterLeveling() {
    return Optional.ofNullable(leveling);
  }

  /** What the rafters can carry, and whether they may be repaired. */
  public Framing framing() {
    return framing;
  }

  public QuoteLines quote() {
    return quote;
  }

  /** What to order, a line each. */
  public Roll order() {
    return order;
  }

  /** The headline: what the homeowner is asked to pay. */
  public Figure<Money> total() {
    return quote.total();
  }

  /** The headline and the worst case, with what each sheet that turns out bad costs. */
  @Override
  public String toString() {
    return "%s for %s with %s, %s for each one more, %s at worst"
        .formatted(
            total(),
            job.fact(JobFields.JOB_NAME).value(),
            plannedSheets,
            extraSheet.quoted(),
            quote.worstCase());
  }
}
