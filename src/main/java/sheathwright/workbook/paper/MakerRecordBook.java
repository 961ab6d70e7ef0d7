package sheathwright.workbook.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.fastening.uplift.MakerRequirement.Met;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.Leveling;
import sheathwright.job.Survey;
import sheathwright.job.SurveyedPlane;
import sheathwright.job.WhenDone;
import sheathwright.job.life.View;
import sheathwright.job.site.Covering;
import sheathwright.job.site.RoofArea;
import sheathwright.job.table.Field;
import sheathwright.job.table.Moment;
import sheathwright.job.table.Row;
import sheathwright.job.triage.PullFields;
import sheathwright.workbook.book.Letter;
import sheathwright.workbook.told.Photos;
import sheathwright.workbook.told.Sheaf;

/**
 * What the covering's maker asks of a deck and what is there, how close its clips stand where the
 * wind pulls, what screws held, how flat the deck lay before and lies after. No prices.
 */
public final class MakerRecordBook {

  private static final int[] WIDTHS = {34, 14, 14, 14, 44};

  private final Estimate estimate;
  private final Photos photos;
  private final Paper paper;

  private MakerRecordBook(Estimate estimate, Photos photos) {
    this.estimate = estimate;
    this.photos = photos;
    paper = new Paper(estimate, "For the covering's maker, without prices");
  }

  /**
   * Whether there is anything to tell a maker: he asked for something, his clips are known, or
   * screws were pulled for him.
   */
  public static boolean isAsked(Estimate estimate) {
    return estimate.maker().isPresent()
        || estimate.site().covering().isKnown()
        || !estimate.job().lines(JobTable.PULL_TESTS).isEmpty();
  }

  /** The record of a job as it stands. */
  public static MakerRecordBook of(Estimate estimate, Photos photos) {
    return new MakerRecordBook(estimate, photos);
  }

  /**
   * The bytes of an .xlsx file.
   *
   * @throws sheathwright.job.table.ProblemsException if a cell of it would hold no value
   */
  public byte[] bytes() {
    return paper.bytes(this::pages);
  }

  private void pages() {
    Job job = estimate.job();
    Sheaf sheaf = paper.sheaf("Maker's record", WIDTHS);
    sheaf.tab().heading("The house");
    Paper.fact(sheaf.tab(), JobFields.SITE.label(), job.fact(JobFields.SITE).value());
    Paper.fact(sheaf.tab(), JobFields.JOB_NAME.label(), job.fact(JobFields.JOB_NAME).value());
    Paper.fact(sheaf.tab(), JobFields.PREPARED_BY.label(), job.fact(JobFields.PREPARED_BY).value());
    estimate.maker().ifPresent(asked -> asked(sheaf, asked));
    answers(sheaf);
    if (estimate.site().covering().isKnown()) {
      clips(sheaf, estimate.site().covering());
    }
    PulledScrews.on(sheaf, estimate);
    estimate.rafterLeveling().ifPresent(leveling -> flatness(sheaf, leveling));
    sheaf.keep(80);
    sheaf.tab().skip(1);
    Letter.on(sheaf.tab()).signature("Contractor, date");
    Letter.on(sheaf.tab()).signature("For the maker, date");
    new DeckPictures(paper, estimate, photos)
        .photographs(
            List.of(), photos.there().stream().filter(each -> each.view() == View.STAMP).toList());
  }

