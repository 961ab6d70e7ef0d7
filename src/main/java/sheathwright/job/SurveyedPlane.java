package sheathwright.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.job.SurveyTables.Flatness;
import sheathwright.job.SurveyTables.Target;
import sheathwright.levelling.FlatnessLimit;
import sheathwright.levelling.FlatnessSurvey;
import sheathwright.levelling.FramingAnswer;
import sheathwright.levelling.JudgedReading;
import sheathwright.levelling.LevelAction;
import sheathwright.levelling.LevelPlan;
import sheathwright.levelling.LevelRafter;
import sheathwright.levelling.LevelRules;
import sheathwright.levelling.LevelTarget;
import sheathwright.levelling.PlannedRafter;
import sheathwright.levelling.RafterProfile;
import sheathwright.levelling.RafterStation;
import sheathwright.levelling.StringReading;
import sheathwright.levelling.StringReadings;
import sheathwright.levelling.Surface;
import sheathwright.levelling.SuspicionRules;
import sheathwright.levelling.TargetObjective;
import sheathwright.levelling.TargetPoint;
import sheathwright.levelling.Targets;
import sheathwright.roof.Spot;

/** One plane whose rafters were read at several stations, from the readings to the plan. */
public final class SurveyedPlane {

  private static final Figure<Length> STRING = Figure.of(0, Units.INCH);

  private final String name;
  private final StringReadings readings;
  private final FlatnessSurvey flatness;
  private final LevelTarget target;
  private final LevelPlan plan;
  private final Roll profiles;
  private final Roll work;

  /** One station, as it stands to the string before and after. */
  private record Standing(
      Choice<String> rafter, Figure<Length> up, Figure<Length> before, Figure<Length> after) {}

  SurveyedPlane(
      Job job,
      String name,
      List<StringReading> given,
      SuspicionRules suspicion,
      LevelRules rules,
      FramingAnswer framing) {
    this.name = name;
    readings = StringReadings.of(name, given, suspicion);
    flatness = FlatnessSurvey.of(name, readings.profiles(), limits(job));
    target = target(job, word(name), readings.readings());
    Map<String, List<RafterStation>> buildUps = new LinkedHashMap<>();
    for (int i = 0; i < readings.readings().size(); i++) {
      StringReading reading = readings.readings().get(i).reading();
      buildUps
          .computeIfAbsent(reading.rafter(), rafter -> new ArrayList<>())
          .add(new RafterStation(reading.up(), target.buildUps().get(i)));
    }
    List<LevelRafter> rafters = new ArrayList<>();
    for (RafterProfile profile : readings.profiles()) {
      rafters.add(
          new LevelRafter(
              new RafterProfile(profile.rafter(), profile.center(), buildUps.get(profile.rafter())),
              job.fact("lower_bearing_in", Units.INCH),
              job.fact("upper_bearing_in", Units.INCH)));
    }
    plan = LevelPlan.of(name, rafters, rules, framing);
    profiles = profiles();
    work = listed();
  }

  /** What is done to each rafter, in the few columns that a crew reads. */
  public Roll work() {
    return work;
  }

  private Roll listed() {
    return Roll.of(
        "work_of_" + word(name),
        "what is done to each rafter",
        plan.rafters(),
        Roll.<PlannedRafter>column("rafter", rafter -> Choice.literal(rafter.rafter())),
        Roll.column("action", PlannedRafter::action),
        Roll.column("most_build_up_in", PlannedRafter::greatest),
        Roll.column("least_build_up_in", PlannedRafter::least),
        Roll.column("sister_ft", rafter -> rafter.sister().length()),
        Roll.column("stick_ft", rafter -> rafter.sister().stock()),
        Roll.column("shorter_lacks_in", rafter -> rafter.sister().nearMiss()),
        Roll.column("strips", rafter -> rafter.shims().pieces()),
        Roll.column("strip_ft", rafter -> rafter.shims().length()));
  }

