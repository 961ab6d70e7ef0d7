package sheathwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.job.SurveyFields.Flatness;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.table.Row;
import sheathwright.leveling.plan.FramingAnswer;
import sheathwright.leveling.plan.LevelCost;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelRules;
import sheathwright.leveling.plan.PlannedRafter;
import sheathwright.leveling.plan.ShimRules;
import sheathwright.leveling.plan.SisterRules;
import sheathwright.leveling.string.StringLine;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.leveling.target.TargetRules;
import sheathwright.wood.LumberSize;

/** Every plane whose rafters were read at several stations, and what it all comes to. */
public final class Survey {

  private static final Figure<Length> NO_LEAST = Figure.of(0, Units.INCH);
  private static final Figure<Length> NO_MOST = Figure.of(120, Units.INCH);

  private final List<SurveyedPlane> planes = new ArrayList<>();
  private final List<LevelCost> costs = new ArrayList<>();
  private final Solution choices;
  private final Optional<StickCuts> cutting;
  private final Figure<Pieces> sisters;
  private final Figure<Nails> nails;
  private final Figure<Pieces> shims;
  private final Figure<Money> sticks;

  /**
   * What was chosen for all planes.
   *
   * @param shape what the rafters are brought to
   * @param flatness how flat they are to be
   * @param solution rests on both
   */
  record Choices(TargetRules.Shape shape, Flatness flatness, Solution solution) {

    private static Choices of(Job job) {
      Reading reading = new Reading();
      TargetRules.Shape shape =
          reading.word("what the rafters are brought to", job.fact(SurveyFields.TARGET));
      Flatness flatness = reading.word("the flatness required", job.fact(SurveyFields.FLATNESS));
      return new Choices(shape, flatness, reading.solution("leveling_choices"));
    }
  }

  Survey(Job job, Framing framing) {
    Choices chosen = Choices.of(job);
    choices = chosen.solution();
    FramingAnswer answer = FramingAnswer.of(framing.greatestRatio(), framing.nothingReported());
    LevelRules rules = rules(job);
    SuspicionRules suspicion = SuspicionRules.usual();
    readings(job)
        .forEach(
            (plane, given) ->
                planes.add(new SurveyedPlane(job, chosen, plane, given, suspicion, rules, answer)));
    LevelPrices prices = prices(job);
    planes.forEach(plane -> checkOnSale(job, plane));
    cutting = StickCuts.of(planes, prices.sticks());
    planes.forEach(plane -> costs.add(LevelCost.of(plane.plan(), prices)));
    sisters = sum("rafters_to_sister", Units.PIECE, plane -> plane.plan().totals().sisters());
    nails = sum("sister_nails", Units.NAIL, plane -> plane.plan().totals().nails());
    shims = sum("rafters_to_shim", Units.PIECE, plane -> plane.plan().totals().shimmed());
    sticks = added(costs.stream().map(LevelCost::sisters).toList(), "sister_sticks_usd", Units.USD);
  }

  private static Map<String, Map<StringReading, List<Figure<Length>>>> readings(Job job) {
    StringLine string = string(job);
    Map<String, Map<StringReading, List<Figure<Length>>>> byPlane = new LinkedHashMap<>();
    for (Row row : job.readings()) {
      byPlane
          .computeIfAbsent(row.of(PlaceFields.PLANE).value(), name -> new LinkedHashMap<>())
          .put(reading(row, string), bounds(row));
    }
    return byPlane;
  }

  /** Least and most build-up at a reading; empty where any will do. */
  private static List<Figure<Length>> bounds(Row row) {
    if (!row.has(SurveyFields.LEAST) && !row.has(SurveyFields.MOST)) {
      return List.of();
    }
    return List.of(
        row.has(SurveyFields.LEAST) ? row.of(SurveyFields.LEAST) : NO_LEAST,
        row.has(SurveyFields.MOST) ? row.of(SurveyFields.MOST) : NO_MOST);
  }

  /** From bearing to bearing, on blocks. */
  private static StringLine string(Job job) {
    Figure<Length> lower = job.fact(SurveyFields.LOWER_BEARING);
    return new StringLine(
        lower,
        job.fact(SurveyFields.UPPER_BEARING).minus(lower).as("string_in", Units.INCH),
        job.factOr(SurveyFields.BLOCK, 0.75),
        job.factOr(SurveyFields.STRING_WEIGHT, 0.0015),
        job.factOr(SurveyFields.STRING_TENSION, 20));
  }

