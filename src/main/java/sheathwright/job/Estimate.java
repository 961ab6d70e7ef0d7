package sheathwright.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Time;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.CellsOfTheJob;
import sheathwright.job.life.PaymentRules;
import sheathwright.job.path.LoadPath;
import sheathwright.job.path.Unsaid;
import sheathwright.job.price.FoundPrice;
import sheathwright.job.price.FoundPrices;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.price.PriceSteps;
import sheathwright.job.site.Frame;
import sheathwright.job.site.Site;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.triage.Wanted;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.SheetMaterial;
import sheathwright.pricing.UnitPrice;
import sheathwright.pricing.UnitPrices;
import sheathwright.sheathing.layout.SheetCounts;
import sheathwright.sheathing.place.BillRule;
import sheathwright.wood.LumberSize;

/**
 * Everything that is worked out from a job's tables: what to buy, what it costs, and the proof of
 * both.
 */
public final class Estimate {

  /** One thing that must hold, in words. */
  public record Tie(String what, Condition holds) {

    /** So many characters of names one formula joins; whole, none has more than 255. */
    private static final int MOST_JOINED = 200;

    /** What stands round a name in such a formula: {@code 100="yes",}. */
    private static final int ROUND_A_NAME = 10;

    /** That what was solved was solved for what the tables say now. */
    public static Tie solved(Solution solution) {
      return new Tie(
          "Solved for what stands here now: " + Shown.inWords(solution.name()),
          solution.state().is(Solution.CURRENT));
    }

    /** That all hold, each in a cell of its own, so that no formula grows with their number. */
    public static Tie all(String what, String name, List<Condition> each) {
      String called = name;
      List<Condition> cells = inCells(called, each);
      int most = mostJoined(called);
      while (cells.size() > most) {
        List<Condition> groups = new ArrayList<>();
        for (int first = 0; first < cells.size(); first += most) {
          int end = Math.min(cells.size(), first + most);
          groups.add(Condition.all(cells.subList(first, end).toArray(Condition[]::new)));
        }
        called += "group_";
        cells = inCells(called, groups);
        most = mostJoined(called);
      }
      return new Tie(what, Condition.all(cells.toArray(Condition[]::new)));
    }

    private static int mostJoined(String name) {
      return Math.max(2, MOST_JOINED / (name.length() + ROUND_A_NAME));
    }

    private static List<Condition> inCells(String name, List<Condition> each) {
      List<Condition> named = new ArrayList<>();
      for (Condition condition : each) {
        named.add(condition.as(name + (named.size() + 1)).is(YesNo.YES));
      }
      return named;
    }
  }

  /** What one sheet is where the job does not say; whoever holds the workbook may. */
  private static final Choice<BillRule> USUAL_RULE =
      Choice.input(JobFields.BILL_RULE.name(), BillRule.HALF, Source.COMMON_PRACTICE);

  private static final int CENTS = 2;

