package sheathwright.life.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.JobFields;
import sheathwright.job.JobTable;
import sheathwright.job.TableGuide.For;
import sheathwright.job.TableGuide.Part;
import sheathwright.job.life.LifeFields;
import sheathwright.job.life.Stage;
import sheathwright.job.office.FirmKeys;
import sheathwright.job.office.OfficeFolder;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.Keys;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.life.record.Writing;

/** The first tables of a job or of an office, in a folder that has none of them yet. */
public final class Starting {

  private static final List<JobTable> OF_EVERY_JOB =
      List.of(
          JobTable.JOB,
          JobTable.PLANES,
          JobTable.OPENINGS,
          JobTable.JOINTS,
          JobTable.MARKS,
          JobTable.ZONES,
          JobTable.REPORTS,
          JobTable.PHOTOS,
          JobTable.STAGES,
          JobTable.OPTIONS,
          JobTable.INSPECTIONS,
          JobTable.LOG);

  private static final List<JobTable> OF_RAFTERS =
      List.of(JobTable.RAFTERS, JobTable.READINGS, JobTable.LAYERS);

  private static final List<JobTable> OF_AN_OFFICE =
      List.of(JobTable.FIRM, JobTable.PRICES, JobTable.RATES, JobTable.LUMBER, JobTable.RULES);

  /** What a job needs if its office does not keep it. */
  private static final List<JobTable> PRICE_BOOK =
      List.of(JobTable.PRICES, JobTable.RATES, JobTable.LUMBER);

  private static final List<String> GABLE = List.of("A", "B");
  private static final List<String> HIP = List.of("S", "N", "E", "W");

  private static final String A_HIP =
      "a hip: its eave, its slope length, and how far its left and right side lean in; where the sides meet in a point each leans in half of the eave";

  private static final String THERE =
      "it is there already, and new writes over nothing; name a folder without it";

  private final Path folder;
  private final OfficeFolder office;
  private final List<BlankTable> tables = new ArrayList<>();
  private final List<String> fromAbove = new ArrayList<>();
  private final Examples examples = new Examples();

  private Starting(Path folder) {
    this.folder = folder;
    this.office = OfficeFolder.of(folder);
  }

  /**
   * A job's tables.
   *
   * @param isHip whether its roof has hips
   * @param hasMaker whether the covering's maker asks for something
   * @param jobs what it is besides
   */
  public static Starting job(Path folder, boolean isHip, boolean hasMaker, Set<For> jobs) {
    Starting start = new Starting(folder);
    Set<For> kinds = EnumSet.of(For.ALL);
    kinds.addAll(jobs);
    boolean reads = kinds.contains(For.RAFTERS) || kinds.contains(For.STATIONS);
    if (reads) {
      kinds.add(For.RAFTERS);
    }
    OF_EVERY_JOB.forEach(table -> start.add(table, kinds, isHip));
    if (reads) {
      OF_RAFTERS.forEach(table -> start.add(table, kinds, isHip));
    }
    if (hasMaker) {
      start.add(JobTable.MAKER, kinds, isHip);
      start.add(JobTable.PULL_TESTS, kinds, isHip);
    }
    for (JobTable table : PRICE_BOOK) {
      start
          .above(table)
          .ifPresentOrElse(start.fromAbove::add, () -> start.add(table, kinds, isHip));
    }
    start.above(JobTable.FIRM).ifPresent(start.fromAbove::add);
    return start;
  }

  /** An office's tables. */
  public static Starting office(Path folder) {
    Starting start = new Starting(folder);
    OF_AN_OFFICE.forEach(table -> start.add(table, EnumSet.of(For.ALL), false));
    return start;
  }

  private Optional<String> above(JobTable table) {
    return office.nearest(table.file()).map(office::name);
  }

  private void add(JobTable table, Set<For> kinds, boolean isHip) {
    List<Part> parts =
        table == JobTable.READINGS ? List.of(reading(kinds)) : BlankTable.parts(table, kinds);
    tables.add(
        table.keys().isPresent()
            ? BlankTable.ofKeys(table, parts, given(table), saidAbove(table), examples)
            : BlankTable.ofColumns(table, parts, begun(table, isHip), examples));
  }

  /** One way of reading rafters: the tables of both cannot be one. */
  private static Part reading(Set<For> kinds) {
    For way = kinds.contains(For.STATIONS) ? For.STATIONS : For.RAFTERS;
    return BlankTable.parts(JobTable.READINGS, EnumSet.of(way)).get(0);
  }

  private static Map<String, String> given(JobTable table) {
    return table == JobTable.JOB ? Map.of(LifeFields.STAGE.name(), Stage.ASKED.word()) : Map.of();
  }

  /** What the office's own table says for the job. */
  private Set<Field<?>> saidAbove(JobTable table) {
    Set<Field<?>> said = new HashSet<>();
    Optional<Path> firm = office.nearest(JobTable.FIRM.file());
    if (table == JobTable.JOB && firm.isPresent()) {
      said.add(JobFields.PREPARED_BY);
      CsvFile file = CsvFile.read(firm.get(), office.name(firm.get()));
      if (says(file, FirmKeys.NEXT_QUOTE_NUMBER)) {
        said.add(JobFields.QUOTE_NUMBER);
      }
    }
    return said;
  }

  private static boolean says(CsvFile firm, Field<?> field) {
    Keys keys = JobTable.FIRM.keys().orElseThrow();
    int key = firm.header().indexOf(keys.key());
    int value = firm.header().indexOf(keys.value());
    return key >= 0
        && value >= 0
        && firm.lines().stream()
            .filter(line -> line.cells().get(key).strip().equals(field.name()))
            .anyMatch(line -> !line.cells().get(value).isBlank());
  }

  private static List<Map<String, String>> begun(JobTable table, boolean isHip) {
    if (table != JobTable.PLANES) {
      return List.of();
    }
    return (isHip ? HIP : GABLE)
        .stream()
            .map(
                plane ->
                    isHip
                        ? Map.of("plane", plane, "faces", plane, "note", A_HIP)
                        : Map.of("plane", plane))
            .toList();
  }

  /** What was found above the folder and is not written again. */
  public List<String> fromAbove() {
    return fromAbove;
  }

  /** The names of what is written. */
  public List<String> files() {
    return tables.stream().map(BlankTable::file).toList();
  }

  /**
   * Writes all of it.
   *
   * @throws ProblemsException if one of the tables is there already, or the folder cannot be
   *     written; then nothing is
   */
  public void write() {
    List<Problem> there =
        tables.stream()
            .map(BlankTable::file)
            .filter(file -> Files.exists(folder.resolve(file)))
            .map(file -> new Problem(folder.resolve(file).toString(), 0, "", THERE))
            .toList();
    if (!there.isEmpty()) {
      throw new ProblemsException(there);
    }
    Writing writing = new Writing(folder);
    tables.forEach(table -> writing.copiedOnce(folder.resolve(table.file()), table.bytes()));
    writing.write();
  }
}
