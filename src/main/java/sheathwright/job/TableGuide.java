package sheathwright.job;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.job.life.AgreedFields;
import sheathwright.job.life.FirmFields;
import sheathwright.job.life.ForecastFields;
import sheathwright.job.life.InspectionFields;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.OrderFields;
import sheathwright.job.life.TalkFields;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.path.PathFields;
import sheathwright.job.price.FoundFields;
import sheathwright.job.price.LumberFields;
import sheathwright.job.price.OfficeFields;
import sheathwright.job.price.OpenFields;
import sheathwright.job.price.SupplyFields;
import sheathwright.job.site.CoveringFields;
import sheathwright.job.site.SiteFields;
import sheathwright.job.table.Field;
import sheathwright.job.triage.PullFields;
import sheathwright.job.triage.RuleFields;
import sheathwright.job.zone.ZoneFields;

/**
 * What a job's tables may hold, for whoever fills them: made from the fields that read them, so
 * that it cannot say anything else.
 */
public final class TableGuide {

  /** Which jobs some fields are for. */
  public enum For {
    ALL,
    RAFTERS,
    /** Rafters read at several stations, instead of at mid-length. */
    STATIONS,
    TRUSSES,
    SEAM
  }

  /**
   * Some fields of a table that go together.
   *
   * @param when it is that they are given
   * @param jobs which jobs they are for
   */
  public record Part(String when, List<Field<?>> fields, For jobs) {

    Part(String when, List<Field<?>> fields) {
      this(when, fields, For.ALL);
    }
  }

  private TableGuide() {}

  /** One line a table. */
  public static String list() {
    return Stream.of(JobTable.values())
        .map(
            table ->
                "%-15s %s%s"
                    .formatted(
                        table.file(),
                        table.meaning(),
                        table.isNeeded() ? "; " + needed(table) : ""))
        .collect(joining("\n"));
  }

  /** One table for a terminal: a line for each column or key. */
  public static String page(JobTable table) {
    List<String> lines = new ArrayList<>(List.of(table.file() + ": " + table.meaning()));
    lines.add(headings(table));
    for (Part part : parts(table)) {
      lines.add("");
      lines.add(part.when());
      int widest = part.fields().stream().mapToInt(field -> field.name().length()).max().orElse(0);
      for (Field<?> field : part.fields()) {
        String name = "  " + field.name() + " ".repeat(widest - field.name().length() + 2);
        lines.add(name + field.label() + ": " + field.allowed());
      }
    }
    return String.join("\n", lines);
  }

  /**
   * Every table as one Markdown document.
   *
   * @param examples by table and field, such as {@code job.quote_date}
   */
  public static String document(Map<String, String> examples) {
    List<String> lines = new ArrayList<>();
    lines.add("# The tables of a job");
    lines.add("");
    lines.add(
        "A job is a folder of these files; what an office keeps once for all its jobs (firm, prices, rates, lumber, rules) may lie above it. `./sheathwright new` writes them to be filled in. Columns stand in any order; a column whose heading begins with `note` is yours alone."
            + " This page is made from what reads the tables, and a test fails when it is out of date. Examples are from the"
            + " invented jobs in `demo-data`.");
    for (JobTable table : JobTable.values()) {
      lines.add("");
      lines.add("## " + table.file());
      lines.add("");
      lines.add(
          capital(table.meaning())
              + (table.isNeeded() ? ". " + capital(needed(table)) + ". " : ". ")
              + headings(table));
      for (Part part : parts(table)) {
        lines.add("");
        lines.add("*" + capital(part.when()) + "*");
        lines.add("");
        lines.add(
            "| "
                + (table.keys().isPresent() ? "key" : "column")
                + " | what it is | may be | example |");
        lines.add("| --- | --- | --- | --- |");
        for (Field<?> field : part.fields()) {
          String example = examples.getOrDefault(table.word() + "." + field.name(), "");
          lines.add(
              "| `%s` | %s%s | %s | %s |"
                  .formatted(
                      field.name(),
                      field.label(),
                      field.isRequired() ? "" : " (if known)",
                      field.allowed(),
                      example.isEmpty() ? "" : "`" + example + "`"));
        }
      }
    }
    ofTheFirm(
        lines,
        "history.csv",
        "jobs that were closed: a line each, appended by close",
        FirmFields.HISTORY);
    ofTheFirm(
        lines,
        "callbacks.csv",
        "who called back about which place, and what it was",
        FirmFields.CALLBACKS);
    return String.join("\n", lines) + "\n";
  }

