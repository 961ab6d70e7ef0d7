package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Units;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.RafterProfile;
import sheathwright.leveling.string.RafterStation;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.target.LevelTarget;
import sheathwright.leveling.target.NoTargetException;
import sheathwright.leveling.target.Surface;
import sheathwright.leveling.target.TargetPoint;
import sheathwright.leveling.target.TargetRules;
import sheathwright.roof.Spot;

/**
 * The rafters of one plane from their readings to what is done to each.
 *
 * @param readings each held against its neighbors
 * @param target the surface that the rafters are brought to
 * @param plan what is done to each
 */
public record Straightened(StringReadings readings, LevelTarget target, LevelPlan plan) {

  private static final Figure<Length> STRING = Figure.of(0, Units.INCH);

  /** One station as it stands to the string, low negative. */
  public record Standing(
      Choice<String> rafter, Figure<Length> up, Figure<Length> before, Figure<Length> after) {

    /** How far it will lie below the string. */
    public Figure<Length> below() {
      return STRING.minus(after).as("below_when_done_in", Units.INCH);
    }
  }

  /**
   * What it takes to bring the rafters of a plane to a target.
   *
   * @param lower lower bearing of the rafters, from the eave up the slope
   * @param upper their upper bearing
   * @throws NoTargetException if no such target meets every bound
   */
  public static Straightened of(
      StringReadings readings,
      TargetRules target,
      Figure<Length> lower,
      Figure<Length> upper,
      LevelRules rules,
      FramingAnswer framing) {
    String plane = readings.plane();
    List<TargetPoint> points =
        readings.readings().stream()
            .map(judged -> target.bound(judged.reading(), point(judged.reading())))
            .toList();
    String word = plane.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
    LevelTarget solved = target.solved(word, points);
    Map<String, List<RafterStation>> buildUps = new LinkedHashMap<>();
    for (int i = 0; i < points.size(); i++) {
      StringReading reading = readings.readings().get(i).reading();
      buildUps
          .computeIfAbsent(reading.rafter(), rafter -> new ArrayList<>())
          .add(new RafterStation(reading.up(), solved.buildUps().get(i)));
    }
    List<LevelRafter> rafters = new ArrayList<>();
    for (RafterProfile profile : readings.profiles()) {
      RafterProfile toBuild =
          new RafterProfile(profile.rafter(), profile.center(), buildUps.get(profile.rafter()));
      rafters.add(new LevelRafter(toBuild, lower, upper));
    }
    return new Straightened(readings, solved, LevelPlan.of(plane, rafters, rules, framing));
  }

  private static TargetPoint point(StringReading reading) {
    return TargetPoint.of(
        "rafter %s at %s".formatted(reading.rafter(), reading.up()),
        reading.center(),
        reading.up(),
        STRING.minus(reading.drop()).as("height_in", Units.INCH));
  }

  /** Every station before and after, rafter by rafter, each from the eave up. */
  public List<Standing> standings() {
    Map<String, PlannedRafter> planned = new LinkedHashMap<>();
    plan.rafters().forEach(rafter -> planned.put(rafter.rafter(), rafter));
    List<Standing> standings = new ArrayList<>();
    for (int i = 0; i < readings.readings().size(); i++) {
      StringReading reading = readings.readings().get(i).reading();
      Choice<LevelAction> action = planned.get(reading.rafter()).action();
      Figure<Length> before = STRING.minus(reading.drop()).as("before_in", Units.INCH);
      Figure<Length> straight = before.plus(target.buildUps().get(i)).as("straight_in", Units.INCH);
      Figure<Length> unlessLeft =
          Figure.choose(action.is(LevelAction.LEAVE), before, straight)
              .as("straight_or_left_in", Units.INCH);
      standings.add(
          new Standing(
              Choice.literal(reading.rafter()),
              reading.up(),
              before,
              Figure.choose(action.is(LevelAction.STOP), before, unlessLeft)
                  .as("after_in", Units.INCH)));
    }
    return standings;
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
        .max(Comparator.comparingDouble(rafter -> rafter.greatest().value()))
        .orElseThrow();
  }

  /** Who decides, and what it comes to. */
  @Override
  public String toString() {
    LevelTotals totals = plan.totals();
    return "%s%n%s to sister, %s to shim, %s to leave; build-up %s"
        .formatted(plan.decision(), totals.sisters(), totals.shimmed(), totals.left(), target)
        .replace(System.lineSeparator(), "\n");
  }
}
