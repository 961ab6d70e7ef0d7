package sheathwright.job;

import static java.util.stream.Collectors.toMap;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.DeckBoards;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.life.InspectionFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.LifeTables;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.life.TalkFields;
import sheathwright.job.life.Validity;
import sheathwright.job.office.Firm;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.path.PathFields;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.FoundUnit;
import sheathwright.job.price.Lumber;
import sheathwright.job.price.LumberFields;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.price.OpenFields;
import sheathwright.job.price.PriceSteps;
import sheathwright.job.price.SupplyFields;
import sheathwright.job.site.CoveringFields;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedFacts;
import sheathwright.job.table.KeyedTable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.job.table.TableReader.Group;
import sheathwright.job.table.TableReader.Input;
import sheathwright.job.triage.FirmRules;
import sheathwright.job.triage.PullFields;
import sheathwright.job.triage.RuleFields;
import sheathwright.job.zone.ZoneFields;
import sheathwright.pricing.Rates;
import sheathwright.roof.OnTheGround;
import sheathwright.roof.Spot;
import sheathwright.wood.LumberSize;

/**
 * One job as its tables tell it: every input read, checked, and named as it will be in a workbook.
 */
public final class Job implements Facts {

  /** The tables of how a job goes on, with what each holds. */
  static final Map<JobTable, List<Field<?>>> LIFE =
      new EnumMap<>(
          Map.ofEntries(
              Map.entry(JobTable.FIRST_CALL, LifeFields.FIRST_CALL),
              Map.entry(JobTable.ZONES, ZoneFields.ZONES),
              Map.entry(JobTable.PLACES, ZoneFields.PLACES_NAMED),
              Map.entry(JobTable.PHOTOS, OrderFields.PHOTOS),
              Map.entry(JobTable.AGREED, AgreedFields.AGREED),
              Map.entry(JobTable.TALKS, TalkFields.TALKS),
              Map.entry(JobTable.STAGES, AgreedFields.STAGES),
              Map.entry(JobTable.OPTIONS, AgreedFields.OPTIONS),
              Map.entry(JobTable.ORDERS, OrderFields.ORDERS),
              Map.entry(JobTable.ORDER_LINES, OrderFields.ORDER_LINES),
              Map.entry(JobTable.INSPECTIONS, InspectionFields.INSPECTIONS),
              Map.entry(JobTable.PULL_TESTS, PullFields.PULL_TESTS),
              Map.entry(JobTable.LOG, OrderFields.LOG),
              Map.entry(JobTable.SENT, OrderFields.SENT)));

  /** What job.csv and prices.csv said once of sticks, each with what says it now. */
  private static final Map<String, String> MOVED =
      Stream.concat(
              Stream.of("sister_stick", "sister_stick_ft", "block_stick"),
              Stream.of(LumberSize.values()).map(size -> "stick_" + size.word()))
          .collect(
              toMap(
                  name -> name,
                  name ->
                      "%s has a line for every stick on sale: its size, its length_ft and its usd, such as 2x4, 8, 4.10"
                          .formatted(JobTable.LUMBER.file())));

  /** What stands for the number of a quote that takes the office's next one when it is issued. */
  private static final Choice<String> NOT_NUMBERED =
      Choice.input(
          JobFields.QUOTE_NUMBER.name(),
          "not numbered yet",
          Source.given("numbered when it is issued"));

  private final JobTables source;
  private final Map<Source.Cell, Traced> inputs;
  private final KeyedTable told;
  private final Firm firm;
  private final List<String> fromAbove;
  private final Map<String, Input> facts;
  private final Map<String, Input> prices;
  private final Lumber lumber;
  private final Map<String, Input> rates;
  private final Rates office;
  private final PriceSteps steps;
  private final boolean surveys;
  private final List<MakerRequirement> maker;
  private final FirmRules rules;
  private final List<Problem> questions;
  private final Map<JobTable, ReadTable> rows = new EnumMap<>(JobTable.class);

