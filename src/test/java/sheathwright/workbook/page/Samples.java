package sheathwright.workbook.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import sheathwright.Walk;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.figure.Amounts;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.fill.FilledTable;
import sheathwright.job.table.CsvFile;
import sheathwright.sheathing.layout.SheetCounts;
import sheathwright.workbook.book.LevelSamples;
import sheathwright.workbook.calculator.CalculatorBook;
import sheathwright.workbook.firm.SeasonSamples;
import sheathwright.workbook.home.HomeBook;
import sheathwright.workbook.paper.LifeBooks;

/**
 * Every kind of workbook that the library writes, made from the demo jobs and from small tables.
 */
public final class Samples {

  public static final List<String> JOBS =
      List.of("quince-hollow", "mistwater-cottage", "cinder-brook", "tallow-end");

  private static final Path FOLDER = Path.of("target", "workbooks");

  private Samples() {}

  private static Map<String, byte[]> all;

  /** Workbooks by name, made once. They are also left in a folder for engines that read files. */
  public static synchronized Map<String, byte[]> all() {
    if (all == null) {
      all = made();
    }
    return all;
  }

  /** Their names; of the filled tables, which are all made by one road, some (see {@link Walk}). */
  public static List<String> names() {
    List<String> names = List.copyOf(all().keySet());
    return IntStream.range(0, names.size())
        .filter(each -> !names.get(each).startsWith("fill-") || Walk.takes(each))
        .mapToObj(names::get)
        .toList();
  }

  /** The same, made anew. */
  public static Map<String, byte[]> made() {
    Map<String, byte[]> books = new LinkedHashMap<>();
    JOBS.forEach(job -> books.putAll(ofJob(job)));
    tablesToFill()
        .forEach(
            (function, text) ->
                books.put("fill-" + function, FillBook.bytes(filled(function, text))));
    books.put("session", SessionBook.bytes(session()));
    books.put("leveling", LevelSamples.book());
    books.put("season", SeasonSamples.season());
    books.put("calculators", CalculatorBook.ofAll());
    LifeBooks.all().forEach((name, bytes) -> books.put("life-" + name, bytes));
    books.forEach((name, bytes) -> keep(FOLDER.resolve(name + ".xlsx"), bytes));
    return books;
  }

  /** A job's two workbooks by name, made anew. */
  public static Map<String, byte[]> ofJob(String job) {
    Estimate estimate = new Estimate(Job.of(tables(job)));
    Map<String, byte[]> books = new LinkedHashMap<>();
    books.put(job + "-estimate", JobBook.estimate(estimate).bytes());
    books.put(job + "-quote", HomeBook.of(estimate).bytes());
    return books;
  }

  /**
   * What a session might hold: typed numbers, a long expression of the user's own, an answer, a
   * word.
   */
  private static Map<String, Traced> session() {
    Figure<Quantity.Area> area = Amounts.sqft(1408.72);
    Figure<Quantity.Sheets> order = SheetCounts.sheetsByArea(area, Amounts.pct(10));
    Figure<Quantity.Sheets> sum = order;
    for (int i = 0; i < 40; i++) {
      sum = sum.plus(order.times(Amounts.number(i + 0.5)));
    }
    Map<String, Traced> variables = new LinkedHashMap<>();
    variables.put("area", area);
    variables.put("order", order);
    variables.put("sumOfMany", sum);
    variables.put("sameAgain", order);
    variables.put("isLarge", order.isMoreThan(Amounts.sheets(20)).as("is_large"));
    variables.put("a1", Amounts.in(3));
    return variables;
  }

