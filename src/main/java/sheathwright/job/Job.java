package sheathwright.job;

import java.nio.file.Path;
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
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.TableReader;
import sheathwright.job.table.TableReader.Group;
import sheathwright.job.table.TableReader.Input;
import sheathwright.pricing.Rates;

/**
 * One job as its tables tell it: every input read, checked, and named as it will be in a workbook.
 */
public final class Job {

  private final Map<String, Input> facts;
  private final Map<String, Input> prices;
  private final Map<String, Input> rates;
  private final Rates office;
  private final List<Map<String, Traced>> planes;
  private final boolean surveys;
  private final List<Map<String, Traced>> reports;
  private final List<Map<String, Traced>> layers;
  private final List<MakerRequirement> maker;
  private final List<Problem> questions;
  private final Map<String, List<Map<String, Traced>>> onPlanes = new LinkedHashMap<>();

  private Job(JobTables tables) {
    TableReader reader = new TableReader();
    boolean levels = tables.has("readings");
    surveys = tables.surveysRafters();
    facts = reader.keyed(tables.file("job"), "key", "value", "", "", factGroups(tables));
    planes = reader.rows(tables.file("planes"), JobTables.PLANES);
    onPlanes(reader, tables, "openings", JobTables.OPENINGS);
    onPlanes(reader, tables, "rafters", JobTables.SUPPORTS);
    onPlanes(reader, tables, "marks", JobTables.MARKS);
    onPlanes(reader, tables, "readings", surveys ? SurveyTables.READINGS : JobTables.READINGS);
    prices =
        reader.keyed(
            tables.file("prices"),
            "item",
            "usd",
            "price_",
            "_usd",
            List.of(
                new Group(JobTables.PRICES, true),
                new Group(JobTables.SISTER_PRICES, levels),
                new Group(FramingTables.SISTER_STICKS, tables.choosesSisters())));
    rates =
        reader.keyed(
            tables.file("rates"),
            "rate",
            "value",
            "",
            "",
            List.of(new Group(JobTables.RATES, true), new Group(JobTables.SISTER_RATES, levels)));
    reports = rows(reader, tables, "reports", FramingTables.REPORTS);
    layers = rows(reader, tables, "layers", FramingTables.LAYERS);
    maker =
        tables.has("maker")
            ? MakerTable.read(
                reader, tables.file("maker"), reader.rows(tables.file("maker"), MakerTable.FIELDS))
            : List.of();
    once(reader, tables.file("planes"), planes, "plane");
    measured(reader, tables.file("planes"));
    oneDeadLoad(reader, tables);
    once(reader, tables.file("marks"), marks(), "mark");
    once(reader, tables.file("reports"), reports, "report");
    if (levels) {
      if (surveys) {
        dropsOrReadings(reader, tables.file("readings"));
      } else {
        once(reader, tables.file("readings"), readings(), "rafter");
      }
      shimsBelowSisters(reader, tables.file("job"));
    }
    reader.raiseProblems();
    questions = reader.questions();
    office =
        Rates.labor(rate("labor_usd_per_h", Units.USD_PER_HOUR))
            .tax(rate("tax_pct", Units.PERCENT))
            .overhead(rate("overhead_pct", Units.PERCENT))
            .margin(rate("margin_pct", Units.PERCENT));
  }

  /** The facts of a job, each group with what it speaks of. */
  private static List<Group> factGroups(JobTables tables) {
    boolean levels = tables.has("readings");
    boolean surveys = tables.surveysRafters();
    boolean layered = tables.has("layers");
    List<Field> rafters = FramingTables.rafters(layered);
    boolean hasRafters = tables.says(FramingTables.RAFTERS);
    String framing = "rafters that are checked (rafter_size and what belongs to it)";
    String stations =
        levels
            ? "readings at several stations of a rafter (a column %s in readings.csv)"
                .formatted(SurveyTables.STATION)
            : "the table readings.csv";
    return List.of(
        new Group(JobTables.JOB, true),
        new Group(JobTables.DECK, false),
        new Group(JobTables.PATCHES, false).needing("the table marks.csv", tables.has("marks")),
        new Group(rafters, layered || surveys),
        new Group(FramingTables.oldRafters(layered), false).needing(framing, hasRafters),
        new Group(FramingTables.SISTER_CHOICE, false).needing(framing, hasRafters),
        new Group(JobTables.sisters(surveys), levels).needing("the table readings.csv", levels),
        new Group(SurveyTables.FACTS, surveys).needing(stations, surveys),
        new Group(SurveyTables.TRUSS, surveys),
        new Group(SurveyTables.STRING, false).needing(stations, surveys));
  }

  private static List<Map<String, Traced>> rows(
      TableReader reader, JobTables tables, String table, List<Field> fields) {
    return tables.has(table) ? reader.rows(tables.file(table), fields) : List.of();
  }

