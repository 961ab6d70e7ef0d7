package sheathwright.leveling.target;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Figure;
import sheathwright.figure.Labels;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Roll;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.leveling.string.StringReading;

/**
 * By hand: one rafter whose wood lies 1 in low in its middle, and one that lies straight. The line
 * over the first touches its ends, so its middle takes 1 in.
 */
class TargetNamesTest {

  private static final Optional<Figure<Length>> NO_CAP = Optional.empty();
  private static final TargetObjective TOTAL = TargetObjective.TOTAL;

  private static TargetPoint point(String name, double x, double y, double z) {
    return TargetPoint.of(name, in(x), in(y), in(z));
  }

  private static final List<TargetPoint> POINTS =
      List.of(
          point("A", 0, 0, 0),
          point("B", 0, 60, -1),
          point("C", 0, 120, 0),
          point("D", 24, 0, -0.5),
          point("E", 24, 120, -0.5));

  private static List<String> cells(Roll roll, String column) {
    return roll.cellsOf(column).stream().map(Traced::plain).toList();
  }

  private static void assertRefused(Runnable wrong, String reason) {
    assertThatExceptionOfType(RefusedException.class)
        .isThrownBy(wrong::run)
        .withMessageContaining(reason);
  }

  @Test
  void linesOverEachRafter_takeWhatItsMiddleLacks() {
    LevelTarget lines = Targets.lines("a", POINTS, TOTAL, NO_CAP);
    assertThat(lines.buildUps().stream().map(Figure::value).toList())
        .containsExactly(0.0, 1.0, 0.0, 0.0, 0.0);
    assertThat(lines.total().value()).isEqualTo(1);
    assertThat(lines.largest().value()).isEqualTo(1);
    assertThat(lines).hasToString("total 1 in, largest 1 in, optimal");
    assertThat(lines.status().name()).isEqualTo("target_status");
    assertThat(Solution.behind(lines.total()).orElseThrow().name()).isEqualTo("target_lines_of_a");
    assertThat(lines.readings().name()).isEqualTo("target_lines_of_a_readings");
    assertThat(cells(lines.readings(), "reading")).containsExactly("A", "B", "C", "D", "E");
    assertThat(cells(lines.readings(), "x_in")).containsExactly("0", "0", "0", "24", "24");
    assertThat(cells(lines.readings(), "y_in")).containsExactly("0", "60", "120", "0", "120");
    assertThat(cells(lines.readings(), "z_in")).containsExactly("0", "-1", "0", "-0.5", "-0.5");
    assertThat(cells(lines.readings(), "build_up_in")).containsExactly("0", "1", "0", "0", "0");
  }

  /** The plane over all leans across and lies on the wood of both: B alone takes an inch. */
  @Test
  void aPlaneOverAll_liesOnTheWoodOfBothRafters() {
    LevelTarget plane = Targets.plane("a", POINTS, TOTAL, NO_CAP);
    assertThat(plane.total().value()).isCloseTo(1, within(1e-9));
    assertThat(Solution.behind(plane.total()).orElseThrow().name()).isEqualTo("target_plane_of_a");
  }

  /** Up to the string itself: what stands above it is to come down. */
  @Test
  void theString_isAskedForWhereItHangs() {
    List<TargetPoint> both = List.of(point("A", 0, 0, -0.75), point("B", 0, 60, 0.25));
    LevelTarget string = Targets.string("a", both, TOTAL, NO_CAP);
    assertThat(string.buildUps().stream().map(Figure::value).toList()).containsExactly(0.75, -0.25);
    assertThat(string.total().value()).isEqualTo(0.75);
    assertThat(string.largest().value()).isEqualTo(0.75);
    assertThat(Solution.behind(string.total()).orElseThrow().name())
        .isEqualTo("target_string_of_a");
    assertRefused(
        () -> Targets.string("a", both, TOTAL, Optional.of(in(0.5))),
        "A: the string calls for 0.75 in of build-up, outside its limits; bring the rafters");
    assertThat(Targets.string("a", both, TOTAL, Optional.of(in(0.75))).total().value())
        .isEqualTo(0.75);
    List<TargetPoint> tied = List.of(point("A", 0, 0, -0.75).tiedIn(in(1)));
    assertRefused(() -> Targets.string("a", tied, TOTAL, NO_CAP), "A: the string calls for 0.75");
    List<TargetPoint> just = List.of(point("A", 0, 0, -0.75).tiedIn(in(0.75)));
    assertThat(Targets.string("a", just, TOTAL, NO_CAP).total().value()).isEqualTo(0.75);
  }