  private Job(JobTables tables) {
    source = tables;
    TableReader reader = new TableReader();
    boolean levels = tables.has(JobTable.READINGS);
    surveys = tables.surveysRafters();
    fromAbove = tables.fromAbove().keySet().stream().map(tables::name).toList();
    firm =
        Firm.read(
            reader,
            tables.found(JobTable.FIRM, false),
            JobTable.FIRM.keys().orElseThrow(),
            tables.folder());
    told =
        reader.keyedTable(
            tables.file(JobTable.JOB),
            JobTable.JOB.keys().orElseThrow(),
            "",
            "",
            factGroups(tables, firm),
            MOVED);
    facts = firm.with(told.inputs(), JobFields.PREPARED_BY, JobFields.QUOTE_NUMBER);
    read(reader, tables, JobTable.PLANES, PlaceFields.PLANES);
    read(reader, tables, JobTable.OPENINGS, PlaceFields.OPENINGS);
    read(reader, tables, JobTable.RAFTERS, PlaceFields.SUPPORTS);
    read(reader, tables, JobTable.JOINTS, PlaceFields.JOINTS);
    boolean mayBeSound = LifeTables.stage(told).isAtLeast(Stage.OPENED);
    read(reader, tables, JobTable.MARKS, PlaceFields.MARKS, mayBeSound);
    read(reader, tables, JobTable.READINGS, surveys ? SurveyFields.READINGS : PlaceFields.READINGS);
    prices =
        keyed(
            reader,
            tables,
            JobTable.PRICES,
            "price_",
            "_usd",
            List.of(
                new Group(OfficeFields.PRICES, true),
                new Group(OfficeFields.SISTER_PRICES, levels),
                new Group(OfficeFields.SISTER_NAILS, levels),
                new Group(FoundFields.PRICES, false)));
    lumber = lumber(reader, tables);
    rates =
        keyed(
            reader,
            tables,
            JobTable.RATES,
            "",
            "",
            List.of(
                new Group(OfficeFields.RATES, true),
                new Group(OfficeFields.SISTER_RATES, levels),
                new Group(FoundFields.RATES, false),
                new Group(ForecastFields.RATES, false),
                new Group(OpenFields.RATES, false)));
    badShareWhole(reader, tables);
    pricedWhole(reader, tables);
    read(reader, tables, JobTable.REPORTS, FramingFields.REPORTS);
    read(reader, tables, JobTable.LAYERS, FramingFields.LAYERS);
    LIFE.forEach((table, fields) -> read(reader, tables, table, fields));
    read(reader, tables, JobTable.MAKER, MakerFields.FIELDS);
    maker = MakerFields.read(rows.get(JobTable.MAKER));
    rules =
        tables.has(JobTable.RULES)
            ? FirmRules.read(
                reader,
                tables.file(JobTable.RULES),
                reader.rows(tables.file(JobTable.RULES), RuleFields.RULES))
            : FirmRules.USUAL;
    new RoofRules(told, rows).hold(surveys);
    lifeTables(tables).hold(JobFields.QUOTE_DATE);
    reader.raiseProblems(offTheMap(reader));
    validity().ask();
    questions = reader.questions();
    inputs = reader.inputs();
    steps = new PriceSteps(rateBook());
    office =
        Rates.labor(rate(OfficeFields.LABOR))
            .tax(rate(OfficeFields.TAX))
            .overhead(rate(OfficeFields.OVERHEAD))
            .margin(rate(OfficeFields.MARGIN));
  }

