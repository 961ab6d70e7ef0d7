package sheathwright.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;
import sheathwright.fastening.count.Nailing;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.pricing.Disposal;
import sheathwright.pricing.Rates;
import sheathwright.pricing.SheetMaterial;
import sheathwright.roof.Leans;
import sheathwright.sheathing.layout.StripRule;
import sheathwright.sheathing.patch.Finding;
import sheathwright.wood.LumberSize;

/**
 * The tables of one job, as they lie in a folder, and what each may hold.
 *
 * @param files by the {@linkplain JobTable table}'s word
 */
public record JobTables(Map<String, CsvFile> files) {

  static final List<Field> JOB =
      List.of(
          Field.line("job_name", "Job"),
          Field.line("customer", "For"),
          Field.line("site", "Site"),
          Field.line("prepared_by", "Prepared by"),
          Field.line("quote_number", "Quote number"),
          Field.date("quote_date", "Quote date"),
          Field.number("valid_days", "Price good for, days", 1, 365),
          Field.text("looked_at", "What was looked at").ifKnown(),
          Field.text("not_looked_at", "What could not be seen").ifKnown(),
          Field.number("base_roofing_usd", "Roof covering, by the roofing price book", 0, 1_000_000)
              .usuallyOrNone(500, 500_000),
          Field.number("permit_usd", "Permit", 0, 50_000).usuallyOrNone(5, 5_000),
          Field.number("engineer_usd", "Engineer's letter, at cost", 0, 50_000).ifKnown(),
          Field.whole("planned_sheets", "Deck sheets in the price", Units.SHEET, 0, 5_000),
          Field.number(
              "credit_usd", "Credit for a sheet not needed", Units.USD_PER_SHEET, 0, 1_000),
          Field.number("support_spacing_in", "Rafter or truss spacing, on center", 6, 96),
          Field.of(Nailing.class, "edge", "Nail spacing, panel edges"),
          Field.of(Nailing.class, "field", "Nail spacing, field"),
          Field.of(Nailing.class, "blockedEdges", "Long panel edges blocked"));

  static final List<Field> SISTERS =
      List.of(
          Field.word("sister_size", "Sister size", LumberSize.class),
          Field.number("sister_span_ft", "Bearing to bearing along the rafter", 2, 40),
          Field.number("sister_tolerance_in", "Most drop to shim, not sister", 0, 2),
          Field.number("shim_tolerance_in", "Drop left as is", 0, 2),
          Field.number("sister_lap_in", "Sister runs past the drop by", 0, 120),
          Field.number("sister_nail_spacing_in", "Sister nail spacing", 2, 48),
          Field.whole("sister_nail_rows", "Nail rows per sister", Units.RATIO, 1, 4),
          Field.number("sister_stick_ft", "Stick length, sister price", 8, 20));

  /** Sisters of a survey are as long as their rafters ask, not as a parabola does. */
  static List<Field> sisters(boolean isSurveyed) {
    return SISTERS.stream()
        .filter(field -> !isSurveyed || !field.name().equals("sister_span_ft"))
        .toList();
  }

  static final List<Field> PLANES =
      List.of(
          Field.name("plane", "Plane"),
          Field.number("eave_ft", "Eave", 1, 500).ifKnown(),
          Field.number("slope_length_ft", "Slope length", 1, 200).ifKnown(),
          Field.of(Leans.class, "left", "Left side leans in").ifKnown(),
          Field.of(Leans.class, "right", "Right side leans in").ifKnown(),
          Field.text("corners_ft", "Corners").ifKnown());

  static final List<Field> OPENINGS =
      List.of(
          Field.name("plane", "Plane"),
          Field.number("along_ft", "From the left", -200, 500),
          Field.number("up_ft", "From the eave", 0, 200),
          Field.number("width_ft", "Width", 0.25, 100),
          Field.number("height_ft", "Height", 0.25, 100));

  static final List<Field> SUPPORTS =
      List.of(Field.name("plane", "Plane"), Field.number("center_in", "Center", -2_400, 6_000));

  static final List<Field> MARKS =
      List.of(
          Field.name("mark", "Mark"),
          Field.name("plane", "Plane"),
          Field.word("finding", "Finding", Finding.class),
          Field.number("along_in", "From the left", -2_400, 6_000),
          Field.number("up_in", "From the eave", 0, 2_400),
          Field.number("width_in", "Width", 1, 1_200),
          Field.number("height_in", "Height", 1, 1_200),
          Field.text("evidence", "Evidence").ifKnown());

  static final List<Field> DECK =
      List.of(
          Field.word("strip_rule", "Strip at the ridge", StripRule.class).ifKnown(),
          Field.number("gap_in", "Gap between sheets", 0, 1).ifKnown());

  static final List<Field> PATCHES =
      List.of(Field.number("beyond_mark_in", "Cut past the mark", 0, 48).ifKnown());

  static final List<Field> READINGS =
      List.of(
          Field.name("plane", "Plane"),
          Field.name("rafter", "Rafter"),
          Field.number("drop_in", "Drop at mid-length", 0, 6));

  static final List<Field> PRICES =
      List.of(
          Field.number("sheet", "Sheet", Units.USD_PER_SHEET, 0, 1_000).usually(5, 300),
          Field.number("nail", "Sheet nail", Units.USD_PER_NAIL, 0, 5).usually(0.001, 1),
          Field.number("sheet_extras", "Clips etc., per sheet", Units.USD_PER_SHEET, 0, 1_000)
              .ifKnown());

