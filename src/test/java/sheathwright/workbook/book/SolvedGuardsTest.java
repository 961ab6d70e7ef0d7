package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.leveling.string.FlatnessLimit;
import sheathwright.leveling.string.FlatnessSurvey;
import sheathwright.leveling.string.LevelRafter;
import sheathwright.leveling.string.RafterProfile;
import sheathwright.leveling.string.RafterStation;
import sheathwright.leveling.string.SagSurvey;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;
import sheathwright.leveling.target.TargetObjective;
import sheathwright.leveling.target.TargetPoint;
import sheathwright.leveling.target.Targets;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.LayoutRules;
import sheathwright.sheathing.patch.Finding;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.patch.PatchRules;
import sheathwright.sheathing.place.MeasuredJoint;
import sheathwright.sheathing.place.OldJoints;
import sheathwright.sheathing.place.PlaceMap;
import sheathwright.workbook.page.SessionBook;

/** Each thing that is solved, with each of its inputs changed in a workbook: its guard says so. */
class SolvedGuardsTest {

  /** The inputs of one solution, by name. */
  private static final class Given {

    private final Map<String, Traced> inputs = new LinkedHashMap<>();

    Figure<Length> in(String name, double inches) {
      Figure<Length> input =
          Figure.input(name + "_in", inches, Units.INCH, Limits.NONE, Source.GIVEN);
      inputs.put(name, input);
      return input;
    }

    Figure<Ratio> number(String name, double number) {
      Figure<Ratio> input = Figure.input(name, number, Units.RATIO, Limits.NONE, Source.GIVEN);
      inputs.put(name, input);
      return input;
    }

    <E> Choice<E> word(String name, E word) {
      Choice<E> input = Choice.input(name, word, Source.GIVEN);
      inputs.put(name, input);
      return input;
    }
  }

  private static Plane plane(Given given) {
    return Plane.rectangle("south", given.in("eave", 240), given.in("slope", 100))
        .without(
            given.in("along", 100), given.in("up", 30), given.in("wide", 20), given.in("high", 10));
  }

  private static Supports supports(Given given) {
    return Supports.every(given.in("spacing", 24), given.in("first", 0));
  }

  private static LayoutRules rules(Given given) {
    return LayoutRules.USUAL
        .origin(given.in("origin", 0))
        .stagger(given.in("stagger", 48))
        .gap(given.in("gap", 0.125))
        .sheetLength(given.in("sheet", 95.875))
        .supportWidth(given.in("support", 1.5))
        .minBearing(given.in("bearing", 0.5));
  }

  private static PlaceMap places(Given given) {
    return Layouts.places(
        plane(given),
        OldJoints.ASSUMED
            .first(given.in("old_first", 96))
            .stagger(given.in("old_stagger", 48))
            .firstCourse(given.in("old_course", 48))
            .measured(
                List.of(
                    new MeasuredJoint(
                        given.number("old_joint_course", 1), given.in("old_joint", 100)))));
  }

  private static Traced map(Given given) {
    return places(given).units().halves();
  }

  private static Traced patches(Given given) {
    Mark mark =
        Mark.of(
            "M1",
            given.word("finding", Finding.ROT),
            given.in("mark_along", 30),
            given.in("mark_up", 20),
            given.in("mark_wide", 12),
            given.in("mark_high", 10));
    PatchRules rules =
        PatchRules.USUAL.beyondMark(given.in("beyond", 3)).minLength(given.in("least", 48));
    PlaceMap map = places(given);
    Mark named =
        Mark.of(
            "M2", given.word("other_finding", Finding.SOFT), map, given.word("sheet", "south-2-2"));
    return Layouts.patches(map, supports(given), rules(given), rules, List.of(mark, named))
        .sheets();
  }

  private static List<StringReading> readings(Given given) {
    List<StringReading> readings = new ArrayList<>();
    for (int rafter = 1; rafter <= 3; rafter++) {
      Figure<Length> center = given.in("center_" + rafter, 24 * rafter);
      for (int station = 1; station <= 3; station++) {
        String place = rafter + "_" + station;
        readings.add(
            StringReading.ofDrop(
                "R" + rafter,
                center,
                given.in("up_" + place, 40 * station),
                given.in("drop_" + place, 0.25 * station)));
      }
    }
    return readings;
  }

