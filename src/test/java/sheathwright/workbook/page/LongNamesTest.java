package sheathwright.workbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.CsvFile;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.Perturbed;
import sheathwright.workbook.home.HomeBook;

/** Planes of any number and name make a workbook whose own names are short, told apart, stable. */
class LongNamesTest {

  /** The most that a spreadsheet program allows a name. */
  private static final int ALLOWED = 255;

  private static byte[] book(List<String> planes) {
    StringBuilder table = new StringBuilder("plane,eave_ft,slope_length_ft\n");
    planes.forEach(plane -> table.append('"').append(plane).append("\",8,4\n"));
    var files = Perturbed.files(Samples.tables("quince-hollow"));
    files.remove("zones"); // of the planes that are renamed here
    files.put("planes", CsvFile.parse("planes.csv", table.toString()));
    Estimate estimate = new Estimate(Job.of(new JobTables(files)));
    assertNamed(HomeBook.of(estimate).bytes());
    return JobBook.estimate(estimate).bytes();
  }

  private static void assertNamed(byte[] file) {
    Set<String> seen = new HashSet<>();
    try (XSSFWorkbook workbook = Cells.opened(file)) {
      for (Name name : workbook.getAllNames()) {
        if (!name.getNameName().startsWith("_")) {
          assertThat(name.getNameName()).matches("[A-Za-z_][A-Za-z0-9_]*");
          assertThat(name.getNameName().length()).isLessThanOrEqualTo(ALLOWED);
          assertThat(seen.add(name.getNameName().toLowerCase(Locale.ROOT))).isTrue();
        }
      }
    } catch (java.io.IOException broken) {
      throw new java.io.UncheckedIOException(broken);
    }
    assertThat(Agreement.differences(Cells.written(file), Cells.byPoi(file))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {12, 40})
  void manyPlanesWithOrdinaryNames(int count) {
    List<String> planes =
        java.util.stream.IntStream.rangeClosed(1, count)
            .mapToObj(i -> "North slope above the kitchen addition " + i)
            .toList();
    byte[] book = book(planes);
    assertNamed(book);
    assertThat(book(planes)).isEqualTo(book);
  }

  @Test
  void namesOfOtherLetters_andThoseThatDifferInThemAlone() {
    assertNamed(book(List.of("🏠", "🏡", "Süd", "Säd", "SÜD", "kitchen", "Kitchen", "R1C1", "a1")));
  }

  @Test
  void theLongestNames_thatDifferInTheirLastLetter() {
    assertNamed(book(List.of("x".repeat(60), "x".repeat(59) + "y", "x".repeat(59) + "z")));
  }
}
