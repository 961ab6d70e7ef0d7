import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Jobs and scripts of any size, the same ones every time, for measuring how time grows with size.
 * Everything in them is invented.
 *
 * <p>Usage: {@code java src/build/java/GrowingWork.java
 * marks|rafters|script|layout|leveling|cutting SIZE FILE_OR_FOLDER}
 */
final class GrowingWork {

  private static final int PLANES = 8;
  private static final int EAVE_FT = 150;
  private static final int SLOPE_FT = 40;
  private static final int STATIONS = 12;
  private static final int SPACING_IN = 24;
  private static final List<String> FINDINGS =
      List.of("rot", "soft", "delaminated", "swollen", "hole", "loose");

  private static final String FACTS =
      """
      key,value,note
      job_name,A job that grows,invented
      customer,Invented Customer,invented
      site,Nowhere,invented
      prepared_by,Nobody,invented
      quote_number,G-1,invented
      quote_date,2027-09-06,invented
      valid_days,30,invented
      looked_at,Everything,invented
      not_looked_at,Nothing,invented
      base_roofing_usd,7900,invented
      permit_usd,165,invented
      planned_sheets,8,invented
      credit_usd,0,invented
      support_spacing_in,24,invented
      edge_spacing_in,6,invented
      field_spacing_in,12,invented
      blocked_edges,no,invented
      species,douglas-fir-larch,invented
      grade,no-2,invented
      rafter_size,2x6,invented
      value_set,nds2018,invented
      span_ft,11-4 5/8,invented
      bearing_in,2,invented
      load,roof-live,invented
      live_psf,20,invented
      deflection_limit,180,invented
      rise_in_12,4,invented
      """;

  private static final String STRAIGHTENING =
      """
      notch_in,1,invented
      brace_spacing_in,48,invented
      sister_size,2x6,invented
      sister_tolerance_in,3/8,invented
      shim_tolerance_in,1/8,invented
      sister_lap_in,24,invented
      sister_nail_spacing_in,12,invented
      sister_nail_rows,2,invented
      target,lines,invented
      objective,total,invented
      lower_bearing_in,6,invented
      upper_bearing_in,150,invented
      full_bearing,no,invented
      least_lap_in,3,invented
      flatness,strict,invented
      truss,no,invented
      """;

  private final Random random = new Random(20270906);

  private GrowingWork() {}

  public static void main(String[] arguments) throws IOException {
    int size = Integer.parseInt(arguments[1]);
    Path where = Path.of(arguments[2]);
    GrowingWork work = new GrowingWork();
    switch (arguments[0]) {
      case "marks" -> work.marks(size, where);
      case "rafters" -> work.rafters(size, where);
      case "script" -> Files.write(where, work.script(size));
      case "layout" -> Files.write(where, List.of(trapezoid(size), "layout(end, 24 in)"));
      case "leveling" -> Files.write(where, straightened(size));
      case "cutting" -> {
        List<String> lines = new ArrayList<>(straightened(size));
        lines.add("cutSticks(straight, stick(12 ft, $8.60), stick(14 ft, $10.90))");
        Files.write(where, lines);
      }
      default -> throw new IllegalArgumentException(arguments[0] + " is no kind of work");
    }
  }

  /** A roof of large planes, each mark wholly on its plane. */
  private void marks(int size, Path folder) throws IOException {
    write(folder, "job.csv", Stream.of(FACTS.stripTrailing()));
    write(folder, "planes.csv", planes(EAVE_FT, SLOPE_FT));
    pricesAndLayers(folder);
    List<String> lines = new ArrayList<>();
    lines.add("mark,plane,finding,along_in,up_in,width_in,height_in,note");
    for (int i = 0; i < size; i++) {
      int width = 6 + random.nextInt(60);
      int height = 6 + random.nextInt(36);
      lines.add(
          "M-%d,%s,%s,%d,%d,%d,%d,invented"
              .formatted(
                  i + 1,
                  plane(i % PLANES),
                  FINDINGS.get(random.nextInt(FINDINGS.size())),
                  random.nextInt(EAVE_FT * 12 - width),
                  random.nextInt(SLOPE_FT * 12 - height),
                  width,
                  height));
    }
    write(folder, "marks.csv", lines.stream());
  }

  /** Rafters that sag in the middle, and planes next to each other in it, read from a string. */
  private void rafters(int size, Path folder) throws IOException {
    int onEach = (size + PLANES - 1) / PLANES;
    write(folder, "job.csv", Stream.of(FACTS + STRAIGHTENING.stripTrailing()));
    write(folder, "planes.csv", planes(onEach * SPACING_IN / 12 + 2, 13));
    pricesAndLayers(folder);
    write(
        folder,
        "reports.csv",
        Stream.of(
            "report,seen,where,evidence,note", "F-1,nothing,every rafter from above,photo 1,"));
    List<String> lines = new ArrayList<>();
    lines.add("plane,rafter,along_in,up_in,drop_in,note");
    for (int rafter = 0; rafter < size; rafter++) {
      String plane = plane(rafter / onEach);
      int number = rafter % onEach;
      double sag =
          0.9 * Math.sin(Math.PI * (number + 1) / (onEach + 1)) + 0.25 * random.nextDouble();
      for (int station = 0; station < STATIONS; station++) {
        double up = 6 + station * 144.0 / (STATIONS - 1);
        double drop = sag * Math.sin(Math.PI * station / (STATIONS - 1));
        lines.add(
            "%s,%s-%d,%d,%.2f,%s,invented"
                .formatted(
                    plane,
                    plane,
                    number + 1,
                    12 + number * SPACING_IN,
                    up,
                    Math.round(drop * 16) / 16.0));
      }
    }
    write(folder, "readings.csv", lines.stream());
  }

