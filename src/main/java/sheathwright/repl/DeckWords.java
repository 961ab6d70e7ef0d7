package sheathwright.repl;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;

/** What can be typed to lay sheets, cut patches and straighten rafters, beside the functions. */
final class DeckWords {

  /** One thing that can be typed for a task, and what comes of it. */
  record Entry(Task task, String typed, String meaning) {}

  private static final List<Entry> ENTRIES =
      List.of(
          new Entry(
              Task.NEEDS,
              "home = house(length = 50 ft, width = 32 ft, pitch = 5 in 12)",
              "a whole roof from its plan, hipped unless it is said ends = gabled"),
          new Entry(
              Task.NEEDS,
              "home.wing(back, at = 2 ft, width = 12 ft, out = 8 ft)",
              "a further wing: side, along the eave, width, out; porch takes the same"),
          new Entry(
              Task.NEEDS,
              "home.dormer(back, at = 20 ft, from = 3 ft, width = 6 ft, depth = 5 ft)",
              "a dormer: side, along the eave, from the eave, width, depth; chimney takes the same"),
          new Entry(
              Task.NEEDS, "home.planes()", "its planes; home.plane(\"front\") is one of them"),
          new Entry(
              Task.LAY,
              "layoutChoices(home, 24 in, sheet = $38/sheet, block = $4/piece)",
              "fewest sheets or fewest short pieces to block, and what that choice costs"),
          new Entry(
              Task.NEEDS,
              "Plane.rectangle(\"south\", ft(42), slopeLength(ft(15), pitch(6)))",
              "a roof plane between two rakes"),
          new Entry(
              Task.NEEDS,
              "Plane.triangle(\"east\", ft(32), ft(17))",
              "the end of a hip roof, as a plane"),
          new Entry(
              Task.NEEDS,
              "Plane.trapezoid(\"south\", ft(50), ft(17), ft(16), ft(16))",
              "a plane whose sides lean in: hips; out, below zero: valleys"),
          new Entry(
              Task.NEEDS,
              "Plane.outline(\"porch\", \"0 0, 22 0, 22 9, 14 9, 14 6, 0 6\")",
              "a plane of any outline, feet along the eave and up the slope"),
          new Entry(
              Task.NEEDS, "south.without(22 ft, 6 ft, 3 ft, 2 ft)", "a plane with an opening"),
          new Entry(Task.NEEDS, "south.measures()", "area, ridge, hips, valleys, rakes of a plane"),
          new Entry(
              Task.LAY, "Supports.every(in(16))", "regular rafters or trusses, from the left edge"),
          new Entry(
              Task.LAY,
              "Supports.at(0 in, 24-1/2 in, 47-1/4 in)",
              "rafters where they were measured"),
          new Entry(Task.LAY, "layout(south, rafters)", "sheets laid in courses, cut and counted"),
          new Entry(
              Task.LAY, "layout(home, 24 in)", "sheets on every plane of a house, offcuts shared"),
          new Entry(
              Task.LAY,
              "layout(south, rafters, usual().stagger(in(32)).origin(ft(5)))",
              "the layout by rules of your own"),
          new Entry(
              Task.LAY,
              "bestLayout(south, rafters, usual())",
              "the layout with the fewest joints off"),
          new Entry(
              Task.LAY,
              "byStripRule(south, rafters, usual())",
              "layouts with the strip at the ridge ripped, halved, made two feet"),
          new Entry(Task.CUT, "together(layout1, layout2)", "several planes, offcuts shared"),
          new Entry(
              Task.PATCH,
              "Mark.of(\"m1\", ROT, in(60), in(10), in(30), in(14))",
              "bad wood: along, up, width, height"),
          new Entry(
              Task.PATCH,
              "Mark.cell(\"m2\", SOFT, rafters, 3, 2)",
              "bad wood in one bay of one course"),
          new Entry(
              Task.PATCH,
              "patches(south, rafters, mark1, mark2)",
              "what is cut out and put in new"),
          new Entry(
              Task.PATCH,
              "patches(south, 16 in, mark(rot, along = 5 ft, up = 10 in, width = 30 in, height = 14 in))",
              "the same in one line; marks are called m1, m2"),
          new Entry(
              Task.PATCH,
              "places(south, OldJoints.ASSUMED.first(in(32)))",
              "the map of the old sheets, each place with its key"),
          new Entry(
              Task.PATCH,
              "mark(SOFT, places(south), \"south-3-5\")",
              "a whole old sheet that is bad, by its key on the map"),
          new Entry(
              Task.NAIL,
              "ZoneMap.of(south, pitch(6), GABLE, ASCE7_16, zoneWidth(ft(30), RoofHeight.mean(ft(18))))",
              "the wind zones of a plane"),
          new Entry(
              Task.SISTER,
              "string = stringReadings(\"demo-data/tallow-end/readings.csv\", \"S\")",
              "drops below a string, from a file: rafter, along_in, up_in, drop_in"),
          new Entry(
              Task.SISTER,
              "stringLines(24 in, 12-6 ft, \"0 3/8 7/8 1/2 0\", \"0 1/2 1 5/8 0\")",
              "the same, read out: spacing, length of the string, a rafter a text"),
          new Entry(
              Task.SISTER,
              "straight = straighten(string, sisters = 2x6, rafters = 2x6, used = 0.86)",
              "a straight line over each rafter: size of sisters, of rafters, part of their strength used up"),
          new Entry(
              Task.CUT,
              "repairList(straight)",
              "what the crew does and cuts: sisters, strips, marks; who decides stands first"),
          new Entry(
              Task.CUT,
              "cutSticks(23 pieces, 76-3/8 in, stick(8 ft, $6.20), stick(12 ft, $8.60))",
              "pieces of one length out of the cheapest sticks; straight rafters instead: their sisters"),
          new Entry(
              Task.PRICE,
              "estimate(\"demo-data/quince-hollow\")",
              "a job folder's price, worst case and extra sheet"),
          new Entry(
              Task.CUT,
              "deck.cutList()",
              "the cut list: which piece comes out of which sheet, each length as the saw is set"),
          new Entry(Task.SISTER, "show(straight)", "the worst rafter, and build-up over the plane"),
          new Entry(Task.LAY, "show(deck)", "a map of a layout, of patches or of wind zones"));

