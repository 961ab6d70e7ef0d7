package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Choice;
import sheathwright.figure.Reading;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Solution;
import sheathwright.figure.Source;
import sheathwright.figure.YesNo;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.life.DeckBoards;
import sheathwright.job.life.MarkFields;
import sheathwright.job.table.Row;
import sheathwright.job.triage.MarkDecision;
import sheathwright.job.triage.MarkTriage;
import sheathwright.job.triage.ToldMark;
import sheathwright.job.triage.Wanted;
import sheathwright.sheathing.patch.Mark;
import sheathwright.sheathing.place.Place;
import sheathwright.sheathing.place.PlaceKey;
import sheathwright.sheathing.place.PlaceMap;

/** What was found on a job's deck, and what is decided about each mark before anything is cut. */
final class DeckMarks {

  private static final Source UNDER = Source.derived("by the places on the map");
  private static final String TAKEN_BACK = "taken back";

  private final Job job;
  private final Map<String, PlaceMap> maps = new LinkedHashMap<>();
  private final Lifting lifting;
  private final Map<Row, Mark> marks = new IdentityHashMap<>();
  private final Map<Row, MarkDecision> decisions = new IdentityHashMap<>();

  /**
   * What was told of one plane.
   *
   * @param map of its old sheets
   * @param marks each line of the table as it lies there
   */
  record OnPlane(PlaceMap map, Map<Row, Mark> marks) {}

  /** The marks of a job, plane by plane. */
  DeckMarks(Job job, Wanted wanted, List<OnPlane> planes, Lifting lifting) {
    this.job = job;
    this.lifting = lifting;
    Map<Row, OnPlane> told = new IdentityHashMap<>();
    for (OnPlane plane : planes) {
      maps.put(plane.map().plane().name(), plane.map());
      plane.marks().keySet().forEach(row -> told.put(row, plane));
    }
    List<Row> rows = job.marks().stream().filter(told::containsKey).toList();
    if (!rows.isEmpty()) {
      decide(rows, told, new MarkTriage(job.rules(), wanted));
    }
  }

  private void decide(List<Row> rows, Map<Row, OnPlane> told, MarkTriage triage) {
    Under under = new Under(rows, told);
    List<ToldMark> all =
        rows.stream().map(row -> told(row, told.get(row).marks().get(row), under)).toList();
    List<MarkDecision> decided = triage.decisions(all);
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      decisions.put(row, decided.get(i));
      isDoneToBoards(row, told.get(row).map(), decided.get(i));
      Mark mark = told.get(row).marks().get(row);
      marks.put(row, mark.decided(unlessTakenBack(row, decided.get(i).action())));
    }
  }

  /** What is done to sheets alone is not done to boards, whatever the rules say of a finding. */
  private static void isDoneToBoards(Row row, PlaceMap map, MarkDecision decision) {
    if (map.board().isEmpty()) {
      return;
    }
    String finding = row.of(PlaceFields.FINDING).plain();
    DeckBoards.refused(map.plane().name(), decision.action().value())
        .map(why -> "%s is given, and by the rules %s; say which in action".formatted(finding, why))
        .ifPresent(
            why -> {
              throw new RefusedException(why, List.of(row.of(PlaceFields.FINDING)));
            });
  }

  private static Choice<String> unlessTakenBack(Row row, Choice<String> action) {
    return row.has(MarkFields.VOID)
        ? Choice.choose(row.of(MarkFields.VOID).is(YesNo.YES), Choice.literal(TAKEN_BACK), action)
            .as("done_unless_taken_back")
        : action;
  }

  private static ToldMark told(Row row, Mark mark, Under under) {
    return new ToldMark(
        mark.key(),
        row,
        mark.found(),
        Optional.of(mark.width()).filter(any -> !mark.isWhole()),
        Optional.of(mark.height()).filter(any -> !mark.isWhole()),
        under.stops(row),
        under.buildUps(row));
  }

  /** The mark of a line, decided. */
  Mark mark(Row row) {
    return marks.get(row);
  }

  /** What is decided about the mark of a line. */
  MarkDecision decision(Row row) {
    return decisions.get(row);
  }

  /** What was solved for it: what is decided about each mark. */
  List<Solution> solutions() {
    List<Solution> solutions = new ArrayList<>();
    decisions.values().stream()
        .findFirst()
        .flatMap(decision -> Solution.behind(decision.action()))
        .ifPresent(solutions::add);
    return solutions;
  }

  /** What lies under each mark: framing that a report stops, and rafters that are built up. */
  private final class Under {

    private final Map<Row, Choice<YesNo>> stops = new IdentityHashMap<>();
    private final Map<Row, Choice<YesNo>> buildUps = new IdentityHashMap<>();

    Under(List<Row> rows, Map<Row, OnPlane> told) {
      List<Row> reports =
          job.reports().stream().filter(report -> report.has(FramingFields.UNDER)).toList();
      if (reports.isEmpty() && lifting.isEmpty()) {
        return;
      }
      Reading reading = new Reading();
      List<String> stopped = new ArrayList<>();
      for (int i = 0; i < reports.size(); i++) {
        stopped.addAll(stoppedBy(reading, "report " + (i + 1), reports.get(i)));
      }
      List<String> raised = new ArrayList<>();
      for (PlaceMap map : maps.values()) {
        lifting
            .places(reading, map.plane().name())
            .forEach(place -> raised.add(place.key().toString()));
      }
      Map<Row, List<String>> lieIn = new LinkedHashMap<>();
      for (Row row : rows) {
        OnPlane on = told.get(row);
        lieIn.put(
            row,
            on.marks().get(row).places(reading, on.map()).stream()
                .map(Place::key)
                .map(PlaceKey::toString)
                .toList());
      }
      Solution solution = reading.solution("framing_under_marks");
      lieIn.forEach(
          (row, keys) -> {
            stops.put(row, word(solution, keys.stream().anyMatch(stopped::contains)));
            buildUps.put(row, word(solution, keys.stream().anyMatch(raised::contains)));
          });
    }

    /** The places that a report stops; one that is on no map is refused. */
    private List<String> stoppedBy(Reading reading, String label, Row report) {
      Choice<String> under = report.of(FramingFields.UNDER);
      boolean isStopped =
          reading.word(label + ", what was seen", report.of(FramingFields.SEEN))
              != StopFinding.NOTHING;
      List<String> keys =
          Arrays.stream(reading.word(label + ", places", under).split(","))
              .map(String::strip)
              .toList();
      for (String key : keys) {
        PlaceMap map =
            PlaceKey.read(key)
                .map(read -> maps.get(read.plane()))
                .orElseThrow(
                    () ->
                        new RefusedException(
                            "sheet is \"%s\"; it must be plane, course from the eave and place from the left, such as %s; the planes are %s"
                                .formatted(
                                    key,
                                    maps.keySet().iterator().next() + "-1-1",
                                    maps.keySet().stream().collect(joining(", "))),
                            List.of(under)));
        if (!map.has(key)) {
          map.place(reading, label, under);
        }
      }
      return isStopped ? keys : List.of();
    }

    private static Choice<YesNo> word(Solution solution, boolean holds) {
      Choice<String> found = solution.word("", holds ? "yes" : "no", UNDER);
      return Choice.choose(found.is("yes"), YesNo.YES, YesNo.NO);
    }

    Choice<YesNo> stops(Row row) {
      return stops.getOrDefault(row, Choice.literal(YesNo.NO));
    }

    Choice<YesNo> buildUps(Row row) {
      return buildUps.getOrDefault(row, Choice.literal(YesNo.NO));
    }
  }
}