  /** A table of the firm's, which lies in the folder above its jobs. */
  private static void ofTheFirm(
      List<String> lines, String file, String meaning, List<Field<?>> fields) {
    lines.addAll(
        List.of(
            "",
            "## " + file,
            "",
            "The firm's, in the folder above its jobs: %s. One line each, under these headings."
                .formatted(meaning),
            "",
            "| column | what it is | may be |",
            "| --- | --- | --- |"));
    for (Field<?> field : fields) {
      lines.add(
          "| `%s` | %s%s | %s |"
              .formatted(
                  field.name(),
                  field.label(),
                  field.isRequired() ? "" : " (if known)",
                  field.allowed()));
    }
  }

  private static String needed(JobTable table) {
    return "every job has it" + (table.isOfTheOffice() ? ", or its office above it" : "");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }

  private static String headings(JobTable table) {
    return table
        .keys()
        .map(keys -> "Two columns, `%s` and `%s`".formatted(keys.key(), keys.value()))
        .map(two -> two + (table == JobTable.PRICES ? ": dollars before tax." : "."))
        .orElse("One line each, under these headings.");
  }

  private static String with(JobTable table) {
    return "with " + table.file();
  }

  /** All that a table may hold, each by the name of its key or column. */
  public static Map<String, Field<?>> fields(JobTable table) {
    Map<String, Field<?>> fields = new LinkedHashMap<>();
    for (Part part : parts(table)) {
      part.fields().forEach(field -> fields.putIfAbsent(field.name(), field));
    }
    return fields;
  }

  /** What a column or a key of a table is, if the table may have it. */
  public static Optional<Field<?>> field(JobTable table, String name) {
    return Optional.ofNullable(fields(table).get(name));
  }

  /**
   * The columns of one line of a table, each by its name: where there are two kinds, the fuller.
   */
  public static Map<String, Field<?>> columns(JobTable table) {
    Map<String, Field<?>> columns = new LinkedHashMap<>();
    List<Part> parts = parts(table);
    parts.get(parts.size() - 1).fields().forEach(field -> columns.put(field.name(), field));
    return columns;
  }