  private DeckWords() {}

  /** Every line that stands here as something to type. */
  static List<String> typed() {
    return ENTRIES.stream().map(Entry::typed).toList();
  }

  /** A right way to type what a line calls, if it calls any of these. */
  static Optional<String> calledIn(String source) {
    return ENTRIES.stream()
        .map(Entry::typed)
        .map(DeckWords::withoutItsName)
        .filter(call -> source.contains(call.substring(0, call.indexOf('(') + 1)))
        .findFirst();
  }

  /** What is called, where a line keeps the answer under a name. */
  private static String withoutItsName(String typed) {
    return typed.replaceFirst("^\\w+ = ", "");
  }

  /** The lines that speak of all these words. */
  static List<Entry> about(List<String> words) {
    return ENTRIES.stream()
        .filter(
            entry -> {
              String text = (entry.typed() + " " + entry.meaning()).toLowerCase(Locale.ROOT);
              return words.stream().allMatch(word -> text.contains(Nearest.singular(word)));
            })
        .toList();
  }

  /** The lines that a task takes. */
  static List<Entry> linesFor(Task task) {
    return ENTRIES.stream().filter(entry -> entry.task() == task).toList();
  }

  /** What those lines call, each once. */
  static Stream<String> callsFor(Task task) {
    return linesFor(task).stream()
        .map(entry -> withoutItsName(entry.typed()))
        .map(call -> call.substring(0, call.indexOf('(')))
        .distinct();
  }
}
