package sheathwright.leveling.target;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntFunction;
import sheathwright.leveling.target.TargetProgram.Optimum;

/**
 * The search for a surface over the readings. Few of the readings ever decide: the program begins
 * with the outermost ones, and each time the reading is added that its answer does most wrong.
 */
final class TargetSearch {

  /**
   * Far below the millionth of an inch that is promised, far above the library's noise; half and
   * double give the same 240 planes.
   */
  private static final double UNMET = 2e-8;

  /** What is met exactly may be missed by what is unmet; five times that is surely met. */
  private static final double TIGHT = 5 * UNMET;

  // Of 120 invented planes under both objectives (TargetWork): half the same planes, 0.97 of the
  // turns; double the same, 1.15.
  private static final int DIRECTIONS = 8;

  private final TargetFrame frame;
  private final Set<Integer> first = new TreeSet<>();
  private Optional<NoTargetException> clash = Optional.empty();

  /**
   * Where the search ended.
   *
   * @param rows of the last program
   * @param deciding rows that are met exactly because they decided
   * @param touching other rows that are met exactly as far as can be told
   */
  record Found(List<TargetRow> rows, List<TargetRow> deciding, List<TargetRow> touching) {}

  TargetSearch(TargetFrame frame) {
    this.frame = frame;
    for (int i = 0; i < DIRECTIONS; i++) {
      double turn = 2 * Math.PI * i / DIRECTIONS;
      first.add(outermost(Math.cos(turn), Math.sin(turn)));
    }
  }

  private int outermost(double across, double up) {
    int found = 0;
    double furthest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < frame.size(); i++) {
      double[] place = frame.wood(i).factors();
      double distance = across * place[TargetFrame.ACROSS] + up * place[TargetFrame.UP];
      if (distance > furthest) {
        furthest = distance;
        found = i;
      }
    }
    return found;
  }

  /**
   * The surface of an objective: then the other one as small as can be, then the slope across, then
   * the slope up.
   *
   * @throws NoTargetException if the bounds clash
   */
  Found found(TargetObjective objective) {
    requireFeasible();
    TargetProgram program = new TargetProgram(TargetFrame.VARIABLES, frame.reach());
    first.forEach(i -> program.add(frame.least(i)));
    List<IntFunction<TargetRow>> asked = new ArrayList<>();
    asked.add(frame::least);
    if (frame.isLimited()) {
      asked.add(i -> frame.most(i, 0));
    }
    boolean isTotalFirst = objective == TargetObjective.TOTAL;
    if (isTotalFirst) {
      settled(program, frame.meanHeight(), asked);
    }
    first.forEach(i -> program.add(frame.largest(i)));
    asked.add(frame::largest);
    Optimum optimum = settled(program, TargetFrame.only(TargetFrame.EXTRA), asked);
    if (!isTotalFirst) {
      optimum = settled(program, frame.meanHeight(), asked);
    }
    for (int slope : List.of(TargetFrame.ACROSS, TargetFrame.UP)) {
      program.add(frame.rise(slope));
      program.add(frame.fall(slope));
      optimum = settled(program, TargetFrame.only(slope + TargetFrame.SIZE), asked);
    }
    return foundIn(program, optimum.values());
  }

  /** The least value of an objective over all readings; what decided it is held from then on. */
  private Optimum settled(
      TargetProgram program, double[] objective, List<IntFunction<TargetRow>> asked) {
    Optimum optimum = least(program, objective, asked);
    program.hold(optimum.deciding());
    return optimum;
  }

  private Optimum least(
      TargetProgram program, double[] objective, List<IntFunction<TargetRow>> asked) {
    while (true) {
      Optimum optimum =
          program
              .least(objective)
              .orElseThrow(
                  () -> new IllegalStateException("the program of the target has no answer"));
      boolean isMet = true;
      for (IntFunction<TargetRow> rows : asked) {
        TargetRow worst = worst(rows, optimum.values());
        if (worst.slack(optimum.values()) < -UNMET && !program.has(worst)) {
          program.add(worst);
          isMet = false;
        }
      }
      if (isMet) {
        return optimum;
      }
    }
  }

  private TargetRow worst(IntFunction<TargetRow> rows, double[] values) {
    TargetRow worst = rows.apply(0);
    for (int i = 1; i < frame.size(); i++) {
      TargetRow row = rows.apply(i);
      if (row.slack(values) < worst.slack(values)) {
        worst = row;
      }
    }
    return worst;
  }

  /** The wood does not give way; every other bound may, by the same amount. */
  private void requireFeasible() {
    if (!frame.isLimited()) {
      return;
    }
    TargetProgram program = new TargetProgram(TargetFrame.VARIABLES, frame.reach());
    program.keepPositive(TargetFrame.EXTRA);
    first.forEach(i -> program.add(frame.wood(i)));
    Optimum optimum =
        least(
            program,
            TargetFrame.only(TargetFrame.EXTRA),
            List.of(frame::wood, frame::leastGiving, i -> frame.most(i, 1)));
    double lacking = optimum.values()[TargetFrame.EXTRA];
    if (lacking > TargetProgram.NOISE) {
      clash = Optional.of(NoTargetException.of(frame, optimum.deciding(), lacking));
    }
    if (lacking > UNMET) {
      throw clash.orElseThrow();
    }
    program.rows().forEach(row -> first.add(row.index()));
  }

  /** A clash by less than anybody measures, such as of tie-ins that were rounded. */
  Optional<NoTargetException> clash() {
    return clash;
  }

  private Found foundIn(TargetProgram program, double[] values) {
    List<TargetRow> deciding = new ArrayList<>();
    List<TargetRow> touching = new ArrayList<>();
    for (int slope : List.of(TargetFrame.ACROSS, TargetFrame.UP)) {
      TargetRow level = frame.level(slope);
      if (Math.abs(level.slack(values)) < TIGHT) {
        deciding.add(level);
      }
    }
    for (TargetRow row : program.rows()) {
      boolean isOfAReading = row.kind() != TargetRow.Kind.RISE && row.kind() != TargetRow.Kind.FALL;
      if (isOfAReading && program.isHeld(row)) {
        deciding.add(row);
      } else if (isOfAReading && row.slack(values) < TIGHT) {
        touching.add(row);
      }
    }
    return new Found(program.rows(), deciding, touching);
  }
}
