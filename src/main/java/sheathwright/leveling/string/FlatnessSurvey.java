package sheathwright.leveling.string;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Shown;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * How flat a plane is: straightedges of given lengths slid along every rafter, and across the
 * rafters at every height that was read, with the worst place of each.
 *
 * <p>Between two readings the wood is taken as straight, so that a straightedge may end anywhere; a
 * line shorter than the straightedge is judged whole. A limit also holds for any shorter
 * straightedge. Does not cover bumps between readings, sheet edges, or strength.
 */
public final class FlatnessSurvey {

  private static final Source SLID =
      Source.derived("straightedge slid over the readings, wood straight between them");
  private static final Figure<Length> NO_DEVIATION = Figure.of(0, Units.INCH);

  private final PlaneProfiles plane;
  private final Solution solution;
  private final List<FlatnessFinding> findings = new ArrayList<>();
  private final Roll roll;

  private FlatnessSurvey(PlaneProfiles plane, List<FlatnessLimit> limits) {
    this.plane = plane;
    Reading reading = new Reading();
    PlaneProfiles.Plain read = plane.plain(reading);
    List<Double> windows = limits.stream().map(limit -> limit.window(reading)).toList();
    this.solution = reading.solution("flatness_of_" + plane.word());
    for (int i = 0; i < limits.size(); i++) {
      findings.add(along(read, limits.get(i), windows.get(i)));
      findings.add(across(read, limits.get(i), windows.get(i)));
    }
    this.roll = listed();
  }

  /**
   * A plane surveyed.
   *
   * @param plane its name
   * @param rafters each with its drops below the string or below the target, low positive
   * @param limits that the user has chosen
   */
  public static FlatnessSurvey of(
      String plane, List<RafterProfile> rafters, List<FlatnessLimit> limits) {
    return new FlatnessSurvey(new PlaneProfiles(plane, rafters), limits);
  }

  private FlatnessFinding along(PlaneProfiles.Plain read, FlatnessLimit limit, double window) {
    Departure worst = Departure.NONE;
    String line = "";
    for (RafterProfile.Plain rafter : read.rafters()) {
      Departure here = SlidingWindow.worst(rafter.along(), window);
      if (worst.orWorse(here) == here) {
        worst = here;
        line = "rafter " + rafter.rafter();
      }
    }
    return finding(limit, FlatnessWay.ALONG_THE_RAFTERS, worst, line);
  }

  private FlatnessFinding across(PlaneProfiles.Plain read, FlatnessLimit limit, double window) {
    Departure worst = Departure.NONE;
    String line = "";
    for (double up : read.heights()) {
      Departure here = SlidingWindow.worst(read.across(up), window);
      if (worst.orWorse(here) == here) {
        worst = here;
        line = "%s up the slope".formatted(feet(up));
      }
    }
    return finding(limit, FlatnessWay.ACROSS_THE_RAFTERS, worst, line);
  }

  private FlatnessFinding finding(
      FlatnessLimit limit, FlatnessWay way, Departure worst, String line) {
    String name =
        "%s_%s_in_%s"
            .formatted(
                plane.word(),
                way == FlatnessWay.ALONG_THE_RAFTERS ? "along" : "across",
                limit.window().in(Units.FOOT).toString().replaceAll("[^0-9]+", "_"));
    Figure<Length> deviation =
        solution.figure(name + "deviation_in", worst.amount(), Units.INCH, SLID);
    Figure<Length> size =
        deviation.max(NO_DEVIATION.minus(deviation)).as(name + "size_in", Units.INCH);
    String what = "%s %s".formatted(limit.what(), way.word().replace('-', ' '));
    return new FlatnessFinding(
        limit,
        way,
        deviation,
        solution.word(name + "place", inWords(worst, line), SLID),
        Check.of(what, name + "ratio", size, limit.allowed()));
  }

  private static String inWords(Departure worst, String line) {
    return worst.size() == 0
        ? "straight"
        : "%s, %s at %s, under a straightedge from %s to %s"
            .formatted(
                line,
                worst.amount() > 0 ? "low" : "high",
                feet(worst.at()),
                feet(worst.from()),
                feet(worst.to()));
  }

  private static String feet(double inches) {
    return Shown.text("%.1f ft", inches / 12);
  }

  /** Two findings a limit: along and across. */
  public List<FlatnessFinding> findings() {
    return findings;
  }

  /** The findings as a list for a workbook. */
  public Roll roll() {
    return roll;
  }

  private Roll listed() {
    return Roll.of(
        "flatness_on_" + plane.word(),
        "what a straightedge shows",
        findings,
        Roll.<FlatnessFinding>column("limit", each -> Choice.literal(each.check().what())),
        Roll.column("deviation_in", FlatnessFinding::deviation),
        Roll.column("size_in", each -> each.check().demand()),
        Roll.column("allowed_in", each -> each.check().capacity()),
        Roll.column("ratio", each -> each.check().ratio()),
        Roll.column("ok", each -> each.check().ok().as("ok")),
        Roll.column("place", FlatnessFinding::place));
  }
}
