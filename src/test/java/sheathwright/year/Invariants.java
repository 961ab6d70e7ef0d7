package sheathwright.year;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import sheathwright.job.Estimate;
import sheathwright.life.record.JobFolder;

/** What holds after every command, whatever went wrong while it was run. */
final class Invariants {

  private static final Pattern NUMBER = Pattern.compile("\\d+\\.\\d{3,}");
  private static final Pattern LITTER = Pattern.compile(".*\\.(part|old|tmp|new)");
  private static final List<String> COST_WORDS =
      List.of("labor_usd_per_h", "overhead_pct", "margin_pct", "waste_pct");

  private final PriceBook book;

  Invariants(PriceBook book) {
    this.book = book;
  }

  /**
   * Holds all of them against a job as it lies there.
   *
   * @param before its files before the command
   * @param isSettled whether an order or the last bill was just written: an order that is refused
   *     while another is out stands against it until the next
   */
  void hold(Scene scene, Map<String, String> before, boolean isSettled) {
    Map<String, String> now = Scene.files(scene.disk());
    noLitter(scene, now);
    everyTableIsWhole(scene, before, now);
    everyDocumentIsWhole(scene, now);
    noOwnerReadsACost(scene, before, now);
    noMarkVanishes(scene, now);
    stopsStay(scene);
    Ledger ledger = new Ledger(scene.life());
    if (isSettled) {
      ledger.nothingIsBilledTwice(scene);
    }
    ledger.ordersAddUp(scene);
    ledger.invoiceAddsUp(scene);
    aClosedJobStandsOnceInTheHistory(scene, now);
  }

  private static void noLitter(Scene scene, Map<String, String> now) {
    now.keySet().stream()
        .filter(name -> LITTER.matcher(name).matches())
        .findFirst()
        .ifPresent(
            name -> {
              throw scene.broken("litter: %s", name);
            });
  }

  /** One that the command left as it was is as whole as before. */
  private static void everyTableIsWhole(
      Scene scene, Map<String, String> before, Map<String, String> now) {
    now.forEach(
        (name, text) -> {
          if (name.endsWith(".csv") && !text.equals(before.get(name))) {
            Typed table = Typed.of(scene.disk().text(name));
            boolean isWhole =
                text.endsWith("\n")
                    && table.rows().stream()
                        .allMatch(row -> row.size() == table.header().size() || row.size() == 1);
            if (!isWhole) {
              throw scene.broken("%s is half written", name);
            }
          }
        });
  }

  /** Each is the one that was sent, and nothing lies beside them. */
  private static void everyDocumentIsWhole(Scene scene, Map<String, String> now) {
    String folder = scene.life().folder + "/sent/";
    Set<String> kept = new TreeSet<>();
    for (Map<String, String> sent : scene.life().table("sent.csv", "none").named()) {
      String file = folder + sent.get("file");
      kept.add(file);
      if (!now.containsKey(file) || !hash(now.get(file)).equals(sent.get("file_sha256"))) {
        throw scene.broken("%s is not what was sent", file);
      }
    }
    now.keySet().stream()
        .filter(name -> name.startsWith(folder) && !kept.contains(name))
        .filter(name -> !name.endsWith("-estimate.xlsx"))
        .findFirst()
        .ifPresent(
            name -> {
              throw scene.broken("%s was never sent", name);
            });
  }

  private static String hash(String file) {
    try {
      byte[] bytes = file.getBytes(StandardCharsets.ISO_8859_1);
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private void noOwnerReadsACost(Scene scene, Map<String, String> before, Map<String, String> now) {
    now.forEach(
        (name, file) -> {
          boolean isOwners = name.endsWith(".xlsx") && !name.endsWith("estimate.xlsx");
          if (isOwners && !file.equals(before.get(name))) {
            parts(file).forEach(part -> noCostIn(scene, name, part));
          }
        });
  }

  private void noCostIn(Scene scene, String name, String part) {
    Matcher number = NUMBER.matcher(part);
    Set<BigDecimal> secrets =
        book.secrets().stream().map(BigDecimal::stripTrailingZeros).collect(Collectors.toSet());
    while (number.find()) {
      BigDecimal said = new BigDecimal(number.group()).stripTrailingZeros();
      if (secrets.contains(said)) {
        throw scene.broken("%s holds a cost: %s", name, number.group());
      }
    }
    COST_WORDS.stream()
        .filter(part::contains)
        .forEach(
            word -> {
              throw scene.broken("%s holds a cost: %s", name, word);
            });
  }

  /** The text of a file, or of each part of a packed one. */
  private static List<String> parts(String file) {
    if (!file.startsWith("PK")) {
      return List.of(file);
    }
    List<String> parts = new ArrayList<>();
    byte[] bytes = file.getBytes(StandardCharsets.ISO_8859_1);
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        boolean isLook = entry.getName().contains("drawing") || entry.getName().contains("styles");
        String text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        if (!isLook) {
          parts.add(text);
        }
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return parts;
  }

  /** All that were ever found are in the table, and the deck record says what became of each. */
  private static void noMarkVanishes(Scene scene, Map<String, String> now) {
    Set<String> there =
        scene.life().table("marks.csv", "mark").named().stream()
            .map(row -> row.get("mark"))
            .collect(Collectors.toSet());
    if (!there.containsAll(scene.life().marks)) {
      throw scene.broken("marks are lost: %s of %s", there, scene.life().marks);
    }
    String record = now.get(scene.life().folder + "/sent/deck-record.xlsx");
    if (record != null && !record.startsWith("PK")) {
      Set<String> told = record.lines().map(line -> line.split("=")[0]).collect(Collectors.toSet());
      if (!told.containsAll(scene.life().marks)) {
        throw scene.broken("the deck record tells of %s only", told);
      }
    }
  }

  private static void stopsStay(Scene scene) {
    Life life = scene.life();
    Set<String> told =
        life.table("reports.csv", "report", "seen").named().stream()
            .map(row -> row.get("report") + " " + row.get("seen"))
            .collect(Collectors.toSet());
    if (!told.containsAll(life.stops)) {
      throw scene.broken("stops are lost: %s of %s", told, life.stops);
    }
    if (!life.stops.isEmpty()) {
      Estimate estimate = new Estimate(JobFolder.in(scene.disk().path(life.folder)).job());
      if (estimate.stopTie().holds().holds()) {
        throw scene.broken("%s stop it, and the estimate says that nothing does", life.stops);
      }
    }
  }

  private static void aClosedJobStandsOnceInTheHistory(Scene scene, Map<String, String> now) {
    Life life = scene.life();
    String name = life.folder.substring(life.folder.lastIndexOf('/') + 1);
    String history = now.getOrDefault("/firm/history.csv", "");
    long lines =
        history.isEmpty()
            ? 0
            : Typed.of(history).rows().stream().filter(row -> row.get(0).equals(name)).count();
    boolean isClosed = life.table("job.csv").behind("stage").equals("closed");
    if (lines != (isClosed && !life.house.hasBoards() ? 1 : 0)) {
      throw scene.broken("the history tells of it %d times", lines);
    }
  }
}