  /** The facts of a job, each group with what it speaks of. */
  private static List<Group> factGroups(JobTables tables, Firm firm) {
    boolean levels = tables.has(JobTable.READINGS);
    boolean surveys = tables.surveysRafters();
    boolean layered = tables.has(JobTable.LAYERS);
    List<Field<?>> rafters =
        FramingFields.rafters(
            layered,
            tables.says(List.of(SiteFields.CEILING)),
            tables.says(List.of(SiteFields.GROUND_SNOW)));
    boolean hasRafters = tables.says(FramingFields.RAFTERS);
    String framing = "rafters that are checked (rafter_size and what belongs to it)";
    String stations =
        levels
            ? "readings at several stations of a rafter (a column %s in %s)"
                .formatted(PlaceFields.UP.name(), JobTable.READINGS.file())
            : needed(JobTable.READINGS);
    return List.of(
        new Group(
            JobFields.job(firm.isTold(), firm.said(FirmKeys.NEXT_QUOTE_NUMBER).isPresent()), true),
        new Group(LifeFields.JOB, false),
        new Group(SiteFields.SPACINGS, !tables.says(List.of(SiteFields.CODE))),
        new Group(SiteFields.SPACING_DECISION, false)
            .needing(
                "nail spacings that are typed (edge_spacing_in and field_spacing_in)",
                tables.says(SiteFields.SPACINGS)),
        new Group(SiteFields.facts(layered), false),
        new Group(SupplyFields.ORDER, false),
        new Group(PathFields.PATH, false),
        new Group(CoveringFields.COVERING, false),
        new Group(JobFields.DECK, false),
        new Group(JobFields.PATCHES, false)
            .needing(needed(JobTable.MARKS), tables.has(JobTable.MARKS)),
        new Group(KnownRafters.WOOD, false),
        new Group(rafters, layered || surveys),
        new Group(FramingFields.OLD_RAFTERS, false).needing(framing, hasRafters),
        new Group(PathFields.HELD_BY, false),
        new Group(KnownRafters.FIELDS, false).needing(framing, hasRafters),
        new Group(FramingFields.SISTER_CHOICE, false).needing(framing, hasRafters),
        new Group(JobFields.sisters(surveys), levels).needing(needed(JobTable.READINGS), levels),
        new Group(SurveyFields.FACTS, surveys).needing(stations, surveys),
        new Group(SurveyFields.TRUSS, surveys),
        new Group(SurveyFields.STRING, false).needing(stations, surveys));
  }

  private static String needed(JobTable table) {
    return "the table " + table.file();
  }

  private static Map<String, Input> keyed(
      TableReader reader,
      JobTables tables,
      JobTable table,
      String prefix,
      String suffix,
      List<Group> groups) {
    return reader.keyed(
        tables.file(table), table.keys().orElseThrow(), prefix, suffix, groups, MOVED);
  }

  /** The sticks on sale, each said once. */
  private static Lumber lumber(TableReader reader, JobTables tables) {
    List<Row> sticks =
        tables.has(JobTable.LUMBER)
            ? reader.rows(tables.file(JobTable.LUMBER), LumberFields.LUMBER)
            : List.of();
    Set<String> seen = new HashSet<>();
    for (Row row : sticks) {
      Choice<?> size = row.of(LumberFields.SIZE);
      Figure<?> length = row.of(LumberFields.LENGTH);
      if (size != null && length != null && !seen.add(size.plain() + " of " + length)) {
        String message = "a %s of %s ft appears twice; give each stick one line";
        reader.problem(
            tables.file(JobTable.LUMBER),
            row,
            LumberFields.LENGTH,
            message.formatted(size.plain(), length.plain()));
      }
    }
    return new Lumber(tables.name(JobTable.LUMBER), sticks);
  }

  private void read(TableReader reader, JobTables tables, JobTable table, List<Field<?>> fields) {
    read(reader, tables, table, fields, false);
  }

  /** Reads a table of many lines, if the job has it. */
  private void read(
      TableReader reader,
      JobTables tables,
      JobTable table,
      List<Field<?>> fields,
      boolean mayBeEmpty) {
    rows.put(
        table, reader.table(table.file(), tables.found(table, mayBeEmpty), fields, mayBeEmpty));
  }

  /**
   * What lies off the map of the old deck, where the job is refused anyway: whoever works a job out
   * finds it then.
   */
  private Set<Problem> offTheMap(TableReader reader) {
    Refusals refusals = new Refusals();
    if (reader.hasProblems()
        && OldDeck.OF_PLANES.stream().map(rows::get).allMatch(ReadTable::isSound)) {
      refusals.tried(() -> new OldDeck(told, rows));
    }
    return refusals.problems();
  }

