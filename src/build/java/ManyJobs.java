import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Variants of one demo job, the same ones every time, for measuring how many jobs are quoted in one
 * run. Job N is made by {@code java.util.Random} begun with N, which draws in this order: the eave
 * of every plane (24 to 60 ft), its slope length (10 to 22 ft), the price of a sheet ($28 to $62),
 * the sheets in the price (0 to 8) and the roof covering ($4,000 to $24,000). Everything else is as
 * in the demo.
 *
 * <p>Usage: {@code java src/build/java/ManyJobs.java DEMO COUNT FOLDER}
 */
final class ManyJobs {

  private ManyJobs() {}

  public static void main(String[] arguments) throws IOException {
    Path demo = Path.of(arguments[0]);
    int count = Integer.parseInt(arguments[1]);
    for (int i = 1; i <= count; i++) {
      Path job = Path.of(arguments[2], String.format(Locale.ROOT, "job-%04d", i));
      Files.createDirectories(job);
      write(demo, job, new Random(i));
    }
  }

  private static void write(Path demo, Path job, Random drawn) throws IOException {
    int eave = 24 + drawn.nextInt(37);
    int slope = 10 + drawn.nextInt(13);
    int sheet = 28 + drawn.nextInt(35);
    int planned = drawn.nextInt(9);
    int covering = 4_000 + drawn.nextInt(20_001);
    try (Stream<Path> tables = Files.list(demo)) {
      for (Path table : tables.filter(ManyJobs::isCopied).toList()) {
        String name = table.getFileName().toString();
        List<String> lines =
            Files.readAllLines(table).stream()
                .map(line -> changed(name, line, eave, slope, sheet, planned, covering))
                .toList();
        Files.write(job.resolve(name), lines);
      }
    }
  }

  private static String changed(
      String table, String line, int eave, int slope, int sheet, int planned, int covering) {
    return switch (table) {
      case "planes.csv" -> line.replaceFirst("^([AB]),[^,]*,[^,]*", "$1," + eave + "," + slope);
      case "prices.csv" -> line.replaceFirst("^sheet,[^,]*", "sheet," + sheet);
      case "job.csv" ->
          line.replaceFirst("^planned_sheets,[^,]*", "planned_sheets," + planned)
              .replaceFirst("^base_roofing_usd,\"[^\"]*\"", "base_roofing_usd," + covering);
      default -> line;
    };
  }

  /** The zones are of one roof's courses, and the roofs differ. */
  private static boolean isCopied(Path file) {
    return file.toString().endsWith(".csv") && !file.endsWith("zones.csv");
  }
}
