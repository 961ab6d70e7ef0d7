package sheathwright.workbook.page;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Leveling;
import sheathwright.job.StickCuts;
import sheathwright.job.Survey;
import sheathwright.job.SurveyedPlane;
import sheathwright.leveling.string.FlatnessFinding;
import sheathwright.leveling.string.FlatnessSurvey;
import sheathwright.workbook.book.Book;
import sheathwright.workbook.book.Listing;
import sheathwright.workbook.book.Look.Part;
import sheathwright.workbook.book.Tab;
import sheathwright.workbook.draw.LevelMap;
import sheathwright.workbook.draw.SagChart;

/**
 * Tabs of a job whose rafters were read at several stations: the readings, what is done to each
 * rafter, and the working of that.
 */
final class SurveyPages {

  private static final List<String> FLATNESS =
      List.of("Straightedge", "Deviation, in", "Allowed, in", "Ratio", "OK", "Where");
  private static final int PLACE = 5;
  private static final int UP = 1;
  private static final int BEFORE = 2;
  private static final int AFTER = 3;
  private static final int WORKING_COLUMNS = 36;
  private static final int NARROW = 9;

  private final Book book;
  private final Estimate estimate;
  private final Survey survey;
  private final Tab strings;
  private final Tab rafters;
  private final Map<SurveyedPlane, Listing> stations = new HashMap<>();

  private SurveyPages(Book book, Estimate estimate, Survey survey, String subtitle) {
    this.book = book;
    this.estimate = estimate;
    this.survey = survey;
    strings =
        Sections.titled(
            book.tab("String lines", 9, 9, 9, 9, 8, 8, 9, 10, 10, 8, 9, 9, 9, 9, 8, 8), subtitle);
    rafters =
        Sections.titled(
            book.tab("Straight rafters", 34, 11, 12, 12, 11, 11, 12, 10, 11, 12), subtitle);
  }

  /** Writes the tabs, if the job was surveyed. */
  static void write(Book book, Estimate estimate, String subtitle) {
    estimate
        .rafterLeveling()
        .flatMap(Leveling::survey)
        .ifPresent(survey -> new SurveyPages(book, estimate, survey, subtitle).write());
  }

  /** Writes the working of the rafters on a tab of its own, if the job was surveyed. */
  static void working(Book book, Estimate estimate, String subtitle) {
    estimate
        .rafterLeveling()
        .flatMap(Leveling::survey)
        .ifPresent(survey -> working(book, survey, subtitle));
  }

  private static void working(Book book, Survey survey, String subtitle) {
    int[] widths = new int[WORKING_COLUMNS];
    java.util.Arrays.fill(widths, NARROW);
    Tab working = Sections.titled(book.tab("Rafter working", widths), subtitle).keptBack();
    for (SurveyedPlane plane : survey.planes()) {
      working.heading("Plane " + plane.name());
      working.list(plane.plan().roll());
    }
  }

  private void write() {
    for (SurveyedPlane plane : survey.planes()) {
      String name = "Plane " + plane.name();
      strings.listUnder(
          name + ", below the string",
          "Below the string, " + plane.name(),
          plane.readings().roll());
      strings.entry("Recheck", plane.readings().suspectCount(), "none is dropped");
      stations.put(
          plane,
          strings.listUnder(
              name + ", above the string before and after",
              "Above the string, " + plane.name(),
              plane.stations()));
      strings.listUnder(
          name + ", how far the rafters sag", "Sags, " + plane.name(), plane.sags().roll());
      strings.entry("Worst rafter", plane.sags().rafter(), "");
      strings.entry("Its span over its sag", plane.sags().worst().spanOverSag(), "");
      strings.entry("Allowed", plane.sags().worst().limit(), "by the fraction");
      strings.entry("Ratio", plane.sags().worst().sag().ratio(), "1 at most; appearance only");
    }
    strings.note(
        "A reading is doubted where it departs from the straight line through its neighbors by more than is usual round it. It stays in; read it again.");
    rafters.heading("Before you start");
    rafters.linkedVerdict("The rafters", estimate.framing().decision());
    for (SurveyedPlane plane : survey.planes()) {
      plane(plane);
    }
    survey
        .cutting()
        .filter(sticks -> book.audience().maySee(sticks.cost()))
        .ifPresent(this::cutting);
    Sections.cautions(rafters);
  }

