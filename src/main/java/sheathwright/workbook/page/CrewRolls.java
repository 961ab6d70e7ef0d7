package sheathwright.workbook.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Reading;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Leveling;
import sheathwright.leveling.plan.LevelPlan;
import sheathwright.leveling.plan.PlannedRafter;
import sheathwright.leveling.plan.ShimStrip;
import sheathwright.leveling.plan.SisterMark;
import sheathwright.leveling.plan.Sisters;
import sheathwright.sheathing.patch.PatchPlan;

/**
 * What a crew cuts and marks on one plane, as lists. Each length stands as feet and as the inches
 * beyond them, to the nearest sixteenth.
 */
final class CrewRolls {

  private static final Figure<Length> SIXTEENTH =
      Figure.constant("sixteenth_in", 0.0625, Units.INCH, Source.COMMON_PRACTICE);
  private static final Figure<Length> FOOT = Figure.of(12, Units.INCH);
  private static final Figure<Length> ONE_FOOT = Figure.of(1, Units.FOOT);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Pieces> NONE = Figure.of(0, Units.PIECE);
  private static final Choice<String> BEYOND = Choice.literal("");

  private CrewRolls() {}

  /** To the nearest sixteenth of an inch. */
  private static Figure<Length> marked(Figure<Length> length) {
    return length
        .in(Units.INCH)
        .dividedBy(SIXTEENTH)
        .in(Units.RATIO)
        .rounded()
        .times(SIXTEENTH)
        .in(Units.INCH);
  }

  private static Figure<Ratio> feet(Figure<Length> length) {
    return marked(length).dividedBy(FOOT).in(Units.RATIO).roundedDown();
  }

  private static Figure<Length> inches(Figure<Length> length) {
    return marked(length).minus(feet(length).times(FOOT).in(Units.INCH));
  }

  /** Two columns of a length. */
  private static <T> List<Roll.Column<T>> length(String name, Function<T, Figure<Length>> of) {
    return List.of(
        Roll.column(name + "_feet", each -> feet(of.apply(each))),
        Roll.column(name + "_inches", each -> inches(of.apply(each))));
  }

