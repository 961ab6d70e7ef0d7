package sheathwright.job;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.job.SurveyFields.Flatness;
import sheathwright.leveling.plan.FramingAnswer;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.leveling.plan.LevelRules;
import sheathwright.leveling.plan.PlannedRafter;
import sheathwright.leveling.plan.Straightened;
import sheathwright.leveling.string.FlatnessLimit;
import sheathwright.leveling.string.FlatnessSurvey;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.RafterProfile;
import sheathwright.leveling.string.RafterStation;
import sheathwright.leveling.string.SagSurvey;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.leveling.target.LevelTarget;
import sheathwright.leveling.target.NoTargetException;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetRules;

/** One plane whose rafters were read at several stations, from the readings to the plan. */
public final class SurveyedPlane {

  private static final double USUAL_FRACTION = 240;

  private final String name;
  private final FlatnessSurvey flatness;
  private final SagSurvey sags;
  private final FlatnessSurvey finished;
  private final Straightened straightened;
  private final Roll stations;
  private final Roll work;

  SurveyedPlane(
      Job job,
      Survey.Choices chosen,
      String name,
      Map<StringReading, List<Figure<Length>>> given,
      SuspicionRules suspicion,
      LevelRules rules,
      FramingAnswer framing) {
    this.name = name;
    StringReadings readings = StringReadings.of(name, List.copyOf(given.keySet()), suspicion);
    new SurveyFacts(job, name).check(readings.profiles());
    Figure<Length> lower = job.fact(SurveyFields.LOWER_BEARING);
    Figure<Length> upper = job.fact(SurveyFields.UPPER_BEARING);
    flatness = FlatnessSurvey.of(name, readings.profiles(), limits(chosen));
    sags =
        SagSurvey.of(
            name,
            readings.profiles().stream()
                .map(profile -> new LevelRafter(profile, lower, upper))
                .toList(),
            job.factOr(SurveyFields.SAG_FRACTION, USUAL_FRACTION));
    try {
      straightened =
          Straightened.of(readings, target(job, chosen, given), lower, upper, rules, framing);
    } catch (NoTargetException none) {
      throw new RefusedException(
          "plane " + name + ": " + none.getMessage(), clashing(job, readings, given, none));
    }
    straightened.plan().rafters().forEach(SurveyedPlane::refuseLongSisters);
    List<Straightened.Standing> standings = straightened.standings();
    stations = stations(standings);
    finished =
        FlatnessSurvey.of(
            name + " when done", whenDone(readings.profiles(), standings), limits(chosen));
    work = work(straightened.plan().rafters());
  }

  /** The same stations, as far below the string as they will be. */
  private static List<RafterProfile> whenDone(
      List<RafterProfile> found, List<Straightened.Standing> standings) {
    Iterator<Straightened.Standing> next = standings.iterator();
    return found.stream()
        .map(
            rafter ->
                new RafterProfile(
                    rafter.rafter(),
                    rafter.center(),
                    rafter.stations().stream()
                        .map(station -> new RafterStation(station.up(), next.next().below()))
                        .toList()))
        .toList();
  }

  private static void refuseLongSisters(PlannedRafter rafter) {
    rafter
        .sister()
        .stock()
        .refusal()
        .ifPresent(
            refusal -> {
              throw new RefusedException(
                  "rafter " + rafter.rafter() + ": " + refusal.reason(), refusal.causes());
            });
  }

  /** The cells that hold the bounds which cannot be met together. */
  private static List<Figure<?>> clashing(
      Job job,
      StringReadings readings,
      Map<StringReading, List<Figure<Length>>> given,
      NoTargetException none) {
    List<Figure<?>> cells = new ArrayList<>();
    for (NoTargetException.Clash clash : none.clashes()) {
      StringReading reading = readings.readings().get(clash.reading()).reading();
      cells.add(
          switch (clash.side()) {
            case WOOD -> reading.drop();
            case LEAST -> given.get(reading).get(0);
            case MOST -> given.get(reading).get(1);
            case CAP -> job.fact(SurveyFields.CAP);
          });
    }
    return cells;
  }

  private static TargetRules target(
      Job job, Survey.Choices chosen, Map<StringReading, List<Figure<Length>>> given) {
    Map<StringReading, List<Figure<Length>>> bounds = new LinkedHashMap<>(given);
    bounds.values().removeIf(List::isEmpty);
    Choice<TargetObjective> objective = job.fact(SurveyFields.OBJECTIVE);
    return new TargetRules(
        chosen.shape(),
        objective,
        job.knows(SurveyFields.CAP) ? Optional.of(job.fact(SurveyFields.CAP)) : Optional.empty(),
        bounds);
  }

  private static List<FlatnessLimit> limits(Survey.Choices chosen) {
    return chosen.flatness() == Flatness.STRICT ? FlatnessLimit.strict() : FlatnessLimit.usual();
  }

  private String word() {
    return name.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  /** What is done to each rafter, in the few columns that a crew reads. */
  public Roll work() {
    return work;
  }

  private Roll work(List<PlannedRafter> rafters) {
    return Roll.of(
        "work_of_" + word(),
        "what is done to each rafter",
        rafters,
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

  private Roll stations(List<Straightened.Standing> standings) {
    return Roll.of(
        "stations_of_" + word(),
        "the stations before and after",
        standings,
        Roll.<Straightened.Standing>column("rafter", Straightened.Standing::rafter),
        Roll.column("up_in", Straightened.Standing::up),
        Roll.column("before_in", Straightened.Standing::before),
        Roll.column("after_in", Straightened.Standing::after));
  }

  public String name() {
    return name;
  }

  /** From the readings to what is done to each rafter. */
  public Straightened straightened() {
    return straightened;
  }

  /** The readings, each held against its neighbors. */
  public StringReadings readings() {
    return straightened.readings();
  }

  /** What a straightedge shows on the old wood. */
  public FlatnessSurvey flatness() {
    return flatness;
  }

  /** What a straightedge will show when the plan is carried out. */
  public FlatnessSurvey finished() {
    return finished;
  }

  /** How far each rafter sags, and the worst against its span. */
  public SagSurvey sags() {
    return sags;
  }

  /** The surface that the rafters are brought to. */
  public LevelTarget target() {
    return straightened.target();
  }

  /** What is done to each rafter. */
  public LevelPlan plan() {
    return straightened.plan();
  }

  /** What was solved for it: who is doubted, how flat it is, its target, its plan. */
  List<Solution> solutions() {
    return Stream.of(
            readings().readings().get(0).expected(),
            flatness.findings().get(0).deviation(),
            finished.findings().get(0).deviation(),
            sags.worst().sag().demand(),
            target().total(),
            straightened.worst().greatest())
        .flatMap(found -> Solution.behind(found).stream())
        .toList();
  }

  /** Every station as it stands to the string before and after. */
  public Roll stations() {
    return stations;
  }
}
