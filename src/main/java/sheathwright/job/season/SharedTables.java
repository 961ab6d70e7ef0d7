package sheathwright.job.season;

import static java.util.stream.Collectors.joining;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.catalog.Nearest;
import sheathwright.catalog.TypedCell;
import sheathwright.figure.Choice;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.job.JobTable;
import sheathwright.job.JobTables;
import sheathwright.job.TableGuide;
import sheathwright.job.life.FirmTables;
import sheathwright.job.office.OfficeFolder;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Meant;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.RowSource;
import sheathwright.job.table.TableColumns;
import sheathwright.job.table.TableFolder;

/** The tables of a season that all of its jobs share, told apart job by job. */
final class SharedTables {

  private static final Field<Choice<String>> JOB = Field.name("job", "Job");

  /** Tables of the office, which hold for every job; their columns that tell two lines apart. */
  private static final Map<JobTable, List<String>> OFFICE =
      Map.of(
          JobTable.PRICES, List.of("item"),
          JobTable.RATES, List.of("rate"),
          JobTable.LUMBER, List.of("size", "length_ft"),
          JobTable.RULES, List.of(),
          JobTable.FIRM, List.of("key"));

  /** What no file system lets stand in a folder's name. */
  private static final Pattern NO_FOLDER = Pattern.compile(".*[/\\\\:*?\"<>|].*|\\.+|.*\\.");

  private final TableFolder folder;
  private final OfficeFolder office;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<JobTable, CsvFile> files = new EnumMap<>(JobTable.class);
  private final Map<String, RowSource.Line> named = new LinkedHashMap<>();
  private final Optional<CsvFile> facts;

  SharedTables(TableFolder folder) {
    this.folder = folder;
    this.office = OfficeFolder.of(folder.path());
    overlooked();
    facts = folder.table(JobTables.SEASON, problems::add);
    facts.ifPresent(this::name);
    for (JobTable table : JobTable.values()) {
      if (table != JobTable.JOB) {
        table(table).ifPresent(file -> files.put(table, file));
      }
    }
    if (isSound(JobTables.SEASON)) {
      files.forEach(this::hold);
    }
    Stream.of(JobTable.values()).filter(JobTable::isNeeded).forEach(this::need);
    if (!problems.isEmpty()) {
      throw new ProblemsException(Problem.inOrder(problems));
    }
  }

  /**
   * A table of the season; one of the office may lie in a folder above it, and the nearest wins.
   */
  private Optional<CsvFile> table(JobTable table) {
    Optional<Path> above =
        folder.has(table.file()) || !table.isOfTheOffice()
            ? Optional.empty()
            : office.nearest(table.file());
    if (above.isEmpty()) {
      return folder.table(table.file(), problems::add);
    }
    try {
      return Optional.of(CsvFile.read(above.get(), office.name(above.get())));
    } catch (ProblemsException broken) {
      problems.addAll(broken.problems());
      return Optional.empty();
    }
  }

  /** The jobs, in the order of their table. */
  List<SeasonJob> jobs() {
    return named.keySet().stream().map(this::job).toList();
  }

  private SeasonJob job(String name) {
    Map<String, RowSource> own = new LinkedHashMap<>();
    own.put(JobTable.JOB.word(), turned(name));
    files.forEach((table, file) -> own.put(table.word(), rows(table, file, name)));
    JobTables tables = new JobTables(own, Optional.of(folder.path()));
    return new SeasonJob(name, folder.path(), () -> tables, said -> said(name, said));
  }

  private RowSource turned(String name) {
    return TurnedRow.of(
        facts.orElseThrow(), JobTable.JOB.keys().orElseThrow(), named.get(name), keys());
  }

  private static Set<String> keys() {
    return TableGuide.fields(JobTable.JOB).keySet();
  }

  /** What is wrong with no line of a table is wrong with a job: a problem that says so, once. */
  private static Problem said(String name, Problem said) {
    String file = said.file().equals(JobTable.JOB.file()) ? JobTables.SEASON : said.file();
    String job = "job %s: ".formatted(name);
    boolean isSaid = said.line() > 0 || said.message().startsWith(job);
    return new Problem(
        file, said.line(), said.column(), isSaid ? said.message() : job + said.message());
  }

  /**
   * The lines of a job; what the office says for it alone stands instead of what it says of all.
   */
  private static RowSource rows(JobTable table, CsvFile file, String job) {
    int column = file.header().indexOf(JOB.name());
    List<RowSource.Line> own =
        file.lines().stream().filter(line -> isOf(line, column, job)).toList();
    if (!OFFICE.containsKey(table)) {
      return JobRows.of(file, column, own);
    }
    List<Integer> apart = OFFICE.get(table).stream().map(file.header()::indexOf).toList();
    Set<List<String>> overridden = new HashSet<>();
    own.forEach(line -> overridden.add(cells(line, apart)));
    return JobRows.of(
        file,
        column,
        file.lines().stream()
            .filter(
                line ->
                    isOf(line, column, job)
                        || isOf(line, column, "") && !overridden.contains(cells(line, apart)))
            .toList());
  }

  private static boolean isOf(RowSource.Line line, int column, String job) {
    return column < 0 ? job.isEmpty() : line.cells().get(column).strip().equals(job);
  }

  private static List<String> cells(RowSource.Line line, List<Integer> columns) {
    return columns.stream()
        .map(column -> column < 0 ? "" : line.cells().get(column).strip())
        .toList();
  }