  /** A plane with two slanted ends, as large as so many sheets of 32 sq ft. */
  private static String trapezoid(int sheets) {
    double lean = Math.sqrt(32.0 * sheets / 8);
    return String.format(
        Locale.ROOT,
        "end = Plane.trapezoid(\"end\", ft(%.3f), ft(%.3f), ft(%.3f), ft(%.3f))",
        5 * lean,
        2 * lean,
        lean,
        lean);
  }

  /** So many rafters of one plane with two waves in it; of every twenty, one is read wrong once. */
  private static List<String> straightened(int rafters) {
    StringBuilder string = new StringBuilder("string = stringLines(24 in, 12-6 ft");
    for (int rafter = 0; rafter < rafters; rafter++) {
      int sag = 10 + (int) Math.round(8 * Math.sin(rafter / 4.0)); // sixteenths of an inch
      int wrong = rafter % 20 == 7 ? 24 : 0;
      string.append(
          String.format(
              Locale.ROOT,
              ", \"0 %s %s %s 0\"",
              sag * 2 / 3 / 16.0,
              (sag + wrong) / 16.0,
              sag * 2 / 3 / 16.0));
    }
    return List.of(
        string.append(")").toString(),
        "straight = straighten(string, sisters = 2x6, rafters = 2x6, used = 0.86)");
  }

  /** A third each: figures alone, figures in chains of ten, and names given another value. */
  private List<String> script(int size) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; lines.size() < size; i++) {
      lines.add(
          "var a%d = nailsPerSheet(in(%d), Nailing.edge(in(6)).field(in(12)), FOUR_BY_EIGHT)"
              .formatted(i, random.nextBoolean() ? 16 : 24));
      lines.add(
          i % 10 == 0
              ? "var b%d = sqft(%d)".formatted(i, 100 + random.nextInt(900))
              : "var b%d = b%d.plus(sqft(%d))".formatted(i, i - 1, 1 + random.nextInt(9)));
      lines.add(
          "a%d = nailsPerSheet(in(16), Nailing.edge(in(%d)).field(in(12)), FOUR_BY_EIGHT)"
              .formatted(random.nextInt(i + 1), 4 + 2 * random.nextInt(2)));
    }
    return lines.subList(0, size);
  }

  private static Stream<String> planes(int eave, int slope) {
    return Stream.concat(
        Stream.of("plane,eave_ft,slope_length_ft,note"),
        Stream.iterate(0, plane -> plane < PLANES, plane -> plane + 1)
            .map(plane -> "%s,%d-0,%d-0,invented".formatted(plane(plane), eave, slope)));
  }

  private static void pricesAndLayers(Path folder) throws IOException {
    write(
        folder,
        "layers.csv",
        Stream.of(
            "material,layers,thickness_in,note",
            "standing-seam,1,,invented",
            "plywood,1,15/32,invented"));
    write(
        folder,
        "prices.csv",
        Stream.of(
            "item,usd,note",
            "sheet,38.50,invented",
            "nail,0.020,invented",
            "sister_nail,0.026,invented",
            "shim,1.00,invented"));
    write(
        folder,
        "lumber.csv",
        Stream.of(
            "size,length_ft,usd,note",
            "2x6,8,6.40,invented",
            "2x6,10,8.00,invented",
            "2x6,12,9.60,invented",
            "2x6,14,11.20,invented"));
    write(
        folder,
        "rates.csv",
        Stream.of(
            "rate,value,note",
            "labor_usd_per_h,46.00,invented",
            "overhead_pct,18,invented",
            "margin_pct,12,invented",
            "tax_pct,6.5,invented",
            "waste_pct,5,invented",
            "disposal_usd_per_ton,78,invented",
            "sheet_disposal_lb,45,invented",
            "planned_sheet_h,0.55,invented",
            "extra_sheet_h,0.90,invented",
            "order_spare_pct,5,invented",
            "nails_per_box,2500,invented",
            "sister_h,1.5,invented",
            "shim_h,0.25,invented",
            "refasten_nails,20,invented",
            "refasten_h,0.25,invented",
            "lift_h,0.5,invented"));
  }

  private static String plane(int number) {
    return "P" + (number + 1);
  }

  private static void write(Path folder, String name, Stream<String> lines) throws IOException {
    Files.createDirectories(folder);
    Files.write(folder.resolve(name), (Iterable<String>) lines::iterator);
  }
}