  @Test
  void aPoint_namesWhatItIsSolvedFor() {
    TargetPoint bound = point("A", 0, 60, -1).within(in(0), in(2));
    assertThat(Labels.of(bound::plain))
        .containsExactly(
            "A, across",
            "A, up the slope",
            "A, height",
            "A, bound of build-up",
            "A, bound of build-up");
    assertRefused(
        () -> point("A", 0, 60, -1).within(in(2), in(1)).plain(Reading.aside()),
        "A: the build-up is to be from 2 to 1 in; it must begin at 0 or more");
    assertRefused(
        () -> TargetReading.of("A", Double.NaN, 0, 0), "A: its place and height must be numbers");
    assertRefused(() -> TargetReading.of("A", 0, 0, 0).within(-1, 1), "A: the build-up is to be");
  }

  @Test
  void theRules_bindAReadingToItsBounds() {
    StringReading low = StringReading.ofDrop("R1", in(0), in(60), in(1));
    TargetRules rules =
        new TargetRules(
            TargetRules.Shape.LINES, TOTAL, NO_CAP, Map.of(low, List.of(in(1), in(1.5))));
    assertThat(rules.bound(low, point("A", 0, 60, -1)).bounds()).hasSize(2);
    StringReading free = StringReading.ofDrop("R2", in(24), in(60), in(0));
    assertThat(rules.bound(free, point("B", 24, 60, 0)).bounds()).isEmpty();
    for (TargetRules.Shape shape : TargetRules.Shape.values()) {
      TargetRules each = new TargetRules(shape, TOTAL, NO_CAP, Map.of());
      String word = shape.name().toLowerCase(java.util.Locale.ROOT);
      assertThat(
              Solution.behind(each.solved("b", List.of(POINTS.get(1))).total())
                  .orElseThrow()
                  .name())
          .isEqualTo("target_" + word + "_of_b");
    }
    assertThat(LevelThresholds.usual().leave(in(0.25)).leave().value()).isEqualTo(0.25);
    assertThat(LevelThresholds.usual().shim(in(0.5)).shim().value()).isEqualTo(0.5);
    assertThat(LevelThresholds.usual().shim().value()).isEqualTo(0.375);
  }

  /** By hand: a line through 0 in at both ends lies 1 in above the middle, which allows 1/4. */
  @Test
  void whatClashes_isNamedWithItsPlacesInTheWholeList() {
    List<TargetReading> readings =
        List.of(
            TargetReading.of("Z", 24, 0, 0),
            TargetReading.of("A", 0, 0, 0),
            TargetReading.of("B", 0, 60, -1).within(0, 0.25),
            TargetReading.of("C", 0, 120, 0));
    assertThatExceptionOfType(NoTargetException.class)
        .isThrownBy(() -> TargetLines.over(readings, TOTAL, TargetReading.UNLIMITED))
        .withMessage(
            "nothing straight fits: each of these limits but the wood would have to give 0.75 in:"
                + " A, wood at 0 in; B, most build-up 0.25 in; C, wood at 0 in")
        .satisfies(none -> assertThat(none.lacking()).isEqualTo(0.75))
        .satisfies(
            none ->
                assertThat(none.clashes())
                    .extracting(NoTargetException.Clash::reading)
                    .containsExactly(1, 2, 3));
    List<TargetReading> capped =
        List.of(
            TargetReading.of("A", 0, 0, 0),
            TargetReading.of("B", 0, 60, -1),
            TargetReading.of("C", 0, 120, 0));
    assertThatExceptionOfType(NoTargetException.class)
        .isThrownBy(() -> TargetLines.over(capped, TOTAL, 0.5))
        .withMessageContaining("B, cap 0.5 in");
    TargetLines lines = TargetLines.over(capped, TOTAL, TargetReading.UNLIMITED);
    assertThat(lines.lines()).hasSize(1);
    assertThat(lines.lines().get(0).at(60)).isCloseTo(0, within(1e-9));
    assertThat(new TargetLines.Line(0, 1, 0.5, List.of()).at(4)).isEqualTo(3);
  }
}
