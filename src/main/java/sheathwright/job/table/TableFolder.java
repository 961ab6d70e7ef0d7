package sheathwright.job.table;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sheathwright.catalog.NaturalOrder;

/**
 * A folder in which tables lie, each in a file of its name.
 *
 * @param path where it is
 */
public record TableFolder(Path path) {

  private static final String ENDING = ".csv";
  private static final String TEXT = ".txt";

  /**
   * A folder that is there.
   *
   * @param what such a folder is, for whoever names none
   * @throws ProblemsException if it is none
   */
  public static TableFolder at(Path path, String what) {
    if (!Files.isDirectory(path)) {
      throw new ProblemsException(
          List.of(new Problem(String.valueOf(path), 0, "", "there is no such folder; " + what)));
    }
    return new TableFolder(path);
  }

  /** What it is called in messages. */
  public String name() {
    return String.valueOf(path);
  }

  /** Whether a file of this name lies in it. */
  public boolean has(String file) {
    return Files.exists(path.resolve(file));
  }

  /**
   * A table, if it is there and can be told apart into cells.
   *
   * @param problems takes what is wrong with it
   */
  public Optional<CsvFile> table(String file, Consumer<Problem> problems) {
    try {
      return has(file) ? Optional.of(CsvFile.read(path.resolve(file))) : Optional.empty();
    } catch (ProblemsException broken) {
      broken.problems().forEach(problems);
      return Optional.empty();
    }
  }

  /**
   * The names of the files that look like tables, whatever table that is.
   *
   * @throws ProblemsException if the folder cannot be read
   */
  public List<String> looksLikeTables() {
    return entries(entry -> true)
        .map(entry -> entry.getFileName().toString())
        .filter(TableFolder::isLikeATable)
        .toList();
  }

  /**
   * The folders in it, but not the hidden ones.
   *
   * @throws ProblemsException if it cannot be read
   */
  public List<TableFolder> folders() {
    return entries(Files::isDirectory)
        .filter(entry -> !entry.getFileName().toString().startsWith("."))
        .map(TableFolder::new)
        .toList();
  }

  private Stream<Path> entries(Predicate<Path> isMeant) {
    try (Stream<Path> entries = Files.list(path)) {
      return entries
          .filter(isMeant)
          .sorted(
              Comparator.comparing(entry -> entry.getFileName().toString(), NaturalOrder.OF_NAMES))
          .toList()
          .stream();
    } catch (IOException unreadable) {
      throw new ProblemsException(List.of(new Problem(name(), 0, "", "the folder cannot be read")));
    }
  }

  private static boolean isLikeATable(String name) {
    return !name.startsWith(".") && tableName(name).endsWith(ENDING);
  }

  /**
   * The name of the table that a file was meant to be: editors put a second ending behind a name
   * that already has one.
   */
  public static String tableName(String file) {
    String folded = file.strip().toLowerCase(Locale.ROOT);
    return folded.endsWith(ENDING + TEXT)
        ? folded.substring(0, folded.length() - TEXT.length())
        : folded;
  }
}