  private static List<RafterProfile> profiles(Given given) {
    List<RafterProfile> profiles = new ArrayList<>();
    for (int rafter = 1; rafter <= 2; rafter++) {
      List<RafterStation> stations = new ArrayList<>();
      for (int station = 1; station <= 3; station++) {
        String place = rafter + "_" + station;
        stations.add(
            new RafterStation(
                given.in("up_" + place, 40 * station), given.in("drop_" + place, 0.2 * station)));
      }
      profiles.add(
          new RafterProfile("R" + rafter, given.in("center_" + rafter, 24 * rafter), stations));
    }
    return profiles;
  }

  private static Traced sags(Given given) {
    List<LevelRafter> rafters =
        profiles(given).stream()
            .map(
                each ->
                    new LevelRafter(
                        each,
                        given.in("lower_" + each.rafter(), 20),
                        given.in("upper_" + each.rafter(), 140)))
            .toList();
    return SagSurvey.of("A", rafters, Figure.of(240, Units.RATIO)).rafter();
  }

  private static Traced target(Given given) {
    List<TargetPoint> points = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      points.add(
          TargetPoint.of(
                  "point " + i,
                  given.in("x_" + i, 24 * i),
                  given.in("y_" + i, 10 * i * i),
                  given.in("z_" + i, -0.1 * i))
              .within(given.in("least_" + i, 0), given.in("most_" + i, 5)));
    }
    return Targets.plane(
            "a",
            points,
            given.word("objective", TargetObjective.TOTAL),
            Optional.of(given.in("cap", 4)))
        .total();
  }

  static Stream<Arguments> solved() {
    Map<String, Function<Given, Traced>> users = new LinkedHashMap<>();
    users.put(
        "layout", given -> Layouts.layout(plane(given), supports(given), rules(given)).sheets());
    users.put("map", SolvedGuardsTest::map);
    users.put("patches", SolvedGuardsTest::patches);
    users.put(
        "outline",
        given -> Plane.outline("porch", given.word("corners", "0 0, 10 0, 10 6, 0 8")).area());
    users.put(
        "neighbors",
        given ->
            StringReadings.of("A", readings(given), SuspicionRules.usual())
                .readings()
                .get(0)
                .expected());
    users.put(
        "flatness",
        given ->
            FlatnessSurvey.of("A", profiles(given), FlatnessLimit.usual())
                .findings()
                .get(0)
                .deviation());
    users.put("sags", SolvedGuardsTest::sags);
    users.put("target", SolvedGuardsTest::target);
    return users.entrySet().stream().map(user -> Arguments.of(user.getKey(), user.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("solved")
  void everyInputThatIsChanged_asksToSolveAgain(String user, Function<Given, Traced> solver)
      throws Exception {
    Given given = new Given();
    Traced found = solver.apply(given);
    Solution solution = Solution.behind(found).orElseThrow();
    Map<String, Traced> variables = new LinkedHashMap<>(given.inputs);
    variables.put("found", found);
    try (XSSFWorkbook workbook = Cells.opened(SessionBook.bytes(variables))) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      Cell guard = cell(workbook, Names.legal(solution.state().name()));
      assertThat(evaluator.evaluate(guard).getStringValue()).isEqualTo("current");
      for (Map.Entry<String, Traced> input : given.inputs.entrySet()) {
        Cell cell = cell(workbook, Names.legal(input.getKey()));
        if (input.getValue() instanceof Figure<?> number) {
          cell.setCellValue(number.value() + 0.5);
        } else {
          cell.setCellValue("another");
        }
        evaluator.clearAllCachedResultValues();
        assertThat(evaluator.evaluate(guard).getStringValue())
            .as("%s when %s has changed", user, input.getKey())
            .startsWith("solve again: ");
        if (input.getValue() instanceof Figure<?> number) {
          cell.setCellValue(number.value());
        } else {
          cell.setCellValue(input.getValue().plain());
        }
      }
    }
  }

  private static Cell cell(XSSFWorkbook workbook, String name) {
    assertThat(workbook.getName(name)).as("the cell named %s", name).isNotNull();
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }
}