  static final List<Field> SISTER_PRICES =
      List.of(
          Field.number("sister_stick", "Sister lumber", Units.USD_PER_PIECE, 0, 1_000)
              .usually(1, 500),
          Field.number("sister_nail", "Sister nail", Units.USD_PER_NAIL, 0, 5).usually(0.001, 1),
          Field.number("shim", "Shims, per rafter", Units.USD_PER_PIECE, 0, 1_000)
              .usually(0.01, 100));

  static final List<Field> RATES =
      List.of(
          Field.of(Rates.class, "labor", "Labor rate, burdened").usually(10, 250),
          Field.of(Rates.class, "overhead", "Overhead on direct cost").usuallyOrNone(1, 100),
          Field.of(Rates.class, "margin", "Margin on the price").usuallyOrNone(1, 60),
          Field.of(Rates.class, "tax", "Sales tax on material").usuallyOrNone(1, 15),
          Field.of(SheetMaterial.class, "waste", "Sheet waste, cuts and breakage")
              .usuallyOrNone(1, 50),
          Field.of(Disposal.class, "fee", "Dump fee").usuallyOrNone(5, 500),
          Field.of(Disposal.class, "weight", "Old sheet")
              .named("sheet_disposal_lb")
              .usuallyOrNone(10, 150),
          Field.number("planned_sheet_h", "Planned sheet", Units.HOURS_PER_SHEET, 0, 40)
              .usually(0.05, 8),
          Field.number("extra_sheet_h", "Extra sheet, found on site", Units.HOURS_PER_SHEET, 0, 40)
              .usually(0.05, 8),
          Field.number("order_spare_pct", "Overage", 0, 100).usuallyOrNone(1, 50),
          Field.whole("nails_per_box", "Nails in a box", Units.NAIL, 1, 100_000)
              .usually(50, 50_000));

  static final List<Field> SISTER_RATES =
      List.of(
          Field.number("sister_h", "Sister", Units.HOURS_PER_PIECE, 0, 40).usually(0.05, 16),
          Field.number("shim_h", "Shimmed rafter", Units.HOURS_PER_PIECE, 0, 40).usually(0.05, 8));

  /**
   * Reads the tables in a folder.
   *
   * @throws ProblemsException with everything that is wrong with the folder and its files
   */
  public static JobTables in(Path folder) {
    String name = String.valueOf(folder);
    if (!Files.isDirectory(folder)) {
      throw new ProblemsException(
          List.of(
              new Problem(name, 0, "", "there is no such folder; a job is a folder of CSV files")));
    }
    Map<String, CsvFile> files = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>(overlooked(folder));
    for (JobTable table : JobTable.values()) {
      Path file = folder.resolve(table.file());
      if (!Files.exists(file)) {
        if (table.isNeeded()) {
          problems.add(new Problem(table.file(), 0, "", "this table is missing from " + name));
        }
        continue;
      }
      try {
        files.put(table.word(), CsvFile.read(file));
      } catch (ProblemsException broken) {
        problems.addAll(broken.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return new JobTables(files);
  }

  /** Files that look like tables, under names that no job knows: nobody would read them. */
  private static List<Problem> overlooked(Path folder) {
    List<String> known = Stream.of(JobTable.values()).map(JobTable::file).toList();
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .map(entry -> entry.getFileName().toString())
          .filter(name -> looksLikeATable(name) && !known.contains(name))
          .sorted()
          .map(
              name ->
                  new Problem(
                      name,
                      0,
                      "",
                      "no job table has that name%s; the tables are %s; rename it, or keep it elsewhere"
                          .formatted(
                              Nearest.asked(withoutText(name), known), String.join(", ", known))))
          .toList();
    } catch (IOException unreadable) {
      String message = "the folder cannot be read";
      return List.of(new Problem(String.valueOf(folder), 0, "", message));
    }
  }

  private static boolean looksLikeATable(String name) {
    return !name.startsWith(".") && withoutText(name).endsWith(JobTable.ENDING);
  }

  /** Editors put a second ending behind a name that already has one. */
  private static String withoutText(String name) {
    String folded = name.strip().toLowerCase(Locale.ROOT);
    return folded.endsWith(JobTable.ENDING + ".txt")
        ? folded.substring(0, folded.length() - ".txt".length())
        : folded;
  }

  /** Whether the job asks which sisters would do. */
  boolean choosesSisters() {
    return says(List.of(FramingTables.SISTER_CHOICE.get(0)));
  }

  /** Whether the job gives any of these facts. */
  boolean says(List<Field> facts) {
    CsvFile job = file("job");
    int key = job.header().indexOf("key");
    int value = job.header().indexOf("value");
    return key >= 0
        && value >= 0
        && job.lines().stream()
            .filter(line -> !line.cells().get(value).isBlank())
            .map(line -> line.cells().get(key).strip())
            .anyMatch(name -> facts.stream().anyMatch(fact -> fact.name().equals(name)));
  }

  /** Whether readings stand at several stations of a rafter. */
  boolean surveysRafters() {
    return has("readings") && file("readings").header().contains(SurveyTables.STATION);
  }

  boolean has(String table) {
    return files.containsKey(table);
  }

  CsvFile file(String table) {
    return files.get(table);
  }
}