  /** What the jobs are called, each once. */
  private void name(CsvFile file) {
    List<String> known = new ArrayList<>(keys());
    known.add(0, JOB.name());
    TableColumns columns =
        TableColumns.of(
            file, Meant.of(known), List.of(JOB.name()), TableColumns::isNote, "the table", "note");
    problems.addAll(columns.unknown());
    problems.addAll(columns.missing());
    if (!columns.missing().isEmpty()) {
      return;
    }
    Set<String> folded = new HashSet<>();
    for (RowSource.Line line : file.lines()) {
      String job = columns.cell(line, JOB.name()).strip();
      wrongWith(job, folded)
          .ifPresentOrElse(message -> problem(file, line, message), () -> named.put(job, line));
    }
    if (file.lines().isEmpty()) {
      problems.add(new Problem(file.name(), 0, "", "it has no lines under its heading"));
    }
  }

  private static Optional<String> wrongWith(String job, Set<String> folded) {
    try {
      JOB.read(JOB.name(), job, Source.GIVEN);
    } catch (RefusedException unreadable) {
      return Optional.of(unreadable.getMessage());
    }
    if (NO_FOLDER.matcher(job).matches()) {
      String message =
          "\"%s\" is given, but the job's workbooks go into a folder of that name, which has none of / \\ : * ? \" < > | and no dot at its end; try %s";
      String good = job.replaceAll("[/\\\\:*?\"<>|.]+", "-").replaceAll("^-|-$", "");
      return Optional.of(message.formatted(job, good.isEmpty() ? "job-1" : good));
    }
    return folded.add(job.toLowerCase(Locale.ROOT))
        ? Optional.empty()
        : Optional.of("\"%s\" appears twice; give each job one line".formatted(job));
  }

  /** Every line of a table belongs to a job that is named, or to all where it is the office's. */
  private void hold(JobTable table, CsvFile file) {
    boolean isOffice = OFFICE.containsKey(table);
    int column = file.header().indexOf(JOB.name());
    if (column < 0) {
      if (!isOffice) {
        String message =
            "this column is missing: it says whose each line is; the file has "
                + String.join(", ", file.header());
        problems.add(new Problem(file.name(), 1, JOB.name(), message));
      }
      return;
    }
    if (file.header().lastIndexOf(JOB.name()) > column) {
      problems.add(new Problem(file.name(), 1, JOB.name(), "this column appears twice"));
      return;
    }
    if (table == JobTable.RULES) {
      String message = "the firm's rules hold for every job; take this column out";
      problems.add(new Problem(file.name(), 1, JOB.name(), message));
      return;
    }
    Map<String, List<RowSource.Line>> strange = new LinkedHashMap<>();
    for (RowSource.Line line : file.lines()) {
      String job = line.cells().get(column).strip();
      boolean isKnown = named.containsKey(job) || isOffice && job.isEmpty();
      if (!isKnown) {
        strange.computeIfAbsent(job, any -> new ArrayList<>()).add(line);
      }
    }
    strange.forEach((job, lines) -> problem(file, lines.get(0), strange(job, lines.size() - 1)));
  }

  private String strange(String job, int more) {
    String has = "; it has " + named.keySet().stream().limit(12).collect(joining(", "));
    String all = named.size() > 12 ? has + " and %s more".formatted(named.size() - 12) : has;
    String others =
        switch (more) {
          case 0 -> "";
          case 1 -> "; so has 1 more line";
          default -> "; so have %s more lines".formatted(more);
        };
    return (job.isEmpty()
            ? "it is empty; give the job whose line this is, as %s calls it"
                .formatted(JobTables.SEASON)
            : "\"%s\" is not a job of %s%s"
                .formatted(job, JobTables.SEASON, Nearest.asked(job, named.keySet())))
        + all
        + others;
  }

  /** That no job can do without a table, nor without a line in it that is its own. */
  private void need(JobTable table) {
    if (table == JobTable.JOB) {
      return;
    }
    boolean isThere =
        table.isOfTheOffice() ? office.nearest(table.file()).isPresent() : folder.has(table.file());
    if (!isThere) {
      problems.add(JobTables.missing(table, folder.name() + JobTables.above(table, office)));
    }
    CsvFile file = files.get(table);
    boolean isUnclear = !isSound(JobTables.SEASON) || !isSound(table.file());
    if (file == null || OFFICE.containsKey(table) || isUnclear) {
      return;
    }
    for (var each : named.entrySet()) {
      String job = each.getKey();
      if (rows(table, file, job).isNothing()) {
        String message = "no line is of the job \"%s\" (%s, line %s); every job has %s";
        problems.add(
            new Problem(
                file.name(),
                0,
                "",
                message.formatted(job, JobTables.SEASON, each.getValue().number(), table.word())));
      }
    }
  }

  /** Whether nothing is wrong with a table, as far as was looked. */
  private boolean isSound(String name) {
    return problems.stream().noneMatch(problem -> problem.file().equals(name));
  }

  private void problem(CsvFile file, RowSource.Line line, String message) {
    problems.add(
        new Problem(file.name(), line.number(), JOB.name(), TypedCell.under(JOB.name(), message)));
  }

  /** Files that look like tables, under names that no season knows. */
  private void overlooked() {
    List<String> known =
        Stream.of(
                Stream.of(JobTables.SEASON),
                Stream.of(JobTable.values())
                    .filter(table -> table != JobTable.JOB)
                    .map(JobTable::file),
                Stream.of(FirmTables.Table.values()).map(FirmTables.Table::file))
            .flatMap(names -> names)
            .toList();
    for (String name : folder.looksLikeTables()) {
      if (name.equals(JobTable.JOB.file())) {
        String message =
            "in a season the facts of the jobs stand in %s, a line a job, its headings the keys of this table; move them there";
        problems.add(new Problem(name, 0, "", message.formatted(JobTables.SEASON)));
      } else if (!known.contains(name) && !Season.WRITTEN.contains(name)) {
        problems.add(new Problem(name, 0, "", JobTables.unknown(name, known, "season's")));
      }
    }
  }
}
