package sheathwright.job.season;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.life.FirmTables;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.TableFolder;

/**
 * The jobs of a season. They lie in one folder, either as tables that all of them share, where
 * {@code jobs.csv} has a line for each job and a column {@code job} in the others says whose a line
 * is, or as a folder for each job.
 *
 * <p>The firm's own tables, {@code history.csv} and {@code callbacks.csv}, lie beside them.
 */
public final class Season {

  /** A table of one line a job, written beside them. */
  public static final String SUMMARY = "season.csv";

  /** What the jobs teach the rates, written beside them. */
  public static final String PROPOSED = "rates-proposed.csv";

  /** What is written beside the jobs and not read again. */
  static final Set<String> WRITTEN = Set.of(SUMMARY, PROPOSED);

  private final Path folder;
  private final List<SeasonJob> jobs;

  private Season(Path folder, List<SeasonJob> jobs) {
    this.folder = folder;
    this.jobs = List.copyOf(jobs);
  }

  /** Whether a folder holds a season, and not one job. */
  public static boolean isOne(Path folder) {
    TableFolder tables = new TableFolder(folder);
    return tables.has(JobTables.SEASON)
        || Files.isDirectory(folder)
            && !isAJob(tables)
            && tables.folders().stream().anyMatch(Season::isAJob);
  }

  /**
   * The season in a folder.
   *
   * @throws ProblemsException with everything that is wrong with how its jobs are told apart
   */
  public static Season in(Path folder) {
    TableFolder tables =
        TableFolder.at(folder, "a season is a folder of tables, or of job folders");
    List<TableFolder> own = tables.folders().stream().filter(Season::isAJob).toList();
    if (!tables.has(JobTables.SEASON) && own.isEmpty() && isAJob(tables)) {
      String message = "it is the folder of one job; name the one above it, where all jobs lie";
      throw new ProblemsException(List.of(new Problem(tables.name(), 0, "", message)));
    }
    if (!tables.has(JobTables.SEASON)) {
      return new Season(folder, ofFolders(tables, own));
    }
    if (!own.isEmpty()) {
      String message =
          "the folder has this table and a job in %s; keep a season either way, not both";
      throw new ProblemsException(
          List.of(new Problem(JobTables.SEASON, 0, "", message.formatted(own.get(0).name()))));
    }
    return new Season(folder, new SharedTables(tables).jobs());
  }

  /**
   * The same, or a folder that holds a history and no job yet.
   *
   * @throws ProblemsException if it is neither, or with everything that is wrong with its jobs
   */
  public static Season orHistoryIn(Path folder) {
    boolean isHistory =
        !isOne(folder) && new TableFolder(folder).has(FirmTables.Table.HISTORY.file());
    return isHistory ? new Season(folder, List.of()) : in(folder);
  }

  /** Whether a table of a job lies in a folder: those of the office may lie above its jobs. */
  private static boolean isAJob(TableFolder folder) {
    return Stream.of(JobTable.values())
        .filter(table -> !table.isOfTheOffice())
        .anyMatch(table -> folder.has(table.file()));
  }

  private static List<SeasonJob> ofFolders(TableFolder season, List<TableFolder> folders) {
    List<Problem> problems = new ArrayList<>();
    List<String> firm =
        Stream.concat(
                Stream.of(FirmTables.Table.values()).map(FirmTables.Table::file),
                Stream.of(JobTable.values()).filter(JobTable::isOfTheOffice).map(JobTable::file))
            .toList();
    season.looksLikeTables().stream()
        .filter(name -> !firm.contains(name) && !WRITTEN.contains(name))
        .map(name -> new Problem(name, 0, "", JobTables.unknown(name, firm, "firm's")))
        .forEach(problems::add);
    if (folders.isEmpty()) {
      String message =
          "no job is here; a season has the table %s, or a folder for each of its jobs";
      problems.add(new Problem(season.name(), 0, "", message.formatted(JobTables.SEASON)));
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return folders.stream().map(Season::ofItsOwn).toList();
  }

  private static SeasonJob ofItsOwn(TableFolder folder) {
    String name = folder.path().getFileName().toString();
    return new SeasonJob(
        name,
        folder.path(),
        () -> JobTables.in(folder.path()),
        said -> inside(folder, name + "/", said));
  }

  /** A problem of a job's folder as the folder above says it, once. */
  private static Problem inside(TableFolder job, String name, Problem said) {
    boolean isSaid = said.file().equals(job.name()) || said.file().startsWith(name);
    return new Problem(
        isSaid ? said.file() : name + said.file(), said.line(), said.column(), said.message());
  }

  /** Where it lies. */
  public Path folder() {
    return folder;
  }

  /** Its jobs: in the order of their table, or as their folders are counted. */
  public List<SeasonJob> jobs() {
    return jobs;
  }

  /**
   * What is made of each of its jobs, in their order.
   *
   * @throws ProblemsException with everything that is refused of any of them, each once
   */
  public <T> List<T> ofEach(Function<SeasonJob, T> made) {
    List<T> all = new ArrayList<>();
    Set<Problem> problems = new LinkedHashSet<>();
    for (SeasonJob job : jobs) {
      try {
        all.add(job.said(() -> made.apply(job)));
      } catch (ProblemsException wrong) {
        problems.addAll(wrong.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(List.copyOf(problems));
    }
    return all;
  }

  /**
   * What the firm keeps beside its jobs.
   *
   * @throws ProblemsException with everything that is wrong with it
   */
  public FirmTables firm() {
    return FirmTables.in(folder);
  }
}
