package sheathwright.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;
import sheathwright.job.life.FirmTables;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;

/**
 * The tables of one job, as they lie in a folder, and what each may hold.
 *
 * @param files by the {@linkplain JobTable table}'s word
 * @param folder where pictures lie beside them, if they lie in a folder
 */
public record JobTables(Map<String, RowSource> files, Optional<Path> folder) {

  /** Heads what a key of a workbook's tab counts as until somebody says it. */
  public static final String UNTIL_SAID = "until_said";

  /** Tables that lie nowhere. */
  public JobTables(Map<String, ? extends RowSource> files) {
    this(new LinkedHashMap<>(files), Optional.empty());
  }

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
    Map<String, RowSource> files = new LinkedHashMap<>();
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
    return new JobTables(files, Optional.of(folder));
  }

  /**
   * Reads the tables on the tabs of a workbook.
   *
   * @param folder where it lies, with pictures beside it
   * @throws ProblemsException with everything that is wrong with the tabs
   */
  public static JobTables in(TableBook book, Path folder) {
    Map<String, RowSource> files = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (JobTable table : JobTable.values()) {
      Collection<String> known =
          table
              .keys()
              .<Collection<String>>map(keys -> List.of(keys.key(), keys.value()))
              .orElseGet(() -> TableGuide.fields(table).keySet());
      try {
        Optional<SheetTable> found =
            book.table(table.word(), known)
                .map(
                    tab ->
                        table.keys().map(keys -> tab.said(keys.value(), UNTIL_SAID)).orElse(tab));
        Optional<Path> beside = found.isEmpty() ? beside(table, folder) : Optional.empty();
        found.ifPresent(tab -> files.put(table.word(), tab));
        beside.ifPresent(file -> files.put(table.word(), CsvFile.read(file)));
        if (found.isEmpty() && beside.isEmpty() && table.isNeeded()) {
          String message = "the tab %s is missing; quote an estimate, or the job's folder";
          problems.add(new Problem(book.name(), 0, "", message.formatted(table.word())));
        }
      } catch (ProblemsException broken) {
        problems.addAll(broken.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    JobTables tables = new JobTables(files, Optional.of(folder));
    files
        .entrySet()
        .removeIf(
            table -> table.getValue().lines().isEmpty() && !tables.mayBeEmpty(table.getKey()));
    return tables;
  }

  /** A tab that nobody has filled in is none; but once the deck is open, no mark is a finding. */
  private boolean mayBeEmpty(String table) {
    return table.equals(JobTable.MARKS.word())
        && Stream.of(Stage.OPENED, Stage.CLOSED)
            .anyMatch(stage -> stage.word().equalsIgnoreCase(facts().get(LifeFields.STAGE.name())));
  }

  /** What the office charges by stands beside a workbook that has not the tab, or above it. */
  private static Optional<Path> beside(JobTable table, Path folder) {
    boolean isOfTheOffice =
        List.of(JobTable.PRICES, JobTable.LUMBER, JobTable.RATES, JobTable.RULES).contains(table);
    return Stream.of(folder, folder.toAbsolutePath().normalize().getParent())
        .filter(place -> isOfTheOffice && place != null)
        .map(place -> place.resolve(table.file()))
        .filter(Files::exists)
        .findFirst();
  }

  /** Files that look like tables, under names that no job knows: nobody would read them. */
  private static List<Problem> overlooked(Path folder) {
    List<String> known = Stream.of(JobTable.values()).map(JobTable::file).toList();
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .map(entry -> entry.getFileName().toString())
          .filter(name -> looksLikeATable(name) && !known.contains(name))
          .sorted()
          .map(name -> new Problem(name, 0, "", overlooked(name, known)))
          .toList();
    } catch (IOException unreadable) {
      String message = "the folder cannot be read";
      return List.of(new Problem(String.valueOf(folder), 0, "", message));
    }
  }

  private static String overlooked(String name, List<String> known) {
    return FirmTables.named(withoutText(name))
        .map(
            firm ->
                "it is not a table of one job but of the firm, beside its jobs; move it to the folder above")
        .orElseGet(
            () ->
                "no job table has that name%s; the tables are %s; rename it, or keep it elsewhere"
                    .formatted(Nearest.asked(withoutText(name), known), String.join(", ", known)));
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
    return says(List.of(FramingFields.SISTER_CHOICE.get(0)));
  }

  /** Whether the job gives any of these facts. */
  boolean says(List<Field<?>> facts) {
    return facts.stream().map(Field::name).anyMatch(facts()::containsKey);
  }

  /** What the job's facts say, unread, by their keys; blank ones left out. */
  private Map<String, String> facts() {
    RowSource job = file(JobTable.JOB);
    Keys keys = JobTable.JOB.keys().orElseThrow();
    int key = job.header().indexOf(keys.key());
    int value = job.header().indexOf(keys.value());
    Map<String, String> facts = new HashMap<>();
    if (key >= 0 && value >= 0) {
      job.lines().stream()
          .filter(line -> !line.cells().get(value).isBlank())
          .forEach(
              line -> facts.put(line.cells().get(key).strip(), line.cells().get(value).strip()));
    }
    return facts;
  }

  /** Whether readings stand at several stations of a rafter. */
  boolean surveysRafters() {
    return has(JobTable.READINGS)
        && file(JobTable.READINGS).header().contains(PlaceFields.UP.name());
  }

  boolean has(JobTable table) {
    return files.containsKey(table.word());
  }

  Optional<RowSource> found(JobTable table) {
    return Optional.ofNullable(files.get(table.word()));
  }

  RowSource file(JobTable table) {
    return files.get(table.word());
  }
}