  private static void asked(Sheaf sheaf, Roll maker) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < maker.rows().size(); i++) {
      String met = maker.cellsOf("met").get(i).plain();
      rows.add(
          List.of(
              maker.cellsOf("requirement").get(i).plain(),
              maker.cellsOf("sense").get(i).plain().replace('-', ' ')
                  + " "
                  + Spoken.of(maker.cellsOf("required").get(i)),
              isShown(met) ? Spoken.of(maker.cellsOf("found").get(i)) : "",
              isShown(met) ? met.equals(Met.YES.word()) ? "met" : "NOT met" : "not shown yet",
              maker.cellsOf("evidence").get(i).plain()));
    }
    Paper.table(
        sheaf,
        "maker",
        "What is asked of the deck, and what is there",
        List.of("Asked", "Required", "Found", "Met", "Evidence"),
        rows);
  }

  private static boolean isShown(String met) {
    return !met.equals(Met.NOT_SHOWN.word());
  }

  /** Who was asked about what, when, and what came back. */
  private void answers(Sheaf sheaf) {
    List<List<String>> rows = new ArrayList<>();
    for (Row row : estimate.job().lines(JobTable.MAKER)) {
      if (PullFields.ASKED.stream().anyMatch(row::has)) {
        rows.add(
            List.of(
                said(row, PullFields.REQUIREMENT),
                said(row, PullFields.ASKED_OF),
                Moment.spoken(said(row, PullFields.ASKED_ON)),
                row.has(PullFields.ANSWERED_ON)
                    ? Moment.spoken(said(row, PullFields.ANSWERED_ON))
                    : "not answered yet",
                said(row, PullFields.DOCUMENT)));
      }
    }
    if (!rows.isEmpty()) {
      Paper.table(
          sheaf,
          "answers",
          "Who was asked, and what was answered",
          List.of("Asked about", "Of", "Asked on", "Answered on", "Document"),
          rows);
    }
  }

  private static String said(Row row, Field<Choice<String>> field) {
    return row.has(field) ? row.of(field).value() : "";
  }

  /** How far apart clips stand where the wind pulls less and more. */
  private static void clips(Sheaf sheaf, Covering covering) {
    List<List<String>> rows = new ArrayList<>();
    for (RoofArea area : RoofArea.values()) {
      Figure<?> most = covering.clips(area).spacing();
      Figure<?> used = covering.used(area);
      rows.add(
          List.of(
              where(area),
              most.refusal().isPresent() ? "nobody can say" : Spoken.of(most.in(Units.INCH)),
              used.refusal().isPresent() ? "nobody can say" : Spoken.of(used.in(Units.INCH)),
              most.refusal().isPresent()
                  ? ""
                  : "by " + covering.clips(area).governs().plain().replace('-', ' ')));
    }
    Paper.table(
        sheaf,
        "clips",
        "Clips against the wind",
        List.of("Where", "At most apart", "They stand", "What limits it"),
        rows);
  }

  private static String where(RoofArea area) {
    return switch (area) {
      case FIELD -> "in the field of the roof";
      case EDGES -> "along its edges";
      case CORNERS -> "at its corners";
    };
  }

  /** The deepest dip of each plane against the string: as found, as it is meant, as it was read. */
  private void flatness(Sheaf sheaf, Leveling leveling) {
    Map<String, Dips> deepest = new LinkedHashMap<>();
    leveling
        .atMiddle()
        .ifPresent(
            middle -> {
              Roll readings = middle.readings();
              for (int i = 0; i < readings.rows().size(); i++) {
                Dips dips = of(deepest, readings.cellsOf("plane").get(i).plain());
                dips.before(readings.cellsOf("before_in").get(i));
                dips.meant(readings.cellsOf("after_in").get(i));
              }
            });
    for (SurveyedPlane plane : leveling.survey().map(Survey::planes).orElse(List.of())) {
      for (List<Traced> row : plane.stations().rows()) {
        of(deepest, plane.name()).before(row.get(2));
        of(deepest, plane.name()).meant(row.get(3));
      }
    }
    WhenDone.of(estimate).forEach(each -> of(deepest, each.plane().value()).read(each.read()));
    List<List<String>> rows = new ArrayList<>();
    deepest.forEach((plane, dips) -> rows.add(dips.said(plane)));
    Paper.table(
        sheaf,
        "flatness",
        "How flat the deck lies, by the string",
        List.of("Deepest off the string", "Before", "As meant", "As read", "Read again"),
        rows);
  }

  private static Dips of(Map<String, Dips> deepest, String plane) {
    return deepest.computeIfAbsent(plane, any -> new Dips());
  }

  /** The deepest dips of one plane, in inches, and at how many feet of rafters it was read. */
  private static final class Dips {

    private double before;
    private double meant;
    private double read;
    private int feet;
    private int again;

    void before(Traced dip) {
      before = Math.max(before, inches(dip));
      feet++;
    }

    void meant(Traced dip) {
      meant = Math.max(meant, inches(dip));
    }

    void read(Traced dip) {
      read = Math.max(read, inches(dip));
      again++;
    }

    private static double inches(Traced dip) {
      return Math.abs(((Figure<?>) dip).in(Units.INCH).value());
    }

    List<String> said(String plane) {
      return List.of(
          "Plane " + plane,
          inches(before),
          inches(meant),
          again == 0 ? "" : inches(read),
          again == 0 ? "not read again yet" : "at %d of %d places".formatted(again, feet));
    }

    private static String inches(double dip) {
      return Spoken.of(Figure.of(dip, Units.INCH));
    }
  }
}