  private static String name(String what, String plane) {
    return what + "_of_" + plane.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  @SuppressWarnings("unchecked") // these columns of the plan are lengths
  private static Figure<Length> cell(Roll roll, List<Traced> row, String column) {
    return (Figure<Length>) row.get(roll.columns().indexOf(column));
  }

  /** The patches of a plane: where each lies and how large it is. */
  static Roll patches(String plane, PatchPlan plan) {
    Roll work = plan.work();
    List<Roll.Column<List<Traced>>> columns = new ArrayList<>();
    columns.add(Roll.column("patch", row -> row.get(0)));
    for (String column : List.of("along", "up", "width", "height")) {
      columns.addAll(length(column, row -> cell(work, row, column + "_in")));
    }
    columns.add(Roll.column("marks", row -> row.get(1)));
    return Roll.of(name("crew_patches", plane), "the patches", work.rows(), columns);
  }

  /** The pieces of the patches, each with the sheet that it is cut from. */
  static Roll pieces(String plane, PatchPlan plan) {
    Roll cutting = plan.cutting();
    List<Roll.Column<List<Traced>>> columns = new ArrayList<>();
    columns.add(Roll.column("piece", row -> row.get(0)));
    for (String column : List.of("cut_width", "cut_height")) {
      columns.addAll(length(column, row -> cell(cutting, row, column + "_in")));
    }
    columns.add(Roll.column("sheet", row -> row.get(1)));
    return Roll.of(name("crew_pieces", plane), "the pieces of patches", cutting.rows(), columns);
  }

  /** A sister with its marks, from its lower end up. */
  private record Marked(
      Choice<?> rafter,
      Choice<?> action,
      Figure<Length> from,
      Figure<Length> length,
      List<Figure<Length>> marks) {

    Traced at(int foot) {
      return foot < marks.size() - 1 ? marks.get(foot) : BEYOND;
    }

    Figure<Length> end() {
      return marks.get(marks.size() - 1);
    }
  }

  private static Roll marks(String plane, List<Marked> all) {
    List<Roll.Column<Marked>> columns = new ArrayList<>();
    columns.add(Roll.column("rafter", Marked::rafter));
    columns.add(Roll.column("action", Marked::action));
    columns.addAll(length("from", Marked::from));
    columns.addAll(length("length", Marked::length));
    int most = all.stream().mapToInt(each -> each.marks().size() - 1).max().orElse(0);
    for (int i = 0; i < most; i++) {
      int foot = i;
      columns.add(Roll.column("at_" + foot, each -> each.at(foot)));
    }
    columns.add(Roll.column("at_end", Marked::end));
    return Roll.of(name("crew_marks", plane), "the marks on the sisters", all, columns);
  }

  /** The marks of a plane whose rafters were read at several stations. */
  static Roll marks(String plane, LevelPlan plan) {
    Map<String, List<SisterMark>> byRafter = new LinkedHashMap<>();
    plan.marks()
        .forEach(
            mark -> byRafter.computeIfAbsent(mark.rafter(), name -> new ArrayList<>()).add(mark));
    List<Marked> all = new ArrayList<>();
    for (PlannedRafter rafter : plan.rafters()) {
      List<SisterMark> marks = byRafter.getOrDefault(rafter.rafter(), List.of());
      if (!marks.isEmpty()) {
        all.add(
            new Marked(
                Choice.literal(rafter.rafter()),
                rafter.action(),
                marks.get(0).up(),
                rafter.sister().length(),
                marks.stream().map(SisterMark::marked).toList()));
      }
    }
    return marks(plane, all);
  }

  /** How many marks a sister has but for that at its end, one at each foot. */
  static int feet(Reading reading, Leveling.AtMiddle middle) {
    Figure<Ratio> marks =
        middle
            .stock()
            .length()
            .dividedBy(ONE_FOOT)
            .in(Units.RATIO)
            .roundedUp()
            .as("marks_before_the_end", Units.RATIO);
    return (int) reading.number("a sister's marks, one at each foot", marks, Units.RATIO);
  }

  /**
   * The marks of a plane whose rafters were read at mid-length: on a parabola through that.
   *
   * @param feet marks of a sister, one at each foot, but for that at its end
   */
  static Roll marks(String plane, Leveling.AtMiddle middle, int feet) {
    Roll readings = middle.readings();
    List<Marked> all = new ArrayList<>();
    Figure<Length> length = middle.stock().length();
    Figure<Length> from =
        middle.span().minus(length).dividedBy(TWO).as("sister_from_ft", Units.FOOT);
    for (List<Traced> row : readings.rows()) {
      if (row.get(0).plain().equals(plane)) {
        List<Figure<Length>> marks = new ArrayList<>();
        for (int foot = 0; foot < feet; foot++) {
          marks.add(mark(middle, row, from.plus(Figure.of(foot, Units.FOOT))));
        }
        marks.add(mark(middle, row, from.plus(length)));
        all.add(new Marked((Choice<?>) row.get(1), action(readings, row), from, length, marks));
      }
    }
    return marks(plane, all);
  }

  private static Choice<String> action(Roll readings, List<Traced> row) {
    Choice<String> otherwise =
        Choice.choose(
                pieces(readings, row, "shim").isMoreThan(NONE),
                Choice.literal("shim"),
                Choice.literal("leave"))
            .as("rafter_unless_sistered");
    return Choice.choose(
        pieces(readings, row, "sister").isMoreThan(NONE), Choice.literal("sister"), otherwise);
  }

  @SuppressWarnings("unchecked") // these columns of the readings count rafters
  private static Figure<Pieces> pieces(Roll readings, List<Traced> row, String column) {
    return (Figure<Pieces>) row.get(readings.columns().indexOf(column));
  }

  private static Figure<Length> mark(
      Leveling.AtMiddle middle, List<Traced> row, Figure<Length> along) {
    Figure<Length> sag = cell(middle.readings(), row, "drop_in");
    return marked(Sisters.belowTheString(sag, middle.span(), along));
  }

  /** The strips of a plane: where each lies, how long it is, how thick at its thickest. */
  static Roll strips(String plane, List<ShimStrip> strips) {
    List<Roll.Column<ShimStrip>> columns = new ArrayList<>();
    columns.add(Roll.column("rafter", strip -> Choice.literal(strip.rafter())));
    columns.addAll(length("from", ShimStrip::from));
    columns.addAll(length("to", ShimStrip::to));
    columns.addAll(length("length", ShimStrip::length));
    columns.add(Roll.column("thickest", ShimStrip::thickest));
    columns.add(Roll.column("nail", ShimStrip::nail));
    return Roll.of(name("crew_strips", plane), "the strips", strips, columns);
  }

  /** How thick the strips of a plane are, place by place. */
  static Roll thicknesses(String plane, List<ShimStrip> strips) {
    List<Roll.Column<ShimStrip.Station>> columns = new ArrayList<>();
    columns.add(Roll.column("rafter", station -> Choice.literal(station.rafter())));
    columns.addAll(length("up", ShimStrip.Station::up));
    columns.add(Roll.column("thick", ShimStrip.Station::thickness));
    return Roll.of(
        name("crew_thicknesses", plane),
        "how thick the strips are",
        strips.stream().flatMap(strip -> strip.stations().stream()).toList(),
        columns);
  }
}
