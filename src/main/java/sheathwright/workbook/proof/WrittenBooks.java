package sheathwright.workbook.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import sheathwright.job.Estimate;
import sheathwright.life.record.JobFolder;
import sheathwright.proof.Shipped;
import sheathwright.workbook.calculator.CalculatorBook;
import sheathwright.workbook.page.JobBooks;

/**
 * The workbooks that are written to be worked out anew: both of the house that the program carries,
 * and all functions as calculators.
 */
final class WrittenBooks {

  private static final String HOUSE = "proof/house";

  private WrittenBooks() {}

  /** Their bytes by their names. */
  static Map<String, byte[]> made() {
    Map<String, byte[]> books = new LinkedHashMap<>();
    JobBooks house = house();
    books.put("estimate.xlsx", house.office());
    books.put("quote.xlsx", house.homeowner());
    books.put("calculators.xlsx", CalculatorBook.ofAll());
    return books;
  }

  private static JobBooks house() {
    try {
      Path folder = Files.createTempDirectory("sheathwright");
      try {
        for (Map.Entry<String, byte[]> table : Shipped.below(HOUSE).entrySet()) {
          Files.write(folder.resolve(table.getKey()), table.getValue());
        }
        return JobBooks.of(new Estimate(JobFolder.in(folder).job()));
      } finally {
        emptied(folder);
      }
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
  }

  private static void emptied(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