  private void plane(SurveyedPlane plane) {
    String name = "Plane " + plane.name();
    rafters.heading(name + ", who decides");
    rafters.verdict("Who decides", plane.plan().decision());
    rafters.listUnder(
        name + ", what is done to each rafter", "Each rafter, " + plane.name(), plane.work());
    rafters.entry("Build-up in all", plane.target().total(), "over every station");
    rafters.entry("Greatest", plane.target().largest(), "");
    rafters.entry("Sisters", plane.plan().totals().sisters(), "");
    rafters.entry("Strips", plane.plan().totals().shims(), "");
    rafters.entry(
        "Rafters planed down",
        plane.plan().totals().planed(),
        "not in the price; a planed rafter is weaker: screen it at the depth that is left");
    rafters.entry(
        "Smallest lap of a sister on its rafter", plane.plan().totals().smallestLap(), "");
    rafters.heading(name + ", what a straightedge shows on the old wood");
    flatness(plane.flatness());
    rafters.heading(name + ", what it will show when this is done");
    flatness(plane.finished());
    profile(plane);
    LevelMap.draw(
        rafters, name + ", build-up in inches", plane.name(), plane.straightened().buildUps());
    list(
        name + ", the crew's marks: old top below the sister's top",
        "Marks, " + plane.name(),
        plane.plan().marksRoll());
    list(name + ", strips", "Strips, " + plane.name(), plane.plan().stripsRoll());
    list(
        name + ", how thick the strips are",
        "Thickness, " + plane.name(),
        plane.plan().thicknessesRoll());
  }

  private void list(String heading, String tab, Roll roll) {
    if (!roll.rows().isEmpty()) {
      rafters.listUnder(heading, tab, roll);
    }
  }

  private void flatness(FlatnessSurvey survey) {
    int head = rafters.line();
    for (int column = 0; column < FLATNESS.size(); column++) {
      boolean isNumber = column > 0 && column < PLACE - 1;
      rafters.text(
          head, column, FLATNESS.get(column), isNumber ? Part.COLUMN_HEAD_RIGHT : Part.COLUMN_HEAD);
    }
    for (FlatnessFinding finding : survey.findings()) {
      int line = rafters.line();
      rafters.text(line, 0, finding.check().what(), Part.LABEL);
      rafters.step(line, 1, finding.deviation(), Part.RESULT);
      rafters.step(line, 2, finding.check().capacity(), Part.RESULT);
      rafters.value(line, 3, finding.check().ratio(), Part.RESULT);
      rafters.step(
          line,
          PLACE - 1,
          finding.check().ok().as(finding.check().ratio().name() + "_ok"),
          Part.RESULT);
      rafters.step(line, PLACE, finding.place(), Part.RESULT);
      rafters.across(line, PLACE, rafters.columns() - 1);
    }
  }

  /** The rafter that needs the most, drawn from the stations' own cells. */
  private void profile(SurveyedPlane plane) {
    List<Traced> names = plane.stations().cellsOf("rafter");
    String worst = plane.straightened().worst().rafter();
    int first = 0;
    while (!names.get(first).plain().equals(worst)) {
      first++;
    }
    int last = first;
    while (last + 1 < names.size() && names.get(last + 1).plain().equals(worst)) {
      last++;
    }
    if (last > first) {
      SagChart.draw(
          book,
          rafters,
          "Rafter " + worst + ", before and after",
          "station, in up the slope",
          new SagChart.Part(plane.name(), stations.get(plane), first, last, UP, BEFORE, AFTER));
    }
  }

  private void cutting(StickCuts cutting) {
    rafters.listUnder("The sisters, stick by stick", "Sticks", cutting.roll());
    rafters.note("Graded sticks, cut to length and never ripped; 1/8 in for each saw cut.");
  }
}