  private LifeTables lifeTables(JobTables tables) {
    return new LifeTables(
        told,
        rows.get(JobTable.MARKS),
        rows.get(JobTable.REPORTS),
        rows.get(JobTable.ZONES),
        rows.get(JobTable.PLACES),
        rows.get(JobTable.PHOTOS),
        rows.get(JobTable.AGREED),
        rows.get(JobTable.TALKS),
        rows.get(JobTable.STAGES),
        rows.get(JobTable.OPTIONS),
        rows.get(JobTable.ORDERS),
        rows.get(JobTable.ORDER_LINES),
        rows.get(JobTable.INSPECTIONS),
        rows.get(JobTable.SENT),
        tables.folder());
  }

  private DeckBoards boards() {
    return new DeckBoards(rows.get(JobTable.PLANES));
  }

  /** What a job begins to price it prices whole: a part left out is never $0. */
  private void pricedWhole(TableReader reader, JobTables tables) {
    for (FoundUnit unit : FoundUnit.values()) {
      boolean isOfTheDeck = unit == FoundUnit.BOARD && !boards().isEmpty();
      if (isOfTheDeck || unit.isBegun(priceBook(), rateBook())) {
        wanting(reader, tables, JobTable.PRICES, unit, unit.missingPrices(priceBook()));
        wanting(reader, tables, JobTable.RATES, unit, unit.missingRates(rateBook()));
        if (unit.takesAStick() && !lumber.has(Lumber.BLOCK_SIZE, Lumber.BLOCK_FEET)) {
          String use = "for \"%s\"".formatted(unit.word());
          reader.problem(
              tables.name(JobTable.LUMBER),
              Lumber.missing(Lumber.BLOCK_SIZE, Lumber.BLOCK_FEET, use));
        }
      }
    }
  }

  /** Two numbers say together what share of sheets is bad: one of them says nothing. */
  private static void badShareWhole(TableReader reader, JobTables tables) {
    List<Field<?>> both = List.of(ForecastFields.BAD_ALPHA, ForecastFields.BAD_BETA);
    List<Field<?>> missing = both.stream().filter(field -> !isWritten(tables, field)).toList();
    if (missing.size() == 1) {
      Field<?> other = both.get(1 - both.indexOf(missing.get(0)));
      String message = "%s is missing: %s, %s; it belongs to %s: give both, or neither";
      Field<?> field = missing.get(0);
      reader.problem(
          tables.file(JobTable.RATES),
          message.formatted(field.name(), field.label(), field.allowed(), other.name()));
    }
  }

  /** Whether a rate stands in its table, be it right or wrong. */
  private static boolean isWritten(JobTables tables, Field<?> rate) {
    return tables.file(JobTable.RATES).lines().stream()
        .flatMap(line -> line.cells().stream())
        .anyMatch(cell -> cell.strip().equals(rate.name()));
  }

  private static void wanting(
      TableReader reader,
      JobTables tables,
      JobTable table,
      FoundUnit unit,
      List<Field<?>> missing) {
    for (Field<?> field : missing) {
      String message =
          "%s is missing: %s, %s; without it \"%s\" has no price"
              .formatted(field.name(), field.label(), field.allowed(), unit.word());
      reader.problem(tables.file(table), message);
    }
  }

  /** What the job says that material costs. */
  public Facts priceBook() {
    return new KeyedFacts(prices);
  }

  /** What the job says that the office reckons with. */
  public Facts rateBook() {
    return new KeyedFacts(rates);
  }

  /**
   * The job in a folder of CSV files.
   *
   * @throws ProblemsException with everything that is wrong with them
   */
  public static Job in(Path folder) {
    return new Job(JobTables.in(folder));
  }

  /** The job in tables already at hand. */
  public static Job of(JobTables tables) {
    return new Job(tables);
  }

  /** Whether its quote has a number; else it takes the office's next one when it is issued. */
  public boolean isNumbered() {
    return told.facts().knows(JobFields.QUOTE_NUMBER);
  }

