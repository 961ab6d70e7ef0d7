package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.Profile;
import sheathwright.leveling.string.Profile.Stretch;

/** Which parts of a rafter a sister covers and which a strip, in plain inches. */
record BuildUpParts(
    Profile profile, Optional<Stretch> sister, List<Stretch> strips, List<Stretch> beside) {

  /** Inches: what is shorter is no piece of wood that anybody would nail. */
  private static final double SHORTEST_STRIP = 0.5;

  /**
   * The parts of one rafter. A sister covers it from the first to the last place that is lower than
   * the tolerance, and a lap beyond each, but not beyond the bearings. Strips cover what is lower
   * than may stay; beside a sister only what it does not cover.
   */
  static BuildUpParts of(LevelRafter.Plain rafter, LevelRules.Plain rules) {
    Profile profile = rafter.buildUp().along();
    List<Stretch> strips = longEnough(profile.above(rules.leave(), rafter.wholeLength()));
    Optional<Stretch> sister = sister(profile, rafter.bearings(), rules.sisters());
    return new BuildUpParts(
        profile, sister, strips, sister.map(covered -> beside(strips, covered)).orElse(strips));
  }

  private static Optional<Stretch> sister(
      Profile profile, Stretch bearings, SisterRules.Plain rules) {
    List<Stretch> low = profile.above(rules.tolerance(), bearings);
    if (low.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        rules.isFullBearing()
            ? bearings
            : new Stretch(
                Math.max(bearings.from(), low.get(0).from() - rules.lap()),
                Math.min(bearings.to(), low.get(low.size() - 1).to() + rules.lap())));
  }

  private static List<Stretch> beside(List<Stretch> strips, Stretch sister) {
    List<Stretch> left = new ArrayList<>();
    for (Stretch strip : strips) {
      left.add(new Stretch(strip.from(), Math.min(strip.to(), sister.from())));
      left.add(new Stretch(Math.max(strip.from(), sister.to()), strip.to()));
    }
    return longEnough(left);
  }

  private static List<Stretch> longEnough(List<Stretch> strips) {
    return strips.stream().filter(strip -> strip.length() > SHORTEST_STRIP).toList();
  }

  double sisterLength() {
    return sister.map(Stretch::length).orElse(0.0);
  }

  static double length(List<Stretch> strips) {
    return strips.stream().mapToDouble(Stretch::length).sum();
  }

  /** Ends and every station between them. */
  List<Double> knots(Stretch stretch) {
    List<Double> knots = new ArrayList<>(List.of(stretch.from()));
    knots.addAll(profile.inside(stretch));
    knots.add(stretch.to());
    return knots;
  }

  /** The fastest growth of the build-up along a strip, as inches in 12. */
  double taper(Stretch strip) {
    List<Double> knots = knots(strip);
    double steepest = 0;
    for (int i = 1; i < knots.size(); i++) {
      double rise = profile.at(knots.get(i)) - profile.at(knots.get(i - 1));
      steepest = Math.max(steepest, Math.abs(rise) / (knots.get(i) - knots.get(i - 1)));
    }
    return 12 * steepest;
  }

  /** The greatest build-up along a strip. */
  double thickest(Stretch strip) {
    return knots(strip).stream().mapToDouble(profile::at).max().orElse(0);
  }
}
