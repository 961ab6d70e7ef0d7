package sheathwright.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheathwright.job.file.NewFile;
import sheathwright.job.office.OfficeFolder;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.TableFolder;

/**
 * Where an office keeps the cases of its own engineer: the folder {@code checked} beside its
 * firm.csv.
 *
 * @param path where it is, or would be
 */
public record CheckedFolder(Path path) {

  /** What it is called. */
  public static final String NAME = "checked";

  /** That of the office in which a folder lies; none, if it lies in none. */
  public static Optional<CheckedFolder> above(Path folder) {
    Path office = OfficeFolder.of(folder).top();
    return Files.exists(office.resolve(OfficeFolder.FIRM))
        ? Optional.of(new CheckedFolder(office.resolve(NAME)))
        : Optional.empty();
  }

  /**
   * All tables in it, run.
   *
   * @throws ProblemsException if one cannot be read, with all that is wrong
   */
  public List<OfficeCases> cases() {
    List<OfficeCases> cases = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    for (String name : tables()) {
      try {
        cases.add(OfficeCases.of(CsvFile.read(path.resolve(name), NAME + "/" + name)));
      } catch (ProblemsException wrong) {
        problems.addAll(wrong.problems());
      }
    }
    if (!problems.isEmpty()) {
      throw new ProblemsException(problems);
    }
    return cases;
  }

  /** Whether a file lies in it already. */
  public boolean holds(Path file) {
    return file.toAbsolutePath().normalize().startsWith(path);
  }

  /**
   * Keeps a table.
   *
   * @throws ProblemsException if one of its name is kept already and may not be replaced
   */
  public Path keep(String name, byte[] table, boolean mayReplace) {
    Path kept = path.resolve(name);
    try {
      Files.createDirectories(path);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    NewFile.at(kept, mayReplace).write(table);
    return kept;
  }

  private List<String> tables() {
    return Files.isDirectory(path) ? new TableFolder(path).looksLikeTables() : List.of();
  }
}
