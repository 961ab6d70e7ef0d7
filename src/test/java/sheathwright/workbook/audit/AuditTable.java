package sheathwright.workbook.audit;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sheathwright.workbook.LibreOffice;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.page.Samples;
import sheathwright.workbook.paper.LifeBooks;

/**
 * How good an audit is, as the table that docs/audit.md holds; src/build/audit-table.sh puts it
 * there.
 */
public final class AuditTable {

  private static final long SEED = 20_270_504;

  /** Files for one run of LibreOffice, which stops after some minutes. */
  private static final int AT_ONCE = 6;

  private static final int KILOBYTE = 1_000;

  private AuditTable() {}

  /**
   * Prints the table.
   *
   * @param arguments how many mistakes, how many honest files saved by POI, and how many saved by
   *     LibreOffice
   */
  public static void main(String[] arguments) throws Exception {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    Map<String, byte[]> books = books();
    AuditTrial trial = new AuditTrial(books, SEED);
    int mistakes = Integer.parseInt(arguments[0]);
    trial.makeMistakes(mistakes);
    out.printf(
        "Seed %d; %d workbooks of ours: both of every demo job, and a change order, an invoice and a deck record.%n%n",
        SEED, books.size());
    out.println("| mistake | made | found |");
    out.println("| --- | ---: | ---: |");
    int made = 0;
    int found = 0;
    for (Map.Entry<Mistake, int[]> count : trial.counts().entrySet()) {
      out.printf(
          "| %s | %d | %d |%n", count.getKey().words(), count.getValue()[0], count.getValue()[1]);
      made += count.getValue()[0];
      found += count.getValue()[1];
    }
    out.printf("| all | %d | %d, %.1f %% |%n%n", made, found, 100.0 * found / made);
    out.println("| workbook | its size, kB | read and compared, s, median of its mistakes |");
    out.println("| --- | ---: | ---: |");
    trial
        .seconds()
        .forEach(
            (name, times) ->
                out.printf(
                    "| %s | %d | %.2f |%n",
                    name, books.get(name).length / KILOBYTE, median(times)));
    out.println();
    trial.missed().forEach(each -> out.println("Not found: " + each + "."));
    out.println("| honest files, inputs changed and saved by | files | false alarms |");
    out.println("| --- | ---: | ---: |");
    int saved = Integer.parseInt(arguments[1]);
    out.printf("| Apache POI 5 | %d | %d |%n", saved, byPoi(trial, books, saved));
    int converted = Integer.parseInt(arguments[2]);
    out.printf("| LibreOffice | %d | %d |%n", converted, byLibreOffice(books, converted));
  }

  private static double median(List<Double> times) {
    return times.stream().sorted().toList().get(times.size() / 2);
  }

  /** Both books of every job, and the documents of one whose roof is open. */
  private static Map<String, byte[]> books() {
    Map<String, byte[]> books = new TreeMap<>();
    Samples.everyJob().forEach(job -> books.putAll(Samples.ofJob(job)));
    LifeBooks.all().forEach((name, book) -> books.put("life-" + name, book));
    return books;
  }

  private static int byPoi(AuditTrial trial, Map<String, byte[]> books, int number) {
    List<String> names = List.copyOf(books.keySet());
    int alarms = 0;
    for (int i = 0; i < number; i++) {
      byte[] book = books.get(names.get(i % names.size()));
      alarms += alarms(names.get(i % names.size()), book, trial.filledIn(book, i % 5));
    }
    return alarms;
  }

  private static int alarms(String name, byte[] book, byte[] file) {
    List<Finding> alarms = AuditTrial.alarms(book, file);
    alarms.forEach(alarm -> System.err.println(name + ": " + alarm));
    return alarms.isEmpty() ? 0 : 1;
  }

  private static int byLibreOffice(Map<String, byte[]> books, int number)
      throws IOException, InterruptedException {
    AuditTrial trial = new AuditTrial(books, SEED + 1);
    Path folder = Files.createTempDirectory("honest");
    List<String> names = List.copyOf(books.keySet());
    Map<Path, String> files = new LinkedHashMap<>();
    for (int i = 0; i < number; i++) {
      String name = names.get(i % names.size());
      Path file = folder.resolve(i + "-" + name + ".xlsx");
      Files.write(file, trial.filledIn(books.get(name), i % 5));
      files.put(file, name);
    }
    Path saved = folder.resolve("saved");
    List<Path> all = new ArrayList<>(files.keySet());
    for (int i = 0; i < all.size(); i += AT_ONCE) {
      LibreOffice.convert(
          all.subList(i, Math.min(all.size(), i + AT_ONCE)), saved, Recalculation.ALWAYS);
    }
    int alarms = 0;
    for (Map.Entry<Path, String> file : files.entrySet()) {
      byte[] bytes = Files.readAllBytes(saved.resolve(file.getKey().getFileName()));
      alarms += alarms(file.getValue(), books.get(file.getValue()), bytes);
    }
    return alarms;
  }
}
