package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Solution;
import sheathwright.figure.Units;
import sheathwright.leveling.string.Profile;
import sheathwright.leveling.string.Profile.Stretch;

/** Marks on sisters and thicknesses of strips, found rafter by rafter. */
final class LevelDetails {

  /** Inches between two marks on a sister. */
  private static final double FOOT = 12;

  /** Less than this from the sister's end, a foot mark would lie on the end's own. */
  private static final double SAME_PLACE = 0.25;

  private static final Figure<Length> NOTHING = Figure.of(0, Units.INCH);

  private final ShimRules rules;
  private final Solution solution;
  private final List<SisterMark> marks = new ArrayList<>();
  private final List<ShimStrip> strips = new ArrayList<>();

  LevelDetails(ShimRules rules, Solution solution) {
    this.rules = rules;
    this.solution = solution;
  }

  List<SisterMark> marks() {
    return marks;
  }

  List<ShimStrip> strips() {
    return strips;
  }

  /** Adds those of one rafter, by what is done to it. */
  void add(PlannedRafter rafter, BuildUpParts parts) {
    switch (solution.following(rafter.action())) {
      case SISTER -> {
        parts.sister().ifPresent(covered -> mark(rafter.rafter(), parts.profile(), covered));
        parts.beside().forEach(strip -> strips.add(strip(rafter.rafter(), parts, strip)));
      }
      case SHIM ->
          parts.strips().forEach(strip -> strips.add(strip(rafter.rafter(), parts, strip)));
      case LEAVE, PLANE, STOP -> {}
    }
  }

  private void mark(String rafter, Profile profile, Stretch sister) {
    for (double along = 0; along < sister.length() - SAME_PLACE; along += FOOT) {
      marks.add(mark(rafter, profile, sister, along));
    }
    marks.add(mark(rafter, profile, sister, sister.length()));
  }

  private SisterMark mark(String rafter, Profile profile, Stretch sister, double along) {
    double up = sister.from() + along;
    Figure<Length> drop = inches("drop_in", profile.at(up));
    Figure<Length> marked =
        drop.dividedBy(rules.step())
            .in(Units.RATIO)
            .rounded()
            .times(rules.step())
            .as("mark_in", Units.INCH);
    return new SisterMark(
        rafter,
        solution.figure("along_ft", along / 12, Units.FOOT, LevelPlan.FOUND),
        inches("up_in", up),
        drop,
        marked);
  }

  private ShimStrip strip(String rafter, BuildUpParts parts, Stretch strip) {
    Figure<Length> greatest = inches("greatest_in", parts.thickest(strip));
    Figure<Length> thickest = Shims.thickness(greatest, rules.step()).as("thickest_in", Units.INCH);
    var taper =
        solution.figure("taper_in_12", parts.taper(strip), Units.RISE_IN_12, LevelPlan.FOUND);
    return new ShimStrip(
        rafter,
        inches("from_in", strip.from()),
        inches("to_in", strip.to()),
        solution.figure("strip_ft", strip.length() / 12, Units.FOOT, LevelPlan.FOUND),
        greatest,
        thickest,
        taper,
        taper.isAtMost(rules.mostTaper()).as("gradual"),
        thickest.isLessThan(rules.leastThickness()).as("thin"),
        rules.sheetNail().plus(thickest.max(NOTHING)).as("nail_in", Units.INCH),
        parts.knots(strip).stream()
            .map(up -> station(rafter, up, parts.profile().at(up)))
            .toList());
  }

  private ShimStrip.Station station(String rafter, double up, double height) {
    Figure<Length> buildUp = inches("build_up_in", height);
    return new ShimStrip.Station(
        rafter,
        inches("up_in", up),
        buildUp,
        Shims.thickness(buildUp, rules.step()).as("thickness_in", Units.INCH));
  }

  private Figure<Length> inches(String name, double inches) {
    return solution.figure(name, inches, Units.INCH, LevelPlan.FOUND);
  }
}