  /** Its tables that lie in a folder above it, as they are called from its own. */
  public List<String> fromAbove() {
    return fromAbove;
  }

  /** The firm that does it. */
  public Firm firm() {
    return firm;
  }

  /** The tables that it was read from. */
  public JobTables source() {
    return source;
  }

  /** Every value that was read, by the cell of the table that it was read from. */
  public Map<Source.Cell, Traced> inputs() {
    return inputs;
  }

  /** What is allowed in its tables but is hardly what was meant, each with its place. */
  public List<Problem> questions() {
    return questions;
  }

  /** Something to be asked about a fact that was given. */
  public Problem asked(Field<?> fact, String message) {
    return told.said(fact, message);
  }

  /** How long its price holds. */
  public Validity validity() {
    return new Validity(told, JobFields.QUOTE_DATE, JobFields.VALID_DAYS);
  }

  /** Whether the job says what its rafters are, so that they can be checked. */
  public boolean knowsItsRafters() {
    return knows(FramingFields.RAFTER_SIZE);
  }

  /** Whether the job asks which sisters would do. */
  public boolean choosesSisters() {
    return knows(FramingFields.SISTER_SPECIES);
  }

  /** Whether the job has string-line readings. */
  public boolean levelsRafters() {
    return !readings().isEmpty();
  }

  /** Whether every rafter was read at several stations. */
  boolean surveysRafters() {
    return surveys && levelsRafters();
  }

  @Override
  public boolean knows(Field<?> field) {
    return facts.containsKey(field.name());
  }

  @Override
  public <T extends Traced> T fact(Field<T> field) {
    return value(facts, field);
  }

  /** A fact that the job may leave out: as is usual, then. */
  <Q extends Quantity> Figure<Q> factOr(Field<Figure<Q>> field, double usual) {
    return knows(field) ? fact(field) : Field.figure(field, usual);
  }

  /** A fact in words that the job may leave out: as is usual, then. */
  <E> Choice<E> wordOr(Field<Choice<E>> field, E usual) {
    return knows(field) ? fact(field) : Choice.literal(usual);
  }

  <Q extends Quantity> Figure<Q> price(Field<Figure<Q>> item) {
    return value(prices, item);
  }

  /** A price that the book may leave out: nothing, then. */
  <Q extends Quantity> Figure<Q> priceIfGiven(Field<Figure<Q>> item) {
    return prices.containsKey(item.name()) ? price(item) : Field.figure(item, 0);
  }

  <Q extends Quantity> Figure<Q> rate(Field<Figure<Q>> field) {
    return value(rates, field);
  }

  private static <T extends Traced> T value(Map<String, Input> inputs, Field<T> field) {
    return field.as(inputs.get(field.name()).value());
  }

  /** What the contractor pays, and what is reckoned with: for the office alone. */
  public List<Traced> costs() {
    return Stream.concat(
            Stream.of(prices, rates).flatMap(table -> table.values().stream()).map(Input::value),
            lumber.lines().stream().map(stick -> stick.of(LumberFields.PRICE)))
        .toList();
  }

  /** The sticks on sale. */
  public Lumber lumber() {
    return lumber;
  }

  /** What its prices go up to. */
  public PriceSteps priceSteps() {
    return steps;
  }

  /** What the office charges by. */
  public Rates rates() {
    return office;
  }

  /** The facts of the job as they were read. */
  KeyedTable told() {
    return told;
  }

  /** The tables of many lines, those that the job has not among them. */
  Map<JobTable, ReadTable> tables() {
    return rows;
  }

  List<Row> planes() {
    return lines(JobTable.PLANES);
  }

  List<Row> readings() {
    return lines(JobTable.READINGS);
  }

  List<Row> openings() {
    return lines(JobTable.OPENINGS);
  }

  /** Measured centers of supports. */
  List<Row> supports() {
    return lines(JobTable.RAFTERS);
  }

  /** End joints of the old deck that were measured. */
  List<Row> joints() {
    return lines(JobTable.JOINTS);
  }