  private final Job job;
  private final Site site;
  private final Deck deck;
  private final DeckAreas areas;
  private final Figure<Area> deckArea;
  private final Figure<Sheets> deckSheets;
  private final Choice<BillRule> billRule;
  private final Figure<Sheets> sheetsAtWorst;
  private final Optional<Figure<Length>> boardsAtWorst;
  private final Figure<Sheets> plannedSheets;
  private final Figure<Per<Nails, Sheets>> nails;
  private final UnitPrice plannedSheet;
  private final UnitPrice extraSheet;
  private final Leveling leveling;
  private final Framing framing;
  private final LoadPath loadPath;
  private final Figure<Ratio> checksNotLookedAt;
  private final List<FoundPrice> found;
  private final QuoteLines quote;
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
    Unsaid said = new Unsaid(job);
    KnownRafters known = new KnownRafters(job);
    site = new Site(job, frame(job, known));
    Optional<Framing> screened = refusals.tried(() -> new Framing(job, known, said));
    Optional<Leveling> straightened =
        screened
            .filter(any -> job.levelsRafters())
            .flatMap(framed -> refusals.tried(() -> RafterWork.of(job, framed)));
    billRule = job.knows(JobFields.BILL_RULE) ? job.fact(JobFields.BILL_RULE) : USUAL_RULE;
    Optional<Deck> laid = refusals.tried(() -> new Deck(job, site, billRule, straightened));
    refusals.raise();
    deck = laid.orElseThrow();
    framing = screened.orElseThrow();
    loadPath = new LoadPath(said, framing.joined(), site);
    checksNotLookedAt =
        notLookedAt(
            framing.unmade(),
            Stream.of(framing.checks(), loadPath.checks(), site.checks())
                .flatMap(List::stream)
                .toList());
    leveling = straightened.orElse(null);
    areas = new DeckAreas(job, deck);
    deckArea = areas.total();
    deckSheets =
        SheetCounts.sheetsByArea(deckArea, Figure.of(0, Units.PERCENT))
            .as("deck_sheets", Units.SHEET);
    sheetsAtWorst = deck.units().of(areas.ofSheets()).by(billRule, "sheets_at_worst");
    boardsAtWorst = areas.feetOfBoard();
    plannedSheets = job.fact(JobFields.PLANNED_SHEETS);
    nails = site.nailing().inASheet();
    plannedSheet = named("planned_sheet", sheetPrice(job, nails, OfficeFields.PLANNED_SHEET_HOURS));
    extraSheet = named("extra_sheet", sheetPrice(job, nails, OfficeFields.EXTRA_SHEET_HOURS));
    SheetWork work =
        new SheetWork(
            plannedSheets,
            sheetsAtWorst,
            site.nailing().inASheetNearEdges(),
            plannedSheet,
            extraSheet,
            straightened,
            deck.hasSheets(),
            boardsAtWorst,
            deck.sheetsToLift());
    found =
        new FoundPrices(
                job.priceBook(),
                job.rateBook(),
                job.lumber(),
                job.priceSteps(),
                job.rates(),
                nails,
                job.fact(JobFields.SUPPORT_SPACING))
            .all();
    quote = QuoteLines.of(job, work, framing.mayRepair(), found);
    work.hold(job, refusals);
    paymentsOf(quote.total()).ifPresent(refusals::add);
    List<MakerRequirement> answered = MakerFields.answered(job, cells(), refusals);
    refusals.raise();
    maker = answered.isEmpty() ? null : MakerRequirement.roll(answered);
  }

  /** Every cell that a covering's maker may be answered by: what the job says comes first. */
  private CellsOfTheJob cells() {
    List<Traced> values = new ArrayList<>(job.labeledFacts().values());
    Stream.of(site.checks(), loadPath.checks(), framing.checks())
        .flatMap(List::stream)
        .forEach(check -> values.addAll(List.of(check.demand(), check.capacity(), check.ratio())));
    values.add(quote.total());
    return new CellsOfTheJob(values);
  }

  /** What is wrong with the payments, before they are agreed: they come to what is quoted. */
  private Optional<Problem> paymentsOf(Figure<Money> total) {
    List<Row> stages = job.lines(JobTable.STAGES);
    if (!job.lines(JobTable.AGREED).isEmpty() || total.refusal().isPresent()) {
      return Optional.empty();
    }
    Figure<Money> chosen = total;
    for (Row option : job.lines(JobTable.OPTIONS)) {
      if (AgreedFields.isChosen(option)) {
        chosen = chosen.plus(AgreedFields.worth(option));
      }
    }
    return PaymentRules.against(stages, List.of(cents(chosen), cents(total)))
        .map(
            wrong ->
                job.tables()
                    .get(JobTable.STAGES)
                    .said(wrong.stage(), wrong.column(), wrong.message()));
  }

  private static BigDecimal cents(Figure<Money> sum) {
    return BigDecimal.valueOf(sum.value()).setScale(CENTS, RoundingMode.HALF_UP);
  }

  private static Frame frame(Job job, KnownRafters known) {
    return new Frame(
        job.fact(JobFields.SUPPORT_SPACING),
        job.fact(JobFields.BLOCKED_EDGES),
        known.species,
        job.knows(FramingFields.MOISTURE) ? known.moisture : job.word(FramingFields.MOISTURE));
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

  private UnitPrice named(String what, UnitPrice price) {
    return new UnitPrice(
        price.direct().as(what + "_direct_usd", Units.USD_PER_SHEET),
        price.exact().as(what + "_exact_usd", Units.USD_PER_SHEET),
        job.priceSteps().ofASheet(price.exact()).as(what + "_quoted_usd", Units.USD_PER_SHEET));
  }

  /** That the price does not hold more sheets than the map of the old deck has. */
  private Tie sheetsTie() {
    return new Tie(
        "The sheets in the price are not more than the map of the old deck counts",
        plannedSheets.isAtMost(sheetsAtWorst));
  }

  /** That what is quoted for a piece of work is its exact price, up to the office's step. */
  private Tie quotedTie() {
    PriceSteps steps = job.priceSteps();
    List<Condition> all = new ArrayList<>();
    all.add(steps.isKept(plannedSheet.exact(), plannedSheet.quoted()));
    all.add(steps.isKept(extraSheet.exact(), extraSheet.quoted()));
    rafterLeveling()
        .ifPresent(
            leveling ->
                Stream.of(leveling.sisterPrice(), leveling.shimPrice())
                    .forEach(price -> all.add(steps.isKept(price.exact(), price.quoted()))));
    found.forEach(price -> all.add(steps.isKept(price.exact(), price.quoted())));
    return Tie.all(
        "Every price quoted is its exact price, up to the step that prices go up to",
        "price_is_up_to_its_step_",
        all);
  }

  /** That nobody has to decide before the crew repairs. */
  public Tie stopTie() {
    return new Tie(
        "Somebody looked at the rafters and nothing stops their repair; if not, whoever the first page names decides first",
        framing.mayRepair().is(YesNo.YES));
  }

  /** That whatever was solved was solved for what the tables say now. */
  private List<Tie> solvedTies() {
    return solutions().stream().map(Tie::solved).toList();
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
    if (!found.isEmpty()) {
      ties.add(
          Tie.all(
              "What is found besides sells for at least its cost",
              "found_sells_",
              found.stream().map(price -> price.direct().isAtMost(price.quoted())).toList()));
    }
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
              "Everything that the covering's maker asks for is met, as far as it is shown",
              MakerRequirement.unmet(maker).isAtMost(Figure.of(0, Units.RATIO))));
    }
    List<Condition> joints =
        loadPath.checks().stream().filter(Check::isLive).map(Check::isNotBroken).toList();
    if (!joints.isEmpty()) {
      ties.add(
          Tie.all("Every joint down to the walls that somebody looked at holds", "joint_", joints));
    }
    List<Condition> held =
        site.strengths().stream().filter(Check::isLive).map(Check::isNotBroken).toList();
    if (!held.isEmpty()) {
      ties.add(
          Tie.all(
              "The deck's nails, its panels and the covering's clips hold, where enough is known",
              "deck_holds_",
              held));
    }
    ties.add(stopTie());
    site.nailing()
        .beside()
        .filter(beside -> site.nailing().decision().isEmpty())
        .ifPresent(
            beside ->
                ties.add(
                    new Tie(
                        "Deck nails stand as close as the code asks, or somebody decided otherwise by name",
                        beside.asClose())));
    ties.addAll(solvedTies());
    return ties;
  }

  /** The prices of what may be found besides bad sheets, as far as the tables make them. */
  public List<FoundPrice> found() {
    return found;
  }

  public Job job() {
    return job;
  }

  /** Where the house stands, the code that holds there, and what follows from both. */
  public Site site() {
    return site;
  }

  /** What the covering's maker asks of the deck against what is there, if the job says so. */
  public Optional<Roll> maker() {
    return Optional.ofNullable(maker);
  }

  /**
   * What the covering's maker, or else the wind, asks of one screw; refused where nobody can say.
   */
  public Figure<Force> askedOfAScrew() {
    return Wanted.of(site, job.maker()).hold();
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

  /** All boards of the deck, in feet, where any of it is boards. */
  public Optional<Figure<Length>> boardsAtWorst() {
    return boardsAtWorst;
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

  /** The way of the roof's loads down to the walls. */
  public LoadPath loadPath() {
    return loadPath;
  }

  /** How many of the checks that a proof lists nobody could make. */
  public Figure<Ratio> checksNotLookedAt() {
    return checksNotLookedAt;
  }

  /** Those that no cell can follow are counted as they are; the others go on counting. */
  private static Figure<Ratio> notLookedAt(Figure<Ratio> ofRafters, List<Check> checks) {
    long never = checks.stream().filter(check -> !check.isLive()).count();
    Figure<Ratio> sum = ofRafters.plus(Figure.of(never, Units.RATIO));
    int counted = 0;
    for (Check check : checks) {
      if (check.isLive() && check.unmade().isPresent()) {
        counted++;
        sum = sum.plus(check.unmade().get()).as("checks_not_looked_at_of_" + counted, Units.RATIO);
      }
    }
    return sum.as("checks_not_looked_at", Units.RATIO);
  }

  public QuoteLines quote() {
    return quote;
  }

  /** The size of its sisters; only where the job has some. */
  public Choice<LumberSize> sisterSize() {
    return job.fact(JobFields.SISTER_SIZE);
  }

  /** From center to center of what carries the deck. */
  public Figure<Length> supportSpacing() {
    return job.fact(JobFields.SUPPORT_SPACING);
  }

  /** Whether the long edges of panels are blocked. */
  public Choice<YesNo> blockedEdges() {
    return job.fact(JobFields.BLOCKED_EDGES);
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