  private static String word(String plane) {
    return plane.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  private static List<FlatnessLimit> limits(Job job) {
    return job.<Flatness>word("flatness").value() == Flatness.STRICT
        ? FlatnessLimit.strict()
        : FlatnessLimit.usual();
  }

  private static LevelTarget target(Job job, String plane, List<JudgedReading> readings) {
    List<TargetPoint> points = new ArrayList<>();
    for (JudgedReading judged : readings) {
      StringReading reading = judged.reading();
      String place = "rafter %s at %s".formatted(reading.rafter(), reading.up());
      points.add(
          TargetPoint.of(
              place,
              reading.center(),
              reading.up(),
              STRING.minus(reading.drop()).as("height_in", Units.INCH)));
    }
    Choice<TargetObjective> objective = job.word("objective");
    Optional<Figure<Length>> cap =
        job.knows("cap_in") ? Optional.of(job.fact("cap_in", Units.INCH)) : Optional.empty();
    return job.<Target>word("target").value() == Target.PLANE
        ? Targets.plane(plane, points, objective, cap)
        : Targets.lines(plane, points, objective, cap);
  }

  /** Every station before and after, rafter by rafter, each from the eave up. */
  private Roll profiles() {
    Map<String, PlannedRafter> planned = new LinkedHashMap<>();
    plan.rafters().forEach(rafter -> planned.put(rafter.rafter(), rafter));
    List<Standing> standings = new ArrayList<>();
    for (int i = 0; i < readings.readings().size(); i++) {
      StringReading reading = readings.readings().get(i).reading();
      Choice<LevelAction> action = planned.get(reading.rafter()).action();
      Figure<Length> before = STRING.minus(reading.drop()).as("before_in", Units.INCH);
      Figure<Length> straight = before.plus(target.buildUps().get(i)).as("straight_in", Units.INCH);
      Condition stays = Condition.any(action.is(LevelAction.LEAVE), action.is(LevelAction.STOP));
      standings.add(
          new Standing(
              Choice.literal(reading.rafter()),
              reading.up(),
              before,
              Figure.choose(stays, before, straight).as("after_in", Units.INCH)));
    }
    return Roll.of(
        "stations_of_" + word(name),
        "the stations before and after",
        standings,
        Roll.<Standing>column("rafter", Standing::rafter),
        Roll.column("up_in", Standing::up),
        Roll.column("before_in", Standing::before),
        Roll.column("after_in", Standing::after));
  }

  /** Build-up at each station, rafter by rafter, for a map. */
  public List<List<Surface.Height>> buildUps() {
    Map<String, List<Surface.Height>> byRafter = new LinkedHashMap<>();
    for (int i = 0; i < readings.readings().size(); i++) {
      StringReading reading = readings.readings().get(i).reading();
      Spot place =
          new Spot(reading.center().in(Units.INCH).value(), reading.up().in(Units.INCH).value());
      byRafter
          .computeIfAbsent(reading.rafter(), rafter -> new ArrayList<>())
          .add(new Surface.Height(place, target.buildUps().get(i).value()));
    }
    return List.copyOf(byRafter.values());
  }

  /** The rafter that needs the most build-up. */
  public PlannedRafter worst() {
    return plan.rafters().stream()
        .max(java.util.Comparator.comparingDouble(rafter -> rafter.greatest().value()))
        .orElseThrow();
  }

  public String name() {
    return name;
  }

  /** The readings, each held against its neighbours. */
  public StringReadings readings() {
    return readings;
  }

  /** What a straightedge shows on the old wood. */
  public FlatnessSurvey flatness() {
    return flatness;
  }

  /** The surface that the rafters are brought to. */
  public LevelTarget target() {
    return target;
  }

  /** What is done to each rafter. */
  public LevelPlan plan() {
    return plan;
  }

  /** What was solved for it: how flat it is, its target, its plan. */
  List<Solution> solutions() {
    return Stream.of(flatness.findings().get(0).deviation(), target.total(), worst().greatest())
        .flatMap(found -> Solution.behind(found).stream())
        .toList();
  }

  /** Every station as it stands to the string before and after. */
  public Roll stations() {
    return profiles;
  }
}