  private static StringReading reading(Row row, StringLine string) {
    String rafter = row.of(PlaceFields.RAFTER).value();
    Figure<Length> along = row.of(PlaceFields.ALONG);
    Figure<Length> up = row.of(PlaceFields.UP);
    return row.has(PlaceFields.DROP)
        ? StringReading.ofDrop(rafter, along, up, row.of(PlaceFields.DROP))
        : string.read(rafter, along, up, row.of(SurveyFields.READING));
  }

  private static LevelRules rules(Job job) {
    Figure<Length> sister = job.fact(JobFields.SISTER_TOLERANCE);
    return new LevelRules(
        job.fact(JobFields.SHIM_TOLERANCE),
        sister,
        job.fact(SurveyFields.IS_TRUSS),
        new SisterRules(
            sister,
            job.fact(JobFields.SISTER_LAP),
            job.fact(SurveyFields.FULL_BEARING),
            job.fact(JobFields.SISTER_SIZE),
            job.fact(FramingFields.RAFTER_SIZE),
            job.fact(SurveyFields.LEAST_LAP),
            job.fact(JobFields.SISTER_NAIL_SPACING),
            job.fact(JobFields.SISTER_NAIL_ROWS)),
        ShimRules.usual());
  }

  /** That every stick which a sister takes for itself is on sale. */
  private static void checkOnSale(Job job, SurveyedPlane plane) {
    Choice<LumberSize> size = job.fact(JobFields.SISTER_SIZE);
    for (PlannedRafter rafter : plane.plan().rafters()) {
      Figure<Length> stock = rafter.sister().stock();
      if (stock.value() > 0) {
        String use = "for the sister of rafter " + rafter.rafter();
        job.lumber().check(size.value(), stock.value(), use);
      }
    }
  }

  private static LevelPrices prices(Job job) {
    return new LevelPrices(
        job.lumber().sticks(job.fact(JobFields.SISTER_SIZE)),
        job.price(OfficeFields.SHIM_PRICE),
        job.rate(OfficeFields.SISTER_HOURS),
        job.rate(OfficeFields.SHIM_HOURS),
        job.rate(OfficeFields.LABOR));
  }

  private <Q extends Quantity> Figure<Q> sum(
      String name, Unit<Q> unit, java.util.function.Function<SurveyedPlane, Figure<Q>> of) {
    return added(planes.stream().map(of).toList(), name, unit);
  }

  private static <Q extends Quantity> Figure<Q> added(
      List<Figure<Q>> figures, String name, Unit<Q> unit) {
    Figure<Q> sum = Figure.of(0, unit);
    for (Figure<Q> figure : figures) {
      sum = sum.plus(figure);
    }
    return sum.as(name, unit);
  }

  /** The planes in the order of the readings. */
  public List<SurveyedPlane> planes() {
    return planes;
  }

  /** What each plane's leveling costs before tax, in the same order. */
  public List<LevelCost> costs() {
    return costs;
  }

  Figure<Pieces> sisters() {
    return sisters;
  }

  Figure<Nails> nails() {
    return nails;
  }

  Figure<Pieces> shims() {
    return shims;
  }

  /** Strips to cut, those beyond the ends of sisters among them. */
  public Figure<Pieces> strips() {
    return sum("strips_to_cut", Units.PIECE, plane -> plane.plan().totals().shims());
  }

  /** That no reading is doubted, and that every sister lies against its rafter. */
  List<Estimate.Tie> ties() {
    List<Estimate.Tie> ties = new ArrayList<>();
    for (SurveyedPlane plane : planes) {
      ties.add(
          new Estimate.Tie(
              "No reading of plane %s is contradicted by its neighbors".formatted(plane.name()),
              plane.readings().suspectCount().isAtMost(Figure.of(0, Units.RATIO))));
      ties.add(
          new Estimate.Tie(
              "Plane %s will be as flat as required".formatted(plane.name()),
              Condition.all(
                  plane.finished().findings().stream()
                      .map(finding -> finding.check().ok())
                      .toArray(Condition[]::new))));
      ties.add(
          new Estimate.Tie(
              "Sisters of plane %s lie far enough against their rafters".formatted(plane.name()),
              plane.plan().lap().ok()));
    }
    return ties;
  }

  /** All sticks for sisters. */
  public Figure<Money> sticks() {
    return sticks;
  }

  /** The sisters of all planes, cut from as little stock as possible, if there are any. */
  public Optional<StickCuts> cutting() {
    return cutting;
  }

  /** What was solved: for the choices, for each plane, for the saw. */
  public List<Solution> solutions() {
    List<Solution> all = new ArrayList<>(List.of(choices));
    planes.forEach(plane -> all.addAll(plane.solutions()));
    cutting.map(StickCuts::solution).ifPresent(all::add);
    return all;
  }
}