  List<Row> marks() {
    return lines(JobTable.MARKS);
  }

  /** The lines of a table of many lines; none, if the job has it not. */
  public List<Row> lines(JobTable table) {
    return rows.get(table).rows();
  }

  /** Where a plane lies in the plan of the roof, as far as that is told. */
  public OnTheGround onTheGround(String plane) {
    return planes().stream()
        .filter(row -> row.of(PlaceFields.PLANE).value().equals(plane))
        .map(Job::onTheGround)
        .findFirst()
        .orElse(new OnTheGround(Optional.empty(), Optional.empty()));
  }

  private static OnTheGround onTheGround(Row plane) {
    boolean hasEave = plane.has(PlaceFields.EAVE_X) && plane.has(PlaceFields.EAVE_Y);
    return new OnTheGround(
        Optional.of(plane)
            .filter(row -> row.has(PlaceFields.FACES))
            .map(row -> row.of(PlaceFields.FACES).value()),
        hasEave
            ? Optional.of(
                new Spot(
                    plane.of(PlaceFields.EAVE_X).in(Units.INCH).value(),
                    plane.of(PlaceFields.EAVE_Y).in(Units.INCH).value()))
            : Optional.empty());
  }

  /** What the openings of a plane are, in the order of its table; empty where it does not say. */
  public List<String> openingsOf(String plane) {
    return openings().stream()
        .filter(row -> row.of(PlaceFields.PLANE).value().equals(plane))
        .map(row -> row.has(PlaceFields.OPENING) ? row.of(PlaceFields.OPENING).value() : "")
        .toList();
  }

  /** How far the job has come; one that does not say is priced. */
  public Choice<Stage> stage() {
    return wordOr(LifeFields.STAGE, Stage.QUOTED);
  }

  /** What the roof is built up of. */
  List<Row> layers() {
    return lines(JobTable.LAYERS);
  }

  /** What was reported of the framing. */
  List<Row> reports() {
    return lines(JobTable.REPORTS);
  }

  /** What is done about marks, as this firm has it. */
  public FirmRules rules() {
    return rules;
  }

  /** What the covering's maker asks of the deck. */
  List<MakerRequirement> maker() {
    return maker;
  }

  /** The facts of the job, labeled, in the order in which the tables ask for them. */
  public Map<String, Traced> labeledFacts() {
    return labeled(facts);
  }

  /** What the job says of its rafters, labeled. */
  public Map<String, Traced> rafterFacts() {
    Map<String, Input> of = new LinkedHashMap<>();
    Stream.of(
            KnownRafters.WOOD,
            FramingFields.rafters(
                !layers().isEmpty(), knows(SiteFields.CEILING), knows(SiteFields.GROUND_SNOW)),
            FramingFields.OLD_RAFTERS,
            List.of(SiteFields.RISE),
            KnownRafters.FIELDS,
            FramingFields.SISTER_CHOICE)
        .flatMap(List::stream)
        .filter(this::knows)
        .map(Field::name)
        .forEach(name -> of.put(name, facts.get(name)));
    return labeled(of);
  }

  /** What the job says of its site, its code and its covering, labeled. */
  public Map<String, Traced> siteFacts() {
    Map<String, Input> of = new LinkedHashMap<>();
    Stream.of(SiteFields.SPACING_DECISION, SiteFields.SITE, CoveringFields.COVERING)
        .flatMap(List::stream)
        .filter(this::knows)
        .map(Field::name)
        .forEach(name -> of.put(name, facts.get(name)));
    return labeled(of);
  }

  /** The price book, labeled. */
  public Map<String, Traced> labeledPrices() {
    return labeled(prices);
  }

  /** The rates, labeled. */
  public Map<String, Traced> labeledRates() {
    return labeled(rates);
  }

  private static Map<String, Traced> labeled(Map<String, Input> inputs) {
    Map<String, Traced> labeled = new LinkedHashMap<>();
    inputs.values().forEach(input -> labeled.put(input.field().label(), input.value()));
    return labeled;
  }
}
