package sheathwright.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;
import sheathwright.job.life.FirmTables;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.office.OfficeFolder;
import sheathwright.job.tab.SheetTable;
import sheathwright.job.tab.TableBook;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableFolder;

/**
 * The tables of one job, as they lie in a folder, and what each may hold.
 *
 * @param files by the {@linkplain JobTable table}'s word
 * @param folder where pictures lie beside them, if they lie in a folder
 */
public record JobTables(Map<String, RowSource> files, Optional<Path> folder) {

  /** The table of the jobs of a season, whose tables lie together in one folder. */
  public static final String SEASON = FirmTables.JOBS;

  /** The same without lines of notes, and without tables that nobody has filled in. */
  public JobTables {
    Map<String, RowSource> filled = new LinkedHashMap<>();
    files.forEach(
        (word, file) -> {
          RowSource noted = file.withoutNoteLines();
          boolean isBlank = noted.lines().isEmpty() && !file.lines().isEmpty();
          if (!isBlank || JobTable.named(word).isNeeded()) {
            filled.put(word, noted);
          }
        });
    files = filled;
  }

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
    TableFolder tables = TableFolder.at(folder, "a job is a folder of CSV files");
    if (tables.has(SEASON)) {
      throw new ProblemsException(
          List.of(
              new Problem(
                  SEASON,
                  0,
                  "",
                  "it makes this folder a season of many jobs; name the folder of one job")));
    }
    Map<String, RowSource> files = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>(overlooked(tables));
    OfficeFolder office = OfficeFolder.of(folder);
    for (JobTable table : JobTable.values()) {
      Optional<Path> file =
          table.isOfTheOffice()
              ? office.nearest(table.file())
              : Optional.of(folder.resolve(table.file())).filter(Files::exists);
      if (file.isEmpty()) {
        if (table.isNeeded()) {
          problems.add(missing(table, tables.name() + above(table, office)));
        }
        continue;
      }
      try {
        String called = table.isOfTheOffice() ? office.name(file.get()) : table.file();
        files.put(table.word(), CsvFile.read(file.get(), called));
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
   * What is said of a table that no job can do without.
   *
   * @param where it was looked for
   */
  public static Problem missing(JobTable table, String where) {
    return new Problem(table.file(), 0, "", "this table is missing from " + where);
  }

  /** Where a table of the office was looked for besides. */
  public static String above(JobTable table, OfficeFolder office) {
    int above = office.folders().size() - 1;
    return !table.isOfTheOffice() || above == 0
        ? ""
        : " and from %s above it"
            .formatted(above == 1 ? "the folder" : "the %s folders".formatted(above));
  }

  /**
   * Reads the tables on the tabs of a workbook.
   *
   * @param folder where it lies, with pictures beside it
   * @throws ProblemsException with everything that is wrong with the tabs
   */
  public static JobTables in(TableBook book, Path folder) {
    Map<String, RowSource> files = new LinkedHashMap<>();
    OfficeFolder office = OfficeFolder.of(folder);
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
        Optional<Path> beside =
            found.isEmpty() && table.isOfTheOffice()
                ? office.nearest(table.file())
                : Optional.empty();
        found.ifPresent(tab -> files.put(table.word(), tab));
        beside.ifPresent(file -> files.put(table.word(), CsvFile.read(file, office.name(file))));
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
    return new JobTables(files, Optional.of(folder));
  }

  /** A tab that nobody has filled in is none; but once the deck is open, no mark is a finding. */
  private boolean mayBeEmpty(String table) {
    return table.equals(JobTable.MARKS.word())
        && Stream.of(Stage.OPENED, Stage.CLOSED)
            .anyMatch(stage -> stage.word().equalsIgnoreCase(facts().get(LifeFields.STAGE.name())));
  }

  /** Files that look like tables, under names that no job knows: nobody would read them. */
  private static List<Problem> overlooked(TableFolder folder) {
    List<String> known = Stream.of(JobTable.values()).map(JobTable::file).toList();
    return folder.looksLikeTables().stream()
        .filter(name -> !known.contains(name))
        .map(name -> new Problem(name, 0, "", overlooked(name, known)))
        .toList();
  }

  private static String overlooked(String name, List<String> known) {
    return FirmTables.named(TableFolder.tableName(name))
        .map(
            firm ->
                "it is not a table of one job but of the firm, beside its jobs; move it to the folder above")
        .orElseGet(() -> unknown(name, known, "job"));
  }

  /**
   * What is said of a file that looks like a table under a name that nobody reads.
   *
   * @param known the names that are read
   * @param whose the tables are
   */
  public static String unknown(String name, List<String> known, String whose) {
    return "no %s table has that name; %s"
        .formatted(
            whose,
            Nearest.to(TableFolder.tableName(name), known)
                .map("did you mean %s? Rename it, or keep it elsewhere"::formatted)
                .orElse("./sheathwright tables lists those that there are; keep it elsewhere"));
  }

  /**
   * These with the prices and rates that the office above the job has today, where it has any: a
   * job that was quoted keeps those that its quote was made from.
   *
   * @throws ProblemsException with what is wrong with the office's own
   */
  public JobTables withTheOfficesToday() {
    Map<String, RowSource> others = new LinkedHashMap<>(files);
    folder
        .filter(job -> !new TableFolder(job).has(SEASON))
        .map(OfficeFolder::of)
        .ifPresent(
            office -> {
              for (JobTable table : JobTable.values()) {
                if (table.isOfTheOffice()) {
                  office
                      .nearestAbove(table.file())
                      .ifPresent(
                          file -> others.put(table.word(), CsvFile.read(file, office.name(file))));
                }
              }
            });
    return new JobTables(others, folder);
  }

  /** These without one of them. */
  public JobTables without(JobTable table) {
    Map<String, RowSource> others = new LinkedHashMap<>(files);
    others.remove(table.word());
    return new JobTables(others, folder);
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

  /** The tables that lie in a folder above the job's, by their table. */
  public Map<JobTable, Path> fromAbove() {
    Map<JobTable, Path> above = new EnumMap<>(JobTable.class);
    for (JobTable table : JobTable.values()) {
      found(table, true)
          .filter(file -> file.name().startsWith(".."))
          .flatMap(file -> folder.map(job -> job.resolve(file.name())))
          .ifPresent(file -> above.put(table, file));
    }
    return above;
  }

  /** What a table is called in messages, be it there or not. */
  String name(JobTable table) {
    return found(table, true).map(RowSource::name).orElse(table.file());
  }

  boolean has(JobTable table) {
    return found(table, false).isPresent();
  }

  /**
   * A table, if the job has it.
   *
   * @param mayBeEmpty whether its heading alone says enough: that there is nothing
   */
  Optional<RowSource> found(JobTable table, boolean mayBeEmpty) {
    return Optional.ofNullable(files.get(table.word()))
        .filter(file -> mayBeEmpty || !file.isNothing());
  }

  RowSource file(JobTable table) {
    return files.get(table.word());
  }
}
