package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/**
 * The readings of one plane, each held against its neighbors. A reading that they contradict is
 * flagged with both numbers and stays in; who read it decides.
 *
 * <p>Does not cover two wrong readings side by side that bear each other out, or a plane with fewer
 * than three stations on a rafter and fewer than three rafters: there nobody can contradict.
 */
public final class StringReadings {

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  private final String plane;
  private final List<RafterProfile> profiles;
  private final List<JudgedReading> readings;
  private final Roll roll;
  private final Figure<Ratio> suspectCount;

  private StringReadings(
      String plane, List<RafterProfile> profiles, List<JudgedReading> readings, Roll roll) {
    this.plane = plane;
    this.profiles = profiles;
    this.readings = readings;
    this.roll = roll;
    this.suspectCount = roll.sum("suspects", Units.RATIO).as("suspect_" + roll.name(), Units.RATIO);
  }

  /**
   * The readings of a plane.
   *
   * @param plane its name
   * @param readings in any order; all of one rafter carry the same name and center
   * @throws RefusedException if there are none, two at one place, or two rafters at one center
   */
  public static StringReadings of(
      String plane, List<StringReading> readings, SuspicionRules rules) {
    if (readings.isEmpty()) {
      throw new RefusedException("plane %s has no reading; read every rafter".formatted(plane));
    }
    Map<String, List<StringReading>> byRafter = new LinkedHashMap<>();
    for (StringReading reading : readings) {
      byRafter.computeIfAbsent(reading.rafter(), rafter -> new ArrayList<>()).add(reading);
    }
    PlaneProfiles profiles =
        new PlaneProfiles(plane, byRafter.values().stream().map(StringReadings::profile).toList());
    List<JudgedReading> judged = judged(profiles, byRafter, rules);
    return new StringReadings(plane, profiles.rafters(), judged, roll(profiles.word(), judged));
  }

  private static RafterProfile profile(List<StringReading> ofRafter) {
    StringReading first = ofRafter.get(0);
    for (StringReading reading : ofRafter) {
      if (Math.abs(inches(reading.center()) - inches(first.center())) > 1e-6) {
        throw new RefusedException(
            "rafter %s has its center at %s and again at %s; a rafter has only one"
                .formatted(first.rafter(), first.center(), reading.center()),
            List.of(reading.center(), first.center()));
      }
    }
    return new RafterProfile(
        first.rafter(), first.center(), ofRafter.stream().map(StringReading::station).toList());
  }

  private static double inches(Figure<?> center) {
    return Reading.aside().number("center", center, Units.INCH);
  }

  private static List<JudgedReading> judged(
      PlaneProfiles plane, Map<String, List<StringReading>> byRafter, SuspicionRules rules) {
    Reading solving = new Reading();
    Neighbors neighbors = GrossErrors.silenced(plane.plain(solving), rules.plain(solving));
    Solution solution = solving.solution("neighbors_on_" + plane.word());
    List<JudgedReading> judged = new ArrayList<>();
    for (int rafter = 0; rafter < plane.rafters().size(); rafter++) {
      RafterProfile profile = plane.rafters().get(rafter);
      for (int station = 0; station < profile.stations().size(); station++) {
        Figure<?> up = profile.stations().get(station).up();
        StringReading reading =
            byRafter.get(profile.rafter()).stream()
                .filter(each -> each.up() == up)
                .findFirst()
                .orElseThrow();
        judged.add(
            JudgedReading.of(
                reading, neighbors, new Neighbors.Spot(rafter, station), rules, solution));
      }
    }
    return judged;
  }

  private static Roll roll(String plane, List<JudgedReading> judged) {
    return Roll.of(
        "readings_on_" + plane,
        "the readings",
        judged,
        Roll.<JudgedReading>column("rafter", each -> Choice.literal(each.reading().rafter())),
        Roll.column("center_in", each -> each.reading().center()),
        Roll.column("up_in", each -> each.reading().up()),
        Roll.column("reading_in", each -> each.reading().reading()),
        Roll.column("place_ft", each -> each.reading().place()),
        Roll.column("string_sag_in", each -> each.reading().stringSag()),
        Roll.column("drop_in", each -> each.reading().drop()),
        Roll.column("expected_in", JudgedReading::expected),
        Roll.column("departure_in", JudgedReading::departure),
        Roll.column("doubt", JudgedReading::doubt),
        Roll.column("spread_in", JudgedReading::spread),
        Roll.column("beside_in", JudgedReading::beside),
        Roll.column("usual_in", JudgedReading::usual),
        Roll.column("allowed_in", JudgedReading::allowed),
        Roll.column("suspect", JudgedReading::suspect),
        Roll.column("suspects", each -> Figure.choose(each.suspect().is(YesNo.YES), ONE, NONE)));
  }

  public String plane() {
    return plane;
  }

  /** Every reading, rafter by rafter from the left, each from the eave up. */
  public List<JudgedReading> readings() {
    return readings;
  }

  /** Those that their neighbors contradict. */
  public List<JudgedReading> suspects() {
    return readings.stream().filter(JudgedReading::isSuspect).toList();
  }

  /** How many are to be read again. */
  public Figure<Ratio> suspectCount() {
    return suspectCount;
  }

  /** The drops, rafter by rafter from the left. */
  public List<RafterProfile> profiles() {
    return profiles;
  }

  /** The readings as a list for a workbook, one formula a column. */
  public Roll roll() {
    return roll;
  }

  /** How many, and which are to be read again. */
  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder(
            "%s readings on %s rafters of plane %s, %s to recheck"
                .formatted(readings.size(), profiles.size(), plane, suspects().size()));
    suspects().forEach(suspect -> text.append("\n").append(suspect));
    return text.toString();
  }
}