  /** Every invented job that has a folder of its own. */
  public static List<String> everyJob() {
    try (Stream<Path> folders = Files.list(Path.of("demo-data"))) {
      return folders
          .filter(job -> Files.exists(job.resolve(JobTable.JOB.file())))
          .map(job -> job.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  public static JobTables tables(String job) {
    return JobTables.in(Path.of("demo-data", job));
  }

  public static FilledTable filled(String function, String text) {
    Card card = Catalog.shipped().named(function);
    return FilledTable.of(card, CsvFile.parse(function + ".csv", text));
  }

  /** A table of cases for each function, none of which is refused. */
  public static Map<String, String> tablesToFill() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("sheets_by_area", "deck_area_sf,waste_pct\n704.36,0\n1973.26,12\n32.0001,5\n");
    tables.put(
        "nails_per_sheet",
        "support_spacing_in,edge_spacing_in,field_spacing_in,blocked_edges\n16,6,12,\n24,6,6,yes\n19.2,4,6,no\n");
    tables.put(
        "sister_stock",
        """
        sag_in,span_ft,tolerance_in,lap_in,rafter_count,sister_size,nail_spacing_in
        1-5/8,12-0 1/4,3/8,24,18,2x8,
        1/4,12,3/8,24,5,2x6,16
        0,9,0,12,3,,
        0.9,16.5,1/8,6,7,2x10,8
        """);
    String rafter =
        "species,grade,size,spacing_in,live_psf,dead_psf,load,deflection_limit,value_set";
    tables.put(
        "rafter_max_span",
        rafter
            + """

            spruce-pine-fir,no-2,2x6,16,20,10,roof-live,240,nds2018
            southern-pine,no-1,2x8,24,50,20,snow,180,nds2018
            hem-fir,no-1,2x10,32,30,10,snow,180,nds1997
            """);
    tables.put(
        "rafter_check",
        rafter
            + """
            ,span_ft,bearing_in
            spruce-pine-fir,no-2,2x4,24,38.5,10.82,snow,180,nds2018,10,
            douglas-fir-larch,select-structural,2x12,12,20,10,roof-live,240,nds1997,18-6,3
            """);
    tables.put(
        "sheet_unit_price",
        """
        sheet_usd,waste_pct,nails,nail_usd,tax_pct,hours,labor_usd_per_h,disposal_lb,disposal_usd_per_ton,overhead_pct,margin_pct,extras_usd
        38.50,5,43,0.02,6.5,0.9,46,45,78,18,12,
        19.80,5,33,0.02,6.5,0.9,46,45,78,18,12,0.96
        """);
    tables.put(
        "piece_unit_price",
        """
        material_usd,nails,nail_usd,tax_pct,hours,labor_usd_per_h,overhead_pct,margin_pct
        17.10,26,0.026,6.5,1.5,46,18,12
        1,0,0,6.5,0.25,46,18,12
        """);
    tables.put(
        "foot_unit_price",
        """
        material_usd,nails,nail_usd,tax_pct,hours,labor_usd_per_h,overhead_pct,margin_pct,round_usd
        0.5125,2,0.026,6.5,0.05,46,18,12,
        0,0,0,6.5,0.02,46,18,12,0.25
        """);
    tables.put("open_area", "crew,hours,efficiency_pct,hours_per_square\n4,8,75,3\n3,9.5,80,2.5\n");
    tables.put(
        "redeck_break_even",
        "sheets,patch_usd,redeck_usd,keep_usd\n121,66.88,57.60,5.76\n44,90,60,70\n");
    tables.put(
        "hours_rate",
        "fitted_h,se_h,rows,book_h,book_spread_pct\n0.96,0.074,3,0.9,\n1.2,0.3,12,1,40\n");
    tables.put(
        "disposal_weight",
        "roof_squares,layers,covering_psf,sheets,sheet_lb\n38.85,2,2.4,121,45\n14,1,1,,\n");
    tables.put(
        "containers",
        "tons,container_tons,container_usd,over_usd_per_ton\n12.0465,4,465,82\n14.4,4,465,200\n");
    tables.put("rain_threshold", "lost_day_usd,damage_usd,open_share\n780,4200,0.5\n780,400,\n");
    tables.put(
        "sheets_by_course",
        "eave_ft,slope_length_ft,strip_rule\n42,16-9 1/4,rip\n42,16-9 1/4,equal\n42,16-9 1/4,two-foot\n29,12,equal\n");
    tables.put("slope_factor", "rise_in_12\n9\n5\n0\n");
    tables.put("hip_valley_factor", "rise_in_12\n6\n5\n");
    tables.put("slope_length", "run_ft,rise_in_12\n15,6\n16-0 1/2,8.5\n");
    tables.put(
        "house",
        "length_ft,width_ft,rise_in_12,ends,wing_width_ft,wing_out_ft\n50,32,5,hipped,22,16\n42,30,6,gabled,12,8\n");
    tables.put(
        "plane_measures",
        "eave_ft,slope_length_ft,left_lean_ft,right_lean_ft\n40,12,12,12\n20,12,0,-12\n42,16-9 1/4,,\n");
    tables.put(
        "joint_creep",
        "panel_length_in,gap_in,min_bearing_in\n96,1/8,1/2\n95-7/8,1/8,0.5\n95-7/8,1/8,3/4\n");
    tables.put("joint_bearing", "rafter_center_in,joint_in\n47.25,48\n144.5,144\n96,95-15/16\n");
    DeckSamples.putInto(tables);
    WindSamples.putInto(tables);
    NailSamples.putInto(tables);
    FramingSamples.putInto(tables);
    LoadSamples.putInto(tables);
    RafterSamples.putInto(tables);
    SisterSamples.putInto(tables);
    LevelSamples.putInto(tables);
    return tables;
  }

  /** What is packed in a workbook, by name: how tightly it is packed may differ from JDK to JDK. */
  public static Map<String, String> parts(byte[] file) {
    Map<String, String> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.ISO_8859_1));
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return parts;
  }

  public static void keep(Path file, byte[] bytes) {
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