  private static void once(
      TableReader reader, CsvFile file, List<Map<String, Traced>> rows, String column) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < rows.size(); i++) {
      Traced name = rows.get(i).get(column);
      if (name != null && !seen.add(name.plain())) {
        String message =
            "\"" + name.plain() + "\" appears twice; give each " + column + " one line";
        reader.problem(file, file.lines().get(i), column, message);
      }
    }
  }

  /** Reads a table whose lines each belong to a plane, if the job has it. */
  private void onPlanes(TableReader reader, JobTables tables, String table, List<Field> fields) {
    if (!tables.has(table)) {
      onPlanes.put(table, List.of());
      return;
    }
    CsvFile file = tables.file(table);
    List<Map<String, Traced>> rows = reader.rows(file, fields);
    onPlanes.put(table, rows);
    Set<String> known = new LinkedHashSet<>();
    planes.stream()
        .map(row -> row.get("plane"))
        .filter(Objects::nonNull)
        .forEach(plane -> known.add(plane.plain()));
    for (int i = 0; i < rows.size(); i++) {
      Traced plane = rows.get(i).get("plane");
      if (plane != null && !known.isEmpty() && !known.contains(plane.plain())) {
        reader.problem(
            file,
            file.lines().get(i),
            "plane",
            "\"%s\" is not a plane of planes.csv; it has %s"
                .formatted(plane.plain(), String.join(", ", known)));
      }
    }
  }

  /** A plane has an eave and a slope length, or else corners. */
  private void measured(TableReader reader, CsvFile file) {
    for (int i = 0; i < planes.size(); i++) {
      Map<String, Traced> row = planes.get(i);
      boolean isSquare = row.containsKey("eave_ft") && row.containsKey("slope_length_ft");
      if (!isSquare && !row.containsKey("corners_ft")) {
        reader.problem(
            file,
            file.lines().get(i),
            row.containsKey("eave_ft") ? "slope_length_ft" : "eave_ft",
            "it is empty; a plane takes eave_ft and slope_length_ft, or corners_ft such as 0 0, 40 0, 28 12, 12 12");
      }
    }
  }

  /** The dead load is given, or made from the layers of the roof. */
  private void oneDeadLoad(TableReader reader, JobTables tables) {
    Input dead = facts.get("dead_psf");
    if (dead != null && tables.has("layers")) {
      String message = "dead_psf: layers.csv makes the dead load; take one of the two out";
      reader.problem(tables.file("job"), dead.line(), "value", message);
    }
  }

  /** A station has its drop, or what was read under the string. */
  private void dropsOrReadings(TableReader reader, CsvFile file) {
    for (int i = 0; i < readings().size(); i++) {
      Map<String, Traced> row = readings().get(i);
      if (row.containsKey("drop_in") == row.containsKey("reading_in")) {
        String message =
            "give the drop_in below the string or the reading_in under it, one of the two";
        reader.problem(file, file.lines().get(i), "drop_in", message);
      }
    }
  }

  private void shimsBelowSisters(TableReader reader, CsvFile file) {
    Input shim = facts.get("shim_tolerance_in");
    Input sister = facts.get("sister_tolerance_in");
    if (shim != null
        && sister != null
        && ((Figure<?>) shim.value()).value() > ((Figure<?>) sister.value()).value()) {
      reader.problem(
          file,
          shim.line(),
          "value",
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
    return facts.containsKey("rafter_size");
  }

  /** Whether the job asks which sisters would do. */
  public boolean choosesSisters() {
    return facts.containsKey("sister_species");
  }

  /** Whether the job has string-line readings. */
  public boolean levelsRafters() {
    return !readings().isEmpty();
  }

  /** Whether every rafter was read at several stations. */
  boolean surveysRafters() {
    return surveys && levelsRafters();
  }

  /** A fact in words. */
  public Choice<String> text(String name) {
    return word(name);
  }

  /** A fact as it was given. */
  public Traced given(String name) {
    return facts.get(name).value();
  }

  /** Whether a fact was given. */
  public boolean knows(String name) {
    return facts.containsKey(name);
  }

  @SuppressWarnings("unchecked") // the field says of which enum its words are
  <E> Choice<E> word(String name) {
    return (Choice<E>) facts.get(name).value();
  }

  <Q extends Quantity> Figure<Q> fact(String name, Unit<Q> unit) {
    return ((Figure<?>) facts.get(name).value()).in(unit);
  }

  /** A fact that the job may leave out: as is usual, then. */
  <Q extends Quantity> Figure<Q> factOr(String name, double usual, Unit<Q> unit) {
    return facts.containsKey(name) ? fact(name, unit) : Figure.of(usual, unit);
  }

  /** A fact in words that the job may leave out: as is usual, then. */
  <E> Choice<E> wordOr(String name, E usual) {
    return facts.containsKey(name) ? word(name) : Choice.literal(usual);
  }

  <Q extends Quantity> Figure<Q> price(String item, Unit<Q> unit) {
    return ((Figure<?>) prices.get(item).value()).in(unit);
  }

  /** A price that the book may leave out: nothing, then. */
  <Q extends Quantity> Figure<Q> priceIfGiven(String item, Unit<Q> unit) {
    return prices.containsKey(item) ? price(item, unit) : Figure.of(0, unit);
  }

  <Q extends Quantity> Figure<Q> rate(String name, Unit<Q> unit) {
    return ((Figure<?>) rates.get(name).value()).in(unit);
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

  List<Map<String, Traced>> planes() {
    return planes;
  }

  List<Map<String, Traced>> readings() {
    return onPlanes.get("readings");
  }

  List<Map<String, Traced>> openings() {
    return onPlanes.get("openings");
  }

  /** Measured centers of supports. */
  List<Map<String, Traced>> supports() {
    return onPlanes.get("rafters");
  }

  List<Map<String, Traced>> marks() {
    return onPlanes.get("marks");
  }

  /** What the roof is built up of. */
  List<Map<String, Traced>> layers() {
    return layers;
  }

  /** What was reported of the framing. */
  List<Map<String, Traced>> reports() {
    return reports;
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
            FramingTables.rafters(!layers.isEmpty()),
            FramingTables.oldRafters(!layers.isEmpty()),
            FramingTables.SISTER_CHOICE)
        .flatMap(List::stream)
        .map(Field::name)
        .filter(facts::containsKey)
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

  static <Q extends Quantity> Figure<Q> figure(
      Map<String, Traced> row, String column, Unit<Q> unit) {
    if (row.get(column) instanceof Figure<?> figure) {
      return figure.in(unit);
    }
    throw new RefusedException(column + " is not a number");
  }
}
