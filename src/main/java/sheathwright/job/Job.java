package sheathwright.job;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import sheathwright.fastening.uplift.MakerRequirement;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Traced;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.Stage;
import sheathwright.job.path.PathFields;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.FoundUnit;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.site.CoveringFields;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Facts;
import sheathwright.job.table.Field;
import sheathwright.job.table.KeyedFacts;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.job.table.TableReader.Group;
import sheathwright.job.table.TableReader.Input;
import sheathwright.job.triage.FirmRules;
import sheathwright.job.triage.RuleFields;
import sheathwright.pricing.Rates;
import sheathwright.wood.Knowledge;

/**
 * One job as its tables tell it: every input read, checked, and named as it will be in a workbook.
 */
public final class Job implements Facts {

  private static final String VALUE = JobTable.JOB.keys().orElseThrow().value();

  /** The tables of how a job goes on, with what each holds. */
  static final Map<JobTable, List<Field<?>>> LIFE =
      new EnumMap<>(
          Map.of(
              JobTable.PHOTOS, OrderFields.PHOTOS,
              JobTable.AGREED, AgreedFields.AGREED,
              JobTable.STAGES, AgreedFields.STAGES,
              JobTable.OPTIONS, AgreedFields.OPTIONS,
              JobTable.ORDERS, OrderFields.ORDERS,
              JobTable.ORDER_LINES, OrderFields.ORDER_LINES,
              JobTable.LOG, OrderFields.LOG,
              JobTable.SENT, OrderFields.SENT));

  private final Map<String, Input> facts;
  private final Map<String, Input> prices;
  private final Map<String, Input> rates;
  private final Rates office;
  private final List<Row> planes;
  private final boolean surveys;
  private final List<Row> reports;
  private final List<Row> layers;
  private final List<MakerRequirement> maker;
  private final FirmRules rules;
  private final List<Problem> questions;
  private final Map<JobTable, List<Row>> life = new EnumMap<>(JobTable.class);
  private final Map<JobTable, List<Row>> onPlanes = new EnumMap<>(JobTable.class);

