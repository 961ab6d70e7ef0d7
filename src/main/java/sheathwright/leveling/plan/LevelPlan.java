package sheathwright.leveling.plan;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.PlaneProfiles;

/**
 * What is done to each rafter of a plane so that it lies on its target, with the sisters' marks and
 * the strips' thicknesses. There is no plan without the answer of the framing's screening, and no
 * text of it without the line that says who decides: see {@link RepairList}.
 *
 * <p>Actions and counts follow the thresholds live; lengths, marks and strips are found for the
 * inputs as they are, and the guard says so when one has changed. Between two stations the wood is
 * taken as straight; beyond the last ones the build-up is taken to stay as it is there.
 */
public final class LevelPlan {

  static final Source FOUND =
      Source.derived("found on the straight lines between the stations of the rafter");

  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);

  private final String plane;
  private final FramingAnswer framing;
  private final List<PlannedRafter> rafters = new ArrayList<>();
  private final LevelDetails details;
  private final Roll roll;
  private final Roll marksRoll;
  private final Roll stripsRoll;
  private final Roll thicknessesRoll;
  private final LevelTotals totals;
  private final Check lap;
  private final Choice<LevelDecision> trussDecision;
  private final Choice<LevelDecision> decision;

  private LevelPlan(
      PlaneProfiles plane, List<LevelRafter> list, LevelRules rules, FramingAnswer framing) {
    this.plane = plane.word();
    this.framing = framing;
    Reading reading = new Reading();
    List<LevelRafter.Plain> read = list.stream().map(rafter -> rafter.plain(reading)).toList();
    LevelRules.Plain plain = rules.plain(reading);
    Solution solution = reading.solution("level_plan_of_" + this.plane);
    this.details = new LevelDetails(rules.shims(), solution);
    WhatTrussesAllow allowed = WhatTrussesAllow.of(rules.truss());
    SisterRules sisters = rules.sisters();
    SideBySide.Depths depths =
        SideBySide.sister(sisters.size()).rafter(sisters.rafterSize()).depths();
    for (int i = 0; i < list.size(); i++) {
      BuildUpParts parts = BuildUpParts.of(read.get(i), plain);
      PlannedRafter planned =
          PlannedRafter.of(list.get(i), rules, allowed, depths, parts, solution);
      rafters.add(planned);
      details.add(planned, parts);
    }
    this.roll = PlannedRafter.roll(this.plane, rafters);
    this.marksRoll = SisterMark.roll(this.plane, marks());
    this.stripsRoll = ShimStrip.roll(this.plane, strips());
    this.thicknessesRoll = ShimStrip.thicknesses(this.plane, strips());
    this.totals = LevelTotals.of(this.plane, roll);
    this.lap =
        Check.of(
            "lap of sisters and rafters",
            "lap_ratio_of_" + this.plane,
            rules.sisters().leastLap(),
            totals.smallestLap());
    this.trussDecision =
        Choice.choose(
                totals.trussStops().isMoreThan(NONE),
                LevelDecision.TRUSS_DESIGNER_FIRST,
                LevelDecision.SCREENED)
            .as("truss_decision_of_" + this.plane, Source.COMMON_PRACTICE);
    Choice<LevelDecision> bySight =
        Choice.choose(
                framing.nothingReported(), LevelDecision.SCREENED, LevelDecision.REPORTED_FIRST)
            .as("level_decision_by_sight_of_" + this.plane, Source.COMMON_PRACTICE);
    Choice<LevelDecision> byTruss =
        Choice.choose(
                totals.trussStops().isMoreThan(NONE), LevelDecision.TRUSS_DESIGNER_FIRST, bySight)
            .as("level_decision_by_truss_of_" + this.plane, Source.COMMON_PRACTICE);
    this.decision =
        Choice.choose(framing.check().ok(), byTruss, LevelDecision.ENGINEER_FIRST)
            .as("level_decision_of_" + this.plane, Source.COMMON_PRACTICE);
  }

  /**
   * The plan of a plane.
   *
   * @param plane its name
   * @param rafters each with its build-ups and its bearings; their order is kept
   * @param rules what the user wants
   * @param framing what the screening of the old rafters came to
   * @throws RefusedException if there is no rafter, two stand at one center, or an input is refused
   */
  public static LevelPlan of(
      String plane, List<LevelRafter> rafters, LevelRules rules, FramingAnswer framing) {
    if (rafters.isEmpty()) {
      throw new RefusedException("plane %s has no rafter to level".formatted(plane));
    }
    PlaneProfiles profiles =
        new PlaneProfiles(plane, rafters.stream().map(LevelRafter::buildUp).toList());
    return new LevelPlan(profiles, rafters, rules, framing);
  }

  /** Each rafter, as handed in. */
  public List<PlannedRafter> rafters() {
    return rafters;
  }

  /** The crew's marks: on each sister at its lower end, at every foot, and at its upper end. */
  public List<SisterMark> marks() {
    return details.marks();
  }

  /** Every strip that is cut. */
  public List<ShimStrip> strips() {
    return details.strips();
  }

  /** The rafters as a list for a workbook, one formula a column. */
  public Roll roll() {
    return roll;
  }

  /** The marks as a list for a workbook. */
  public Roll marksRoll() {
    return marksRoll;
  }

  /** The strips as a list for a workbook. */
  public Roll stripsRoll() {
    return stripsRoll;
  }

  /** How thick the strips are, place by place, as a list for a workbook. */
  public Roll thicknessesRoll() {
    return thicknessesRoll;
  }

  /** What it adds up to. */
  public LevelTotals totals() {
    return totals;
  }

  /** The least lap against the smallest by which any sister lies against its rafter. */
  public Check lap() {
    return lap;
  }

  /** What the screening of the old rafters came to. */
  public FramingAnswer framing() {
    return framing;
  }

  /** Whether trusses ask for something that only their designer may allow. */
  public Choice<LevelDecision> trussDecision() {
    return trussDecision;
  }

  /** Who decides before anything is done: the line that every list of this plan begins with. */
  public Choice<LevelDecision> decision() {
    return decision;
  }

  /** What the crew does, who decides first. */
  @Override
  public String toString() {
    return RepairList.of(this).toString();
  }

  /** The plane's name, as it may stand inside the name of a cell. */
  String plane() {
    return plane;
  }
}
