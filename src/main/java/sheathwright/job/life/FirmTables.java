package sheathwright.job.life;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheathwright.forecast.House;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.ReadTable;
import sheathwright.job.table.Row;
import sheathwright.job.table.TableReader;
import sheathwright.job.zone.SeenRules;

/**
 * What a firm keeps beside its jobs, in the folder above them: which jobs it closed with what, and
 * who called back.
 *
 * @param history a closed job each
 * @param callbacks a call each
 */
public record FirmTables(List<Row> history, List<Row> callbacks) {

  /** The table of the jobs of a season, whose tables lie together in one folder. */
  public static final String JOBS = "jobs.csv";

  /** Each by the name of its file. */
  public enum Table {
    HISTORY(FirmFields.HISTORY),
    CALLBACKS(FirmFields.CALLBACKS);

    private final List<Field<?>> fields;

    Table(List<Field<?>> fields) {
      this.fields = fields;
    }

    /** The name of its file. */
    public String file() {
      return name().toLowerCase(Locale.ROOT) + ".csv";
    }

    /** Its columns. */
    public List<Field<?>> fields() {
      return fields;
    }

    private ReadTable read(TableReader reader, Path folder) {
      Path file = folder.resolve(file());
      Optional<CsvFile> found =
          Files.exists(file) ? Optional.of(CsvFile.read(file)) : Optional.empty();
      return reader.table(file(), found, fields, true);
    }
  }

  /** The table that a file's name is one of; none for any other. */
  public static Optional<Table> named(String file) {
    return Arrays.stream(Table.values()).filter(table -> table.file().equals(file)).findFirst();
  }

  /**
   * The tables of the firm whose job lies in a folder: in the one above, or in the same where all
   * jobs lie in one. One that is not there has no lines.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with them
   */
  public static FirmTables beside(Path job) {
    Path home = job.toAbsolutePath().normalize();
    boolean isShared = home.getParent() == null || Files.exists(home.resolve(JOBS));
    return in(isShared ? home : home.getParent());
  }

  /**
   * The tables of the firm in a folder. One that is not there has no lines.
   *
   * @throws sheathwright.job.table.ProblemsException with everything that is wrong with them
   */
  public static FirmTables in(Path folder) {
    TableReader reader = new TableReader();
    ReadTable history = Table.HISTORY.read(reader, folder);
    ReadTable callbacks = Table.CALLBACKS.read(reader, folder);
    hold(history);
    reader.raiseProblems();
    return new FirmTables(history.rows(), callbacks.rows());
  }

  /** A line of a history as a house. */
  public static House house(Row row) {
    return new House((int) row.of(FirmFields.SHEETS).value(), (int) row.of(FirmFields.BAD).value());
  }

  /** Says what is wrong with a history: a job twice, or more that is bad or seen than is there. */
  public static void hold(ReadTable history) {
    history.once(FirmFields.JOB);
    for (Row row : history.rows()) {
      history.atMost(row, FirmFields.BAD, FirmFields.SHEETS, "no more is bad than is there");
    }
    SeenRules.hold(history, FirmFields.SHEETS, FirmFields.SEEN, FirmFields.SEEN_BAD);
  }

  /** The closed jobs of a history, as a fit takes them. */
  public List<House> houses() {
    return history.stream().map(FirmTables::house).toList();
  }
}