  private Job(JobTables tables) {
    TableReader reader = new TableReader();
    boolean levels = tables.has(JobTable.READINGS);
    surveys = tables.surveysRafters();
    facts = keyed(reader, tables, JobTable.JOB, "", "", factGroups(tables));
    planes = reader.rows(tables.file(JobTable.PLANES), PlaceFields.PLANES);
    onPlanes(reader, tables, JobTable.OPENINGS, PlaceFields.OPENINGS);
    onPlanes(reader, tables, JobTable.RAFTERS, PlaceFields.SUPPORTS);
    onPlanes(reader, tables, JobTable.JOINTS, PlaceFields.JOINTS);
    onPlanes(reader, tables, JobTable.MARKS, PlaceFields.MARKS);
    onPlanes(
        reader, tables, JobTable.READINGS, surveys ? SurveyFields.READINGS : PlaceFields.READINGS);
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
                new Group(FoundFields.PRICES, false),
                new Group(FramingFields.SISTER_STICKS, tables.choosesSisters())));
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
                new Group(FoundFields.RATES, false)));
    pricedWhole(reader, tables);
    reports = rows(reader, tables, JobTable.REPORTS, FramingFields.REPORTS);
    layers = rows(reader, tables, JobTable.LAYERS, FramingFields.LAYERS);
    LIFE.forEach((table, fields) -> life.put(table, rows(reader, tables, table, fields)));
    maker =
        tables.has(JobTable.MAKER)
            ? MakerFields.read(
                reader,
                tables.file(JobTable.MAKER),
                reader.rows(tables.file(JobTable.MAKER), MakerFields.FIELDS))
            : List.of();
    rules =
        tables.has(JobTable.RULES)
            ? FirmRules.read(
                reader,
                tables.file(JobTable.RULES),
                rows(reader, tables, JobTable.RULES, RuleFields.RULES))
            : FirmRules.USUAL;
    once(reader, tables.file(JobTable.PLANES), planes, PlaceFields.PLANE);
    measured(reader, tables.file(JobTable.PLANES));
    oneDeadLoad(reader, tables);
    oneSagLimit(reader, tables);
    toldBySomebody(reader, tables);
    once(reader, tables.file(JobTable.MARKS), marks(), PlaceFields.MARK);
    markedSomewhere(reader, tables.file(JobTable.MARKS));
    once(reader, tables.file(JobTable.REPORTS), reports, FramingFields.REPORT);
    if (levels) {
      if (surveys) {
        dropsOrReadings(reader, tables.file(JobTable.READINGS));
      } else {
        once(reader, tables.file(JobTable.READINGS), readings(), PlaceFields.RAFTER);
      }
      shimsBelowSisters(reader, tables.file(JobTable.JOB));
    }
    reader.raiseProblems();
    questions = reader.questions();
    office =
        Rates.labor(rate(OfficeFields.LABOR))
            .tax(rate(OfficeFields.TAX))
            .overhead(rate(OfficeFields.OVERHEAD))
            .margin(rate(OfficeFields.MARGIN));
  }

  /** The facts of a job, each group with what it speaks of. */
  private static List<Group> factGroups(JobTables tables) {
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
        new Group(JobFields.JOB, true),
        new Group(LifeFields.JOB, false),
        new Group(SiteFields.SPACINGS, !tables.says(List.of(SiteFields.CODE))),
        new Group(SiteFields.SPACING_DECISION, false)
            .needing(
                "nail spacings that are typed (edge_spacing_in and field_spacing_in)",
                tables.says(SiteFields.SPACINGS)),
        new Group(SiteFields.facts(layered), false),
        new Group(PathFields.PATH, false),
        new Group(CoveringFields.COVERING, false),
        new Group(JobFields.DECK, false),
        new Group(JobFields.PATCHES, false)
            .needing(needed(JobTable.MARKS), tables.has(JobTable.MARKS)),
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
    return reader.keyed(tables.file(table), table.keys().orElseThrow(), prefix, suffix, groups);
  }

  private static List<Row> rows(
      TableReader reader, JobTables tables, JobTable table, List<Field<?>> fields) {
    return tables.has(table) ? reader.rows(tables.file(table), fields) : List.of();
  }

  private static void once(
      TableReader reader, CsvFile file, List<Row> rows, Field<Choice<String>> field) {
    Set<String> seen = new HashSet<>();
    for (Row row : rows) {
      Choice<String> name = row.of(field);
      if (name != null && !seen.add(name.value())) {
        String message = "\"%s\" appears twice; give each %s one line";
        reader.problem(file, row, field, message.formatted(name.value(), field.name()));
      }
    }
  }

  /** Reads a table whose lines each belong to a plane, if the job has it. */
  private void onPlanes(
      TableReader reader, JobTables tables, JobTable table, List<Field<?>> fields) {
    if (!tables.has(table)) {
      onPlanes.put(table, List.of());
      return;
    }
    CsvFile file = tables.file(table);
    List<Row> rows = reader.rows(file, fields);
    onPlanes.put(table, rows);
    Set<String> known = new LinkedHashSet<>();
    planes.stream()
        .map(row -> row.of(PlaceFields.PLANE))
        .filter(Objects::nonNull)
        .forEach(plane -> known.add(plane.plain()));
    for (Row row : rows) {
      Choice<String> plane = row.of(PlaceFields.PLANE);
      if (plane != null && !known.isEmpty() && !known.contains(plane.value())) {
        String message = "\"%s\" is not a plane of %s; it has %s";
        reader.problem(
            file,
            row,
            PlaceFields.PLANE,
            message.formatted(plane.value(), JobTable.PLANES.file(), String.join(", ", known)));
      }
    }
  }

  /** A plane has an eave and a slope length, or else corners. */
  private void measured(TableReader reader, CsvFile file) {
    for (Row row : planes) {
      boolean isSquare = row.has(PlaceFields.EAVE) && row.has(PlaceFields.SLOPE_LENGTH);
      if (!isSquare && !row.has(PlaceFields.CORNERS)) {
        reader.problem(
            file,
            row,
            row.has(PlaceFields.EAVE) ? PlaceFields.SLOPE_LENGTH : PlaceFields.EAVE,
            "it is empty; a plane takes eave_ft and slope_length_ft, or corners_ft such as 0 0, 40 0, 28 12, 12 12");
      }
    }
  }

  /** A mark has four measures, or else names its place. */
  private void markedSomewhere(TableReader reader, CsvFile file) {
    for (Row row : marks()) {
      List<Field<Figure<Length>>> missing =
          PlaceFields.MEASURES.stream().filter(measure -> !row.has(measure)).toList();
      boolean isNamed = row.has(PlaceFields.SHEET) && missing.size() == PlaceFields.MEASURES.size();
      if (!missing.isEmpty() && !isNamed) {
        reader.problem(
            file,
            row,
            missing.get(0),
            "it is empty; a mark takes along_in, up_in, width_in and height_in, or instead of all four a place in sheet such as A-3-5");
      }
    }
  }

  /** The dead load is given, or made from the layers of the roof. */
  private void oneDeadLoad(TableReader reader, JobTables tables) {
    Input dead = facts.get(FramingFields.DEAD.name());
    if (dead != null && tables.has(JobTable.LAYERS)) {
      String message =
          "%s: %s makes the dead load; take one of the two out"
              .formatted(FramingFields.DEAD.name(), JobTable.LAYERS.file());
      reader.problem(tables.file(JobTable.JOB), dead.line(), VALUE, message);
    }
  }

  /** What a job begins to price it prices whole: a part left out is never $0. */
  private void pricedWhole(TableReader reader, JobTables tables) {
    for (FoundUnit unit : FoundUnit.values()) {
      if (unit.isBegun(priceBook(), rateBook())) {
        wanting(reader, tables, JobTable.PRICES, unit, unit.missingPrices(priceBook()));
        wanting(reader, tables, JobTable.RATES, unit, unit.missingRates(rateBook()));
      }
    }
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

  /** The limits of sag are given, or follow from the ceiling. */
  private void oneSagLimit(TableReader reader, JobTables tables) {
    Input limit = facts.get(FramingFields.DEFLECTION_LIMIT.name());
    if (limit != null && knows(SiteFields.CEILING)) {
      String message = "deflection_limit: the ceiling makes it; take one of the two out";
      reader.problem(tables.file(JobTable.JOB), limit.line(), "value", message);
    }
  }

  /** What was told was told by somebody. */
  private void toldBySomebody(TableReader reader, JobTables tables) {
    for (Field<Choice<Knowledge>> how : KnownRafters.KNOWN) {
      Input told = facts.get(how.name());
      if (told != null
          && how.as(told.value()).value() == Knowledge.IS_TOLD
          && !knows(KnownRafters.TOLD_BY)) {
        String message = "%s: told is given; say by whom in a line told_by, or give unknown";
        reader.problem(
            tables.file(JobTable.JOB), told.line(), "value", message.formatted(how.name()));
      }
    }
  }

  /** A station has its drop, or what was read under the string. */
  private void dropsOrReadings(TableReader reader, CsvFile file) {
    for (Row row : readings()) {
      if (row.has(PlaceFields.DROP) == row.has(SurveyFields.READING)) {
        String message =
            "give the drop_in below the string or the reading_in under it, one of the two";
        reader.problem(file, row, PlaceFields.DROP, message);
      }
    }
  }

  private void shimsBelowSisters(TableReader reader, CsvFile file) {
    Input shim = facts.get(JobFields.SHIM_TOLERANCE.name());
    Input sister = facts.get(JobFields.SISTER_TOLERANCE.name());
    if (shim != null
        && sister != null
        && ((Figure<?>) shim.value()).value() > ((Figure<?>) sister.value()).value()) {
      reader.problem(
          file,
          shim.line(),
          VALUE,
          "shim_tolerance_in: %s is given; it must not be more than sister_tolerance_in, %s"
              .formatted(shim.value(), sister.value()));
    }
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

  /** What is allowed in its tables but is hardly what was meant, each with its place. */
  public List<Problem> questions() {
    return questions;
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
    return Stream.of(prices, rates)
        .flatMap(table -> table.values().stream())
        .map(Input::value)
        .toList();
  }

  /** What the office charges by. */
  Rates rates() {
    return office;
  }

  List<Row> planes() {
    return planes;
  }

  List<Row> readings() {
    return onPlanes.get(JobTable.READINGS);
  }

  List<Row> openings() {
    return onPlanes.get(JobTable.OPENINGS);
  }

  /** Measured centers of supports. */
  List<Row> supports() {
    return onPlanes.get(JobTable.RAFTERS);
  }

  /** End joints of the old deck that were measured. */
  List<Row> joints() {
    return onPlanes.get(JobTable.JOINTS);
  }

  List<Row> marks() {
    return onPlanes.get(JobTable.MARKS);
  }

  /** The lines of a table of how the job goes on; none, if the job has it not. */
  public List<Row> lines(JobTable table) {
    return life.get(table);
  }

  /** How far the job has come; one that does not say is priced. */
  public Choice<Stage> stage() {
    return wordOr(LifeFields.STAGE, Stage.QUOTED);
  }

  /** What the roof is built up of. */
  List<Row> layers() {
    return layers;
  }

  /** What was reported of the framing. */
  List<Row> reports() {
    return reports;
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
            FramingFields.rafters(
                !layers.isEmpty(), knows(SiteFields.CEILING), knows(SiteFields.GROUND_SNOW)),
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
