package sheathwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Reading;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.job.SurveyTables.Flatness;
import sheathwright.leveling.plan.FramingAnswer;
import sheathwright.leveling.plan.LevelCost;
import sheathwright.leveling.plan.LevelPrices;
import sheathwright.leveling.plan.LevelRules;
import sheathwright.leveling.plan.ShimRules;
import sheathwright.leveling.plan.SisterRules;
import sheathwright.leveling.string.StringLine;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.leveling.target.TargetRules;
import sheathwright.wood.LumberSize;

/** Every plane whose rafters were read at several stations, and what it all comes to. */
public final class Survey {

  private static final int SHORTEST_STICK = 8;
  private static final int LONGEST_STICK = 20;

  private static final Figure<Length> NO_LEAST = Figure.of(0, Units.INCH);
  private static final Figure<Length> NO_MOST = Figure.of(120, Units.INCH);

  private final List<SurveyedPlane> planes = new ArrayList<>();
  private final List<LevelCost> costs = new ArrayList<>();
  private final Solution choices;
  private final Optional<LevelCutting> cutting;
  private final Figure<Pieces> sisters;
  private final Figure<Nails> nails;
  private final Figure<Pieces> shims;
  private final Figure<Money> sticks;

  /** What was chosen for all planes: what rafters are brought to, and how flat. */
  record Choices(TargetRules.Shape shape, Flatness flatness) {}

  Survey(Job job, Framing framing) {
    Reading reading = new Reading();
    Choices chosen =
        new Choices(
            reading.word("what rafters are brought to", job.<TargetRules.Shape>word("target")),
            reading.word("the flatness asked for", job.<Flatness>word("flatness")));
    choices = reading.solution("leveling_choices");
    FramingAnswer answer = FramingAnswer.of(framing.greatestRatio(), framing.nothingReported());
    LevelRules rules = rules(job);
    SuspicionRules suspicion = SuspicionRules.usual();
    readings(job)
        .forEach(
            (plane, given) ->
                planes.add(new SurveyedPlane(job, chosen, plane, given, suspicion, rules, answer)));
    LevelPrices prices = prices(job);
    cutting = LevelCutting.of(planes, prices.sticks());
    planes.forEach(plane -> costs.add(LevelCost.of(plane.plan(), prices)));
    sisters = sum("rafters_to_sister", Units.PIECE, plane -> plane.plan().totals().sisters());
    nails = sum("sister_nails", Units.NAIL, plane -> plane.plan().totals().nails());
    shims = sum("rafters_to_shim", Units.PIECE, plane -> plane.plan().totals().shimmed());
    sticks = added(costs.stream().map(LevelCost::sisters).toList(), "sister_sticks_usd", Units.USD);
  }

  private static Map<String, Map<StringReading, List<Figure<Length>>>> readings(Job job) {
    StringLine string = string(job);
    Map<String, Map<StringReading, List<Figure<Length>>>> byPlane = new LinkedHashMap<>();
    for (Map<String, Traced> row : job.readings()) {
      byPlane
          .computeIfAbsent(row.get("plane").plain(), plane -> new LinkedHashMap<>())
          .put(reading(row, string), bounds(row));
    }
    return byPlane;
  }

  /** Least and most build-up at a reading; empty where any will do. */
  private static List<Figure<Length>> bounds(Map<String, Traced> row) {
    if (!row.containsKey("least_in") && !row.containsKey("most_in")) {
      return List.of();
    }
    return List.of(
        row.containsKey("least_in") ? Job.figure(row, "least_in", Units.INCH) : NO_LEAST,
        row.containsKey("most_in") ? Job.figure(row, "most_in", Units.INCH) : NO_MOST);
  }

  /** From bearing to bearing, on blocks. */
  private static StringLine string(Job job) {
    Figure<Length> lower = job.fact("lower_bearing_in", Units.INCH);
    return new StringLine(
        lower,
        job.fact("upper_bearing_in", Units.INCH).minus(lower).as("string_in", Units.INCH),
        job.factOr("block_in", 0.75, Units.INCH),
        job.factOr("string_lb_per_ft", 0.0015, Units.POUND_PER_FOOT),
        job.factOr("string_tension_lb", 20, Units.POUND));
  }

  private static StringReading reading(Map<String, Traced> row, StringLine string) {
    String rafter = row.get("rafter").plain();
    Figure<Length> along = Job.figure(row, "along_in", Units.INCH);
    Figure<Length> up = Job.figure(row, SurveyTables.STATION, Units.INCH);
    return row.containsKey("drop_in")
        ? StringReading.ofDrop(rafter, along, up, Job.figure(row, "drop_in", Units.INCH))
        : string.read(rafter, along, up, Job.figure(row, "reading_in", Units.INCH));
  }

  private static LevelRules rules(Job job) {
    Figure<Length> sister = job.fact("sister_tolerance_in", Units.INCH);
    return new LevelRules(
        job.fact("shim_tolerance_in", Units.INCH),
        sister,
        job.<YesNo>word("truss"),
        new SisterRules(
            sister,
            job.fact("sister_lap_in", Units.INCH),
            job.<YesNo>word("full_bearing"),
            job.<LumberSize>word("sister_size"),
            job.<LumberSize>word("rafter_size"),
            job.fact("least_lap_in", Units.INCH),
            job.fact("sister_nail_spacing_in", Units.INCH),
            job.fact("sister_nail_rows", Units.RATIO)),
        ShimRules.usual());
  }

  /** Sticks priced by the foot, from the one that the price book has. */
  private static LevelPrices prices(Job job) {
    Figure<?> byTheFoot =
        job.price("sister_stick", Units.USD_PER_PIECE)
            .dividedBy(job.fact("sister_stick_ft", Units.FOOT));
    List<LevelPrices.Stick> sticks = new ArrayList<>();
    for (int feet = SHORTEST_STICK; feet <= LONGEST_STICK; feet += 2) {
      Figure<Length> stock = Figure.of(feet, Units.FOOT);
      Figure<Per<Money, Pieces>> price =
          byTheFoot.times(stock).as("sister_stick_%d_ft_usd".formatted(feet), Units.USD_PER_PIECE);
      sticks.add(new LevelPrices.Stick(stock, price));
    }
    return new LevelPrices(
        sticks,
        job.price("shim", Units.USD_PER_PIECE),
        job.rate("sister_h", Units.HOURS_PER_PIECE),
        job.rate("shim_h", Units.HOURS_PER_PIECE),
        job.rate("labor_usd_per_h", Units.USD_PER_HOUR));
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
              "Plane %s will be as flat as is asked for".formatted(plane.name()),
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
  public Optional<LevelCutting> cutting() {
    return cutting;
  }

  /** What was solved: for the choices, for each plane, for the saw. */
  public List<Solution> solutions() {
    List<Solution> all = new ArrayList<>(List.of(choices));
    planes.forEach(plane -> all.addAll(plane.solutions()));
    cutting.map(LevelCutting::solution).ifPresent(all::add);
    return all;
  }
}