  /** What a table may hold. */
  public static List<Part> parts(JobTable table) {
    return switch (table) {
      case JOB ->
          List.of(
              new Part("every job", JobFields.JOB),
              new Part("how the job goes on", LifeFields.JOB),
              new Part("nail spacing, needed where no code is given", SiteFields.SPACINGS),
              new Part("nail spacing that somebody decided", SiteFields.SPACING_DECISION),
              new Part("the site and its code", SiteFields.facts(false)),
              new Part("for whoever sells the material", SupplyFields.ORDER),
              new Part("the joints down to the walls", PathFields.PATH, For.RAFTERS),
              new Part("a standing-seam covering", CoveringFields.COVERING, For.SEAM),
              new Part("the deck, where it is not as usual", JobFields.DECK),
              new Part(with(JobTable.MARKS), JobFields.PATCHES),
              new Part("the wood of rafters or trusses", KnownRafters.WOOD, For.RAFTERS),
              new Part("rafters that are checked", FramingFields.RAFTERS, For.RAFTERS),
              new Part("more of those rafters", FramingFields.OLD_RAFTERS, For.RAFTERS),
              new Part("what carries them besides the plate", PathFields.HELD_BY, For.RAFTERS),
              new Part("how those facts are known", KnownRafters.FIELDS, For.RAFTERS),
              new Part("sisters to choose from", FramingFields.SISTER_CHOICE, For.RAFTERS),
              new Part(with(JobTable.READINGS), JobFields.SISTERS, For.RAFTERS),
              new Part(
                  "with readings at several stations of a rafter",
                  SurveyFields.FACTS,
                  For.STATIONS),
              new Part(
                  "the string, where readings were taken under it",
                  SurveyFields.STRING,
                  For.STATIONS),
              new Part("trusses", SurveyFields.TRUSS, For.TRUSSES));
      case FIRST_CALL -> List.of(new Part("every question", LifeFields.FIRST_CALL));
      case PLANES -> List.of(new Part("eave and slope length, or corners", PlaceFields.PLANES));
      case OPENINGS -> List.of(new Part("every opening", PlaceFields.OPENINGS));
      case RAFTERS -> List.of(new Part("every measured rafter", PlaceFields.SUPPORTS));
      case JOINTS -> List.of(new Part("every measured joint", PlaceFields.JOINTS));
      case MARKS -> List.of(new Part("every mark", PlaceFields.MARKS));
      case ZONES -> List.of(new Part("every zone", ZoneFields.ZONES));
      case PLACES -> List.of(new Part("every place", ZoneFields.PLACES_NAMED));
      case RULES ->
          List.of(new Part("every limit or action that is not as usual", RuleFields.RULES));
      case READINGS ->
          List.of(
              new Part("one reading a rafter, at mid-length", PlaceFields.READINGS, For.RAFTERS),
              new Part("or several stations a rafter", SurveyFields.READINGS, For.STATIONS));
      case REPORTS -> List.of(new Part("everything seen", FramingFields.REPORTS));
      case LAYERS -> List.of(new Part("every layer", FramingFields.LAYERS));
      case PULL_TESTS -> List.of(new Part("every screw that was pulled", PullFields.PULL_TESTS));
      case PHOTOS -> List.of(new Part("every picture", OrderFields.PHOTOS));
      case AGREED -> List.of(new Part("everything agreed", AgreedFields.AGREED));
      case TALKS -> List.of(new Part("everything agreed since", TalkFields.TALKS));
      case STAGES -> List.of(new Part("every payment", AgreedFields.STAGES));
      case OPTIONS -> List.of(new Part("every option", AgreedFields.OPTIONS));
      case ORDERS -> List.of(new Part("every change order", OrderFields.ORDERS));
      case ORDER_LINES -> List.of(new Part("every line of one", OrderFields.ORDER_LINES));
      case INSPECTIONS -> List.of(new Part("everything looked at", InspectionFields.INSPECTIONS));
      case LOG -> List.of(new Part("every task of a day", OrderFields.LOG));
      case SENT -> List.of(new Part("every document", OrderFields.SENT));
      case MAKER -> List.of(new Part("every requirement", MakerFields.FIELDS));
      case PRICES ->
          List.of(
              new Part("every job", OfficeFields.PRICES),
              new Part(with(JobTable.READINGS), OfficeFields.SISTER_PRICES),
              new Part(
                  with(JobTable.READINGS) + ", or for scabs and blocks", OfficeFields.SISTER_NAILS),
              new Part("for what may be found besides bad sheets", FoundFields.PRICES));
      case LUMBER ->
          List.of(
              new Part(
                  "every stick on sale: for sisters (%s, or sizes to choose from), and a 2x4 of 8 ft for scabs and blocks"
                      .formatted(with(JobTable.READINGS)),
                  LumberFields.LUMBER));
      case RATES ->
          List.of(
              new Part("every job", OfficeFields.RATES),
              new Part(with(JobTable.READINGS), OfficeFields.SISTER_RATES),
              new Part("for what may be found besides bad sheets", FoundFields.RATES),
              new Part("for what nobody has seen of a deck", ForecastFields.RATES),
              new Part("while a roof lies open", OpenFields.RATES));
      case FIRM -> List.of(new Part("once for all jobs, in a folder above them", FirmKeys.FIRM));
    };
  }
}
