package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.Walk;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.book.Cells;
import sheathwright.workbook.book.DropDownsTest;
import sheathwright.workbook.page.Agreement;

/**
 * The library's values against LibreOffice's, for every workbook that the ordinary tests left
 * behind. It runs in the gate, after them.
 */
class RecalculationLibreOfficeCheck {

  private static final Path WORKBOOKS = Path.of("target", "workbooks");
  private static final Path PERTURBED = Path.of("target", "perturbed");

  @TempDir private static Path folder;

  /** All at once: the office program starts once for many files. */
  @BeforeAll
  static void recalculate() throws Exception {
    List<Path> all = new ArrayList<>();
    all.addAll(workbooks());
    for (Path kept : List.of(PERTURBED, DropDownsTest.WALKED, DropDownsTest.REFUSED)) {
      all.addAll(in(kept));
    }
    assertThat(all.stream().map(Path::getFileName)).doesNotHaveDuplicates();
    LibreOffice.convert(all, folder, Recalculation.ALWAYS);
  }

  @Test
  void everyFormulaCell_holdsWhatLibreOfficeRecalculates() throws Exception {
    List<Path> files = workbooks();
    assertThat(files).hasSizeGreaterThanOrEqualTo(40);

    int cells = 0;
    for (Path file : files) {
      Map<String, Object> written = Cells.written(Files.readAllBytes(file));
      assertThat(differences(file, written)).as(file.toString()).isEmpty();
      cells += written.size();
    }
    assertThat(cells).isGreaterThan(900);
  }

  @Test
  void everyChangedInput_isFollowed() throws Exception {
    assertThat(followed(PERTURBED)).isGreaterThan(8);
  }

  @Test
  void everyValueOfEveryDropDown_isFollowed() throws Exception {
    assertThat(followed(DropDownsTest.WALKED)).isGreaterThan(6);
  }

  @Test
  void aValueThatJavaRefuses_leavesAnError() throws Exception {
    List<Path> files = in(DropDownsTest.REFUSED);
    assertThat(files).isNotEmpty();

    for (Path file : files) {
      byte[] recalculated = Files.readAllBytes(folder.resolve(file.getFileName()));
      assertThat(Cells.written(recalculated).values()).as(file.toString()).contains("#error");
    }
  }

  private static int followed(Path edited) throws Exception {
    List<Path> files = in(edited);
    for (Path file : files) {
      Path expected = edited.resolve("expected").resolve(file.getFileName());
      byte[] fresh = Files.readAllBytes(expected);
      byte[] recalculated = Files.readAllBytes(folder.resolve(file.getFileName()));
      assertThat(Agreement.differences(Cells.comparable(fresh), Cells.comparable(recalculated)))
          .as(file.toString())
          .isEmpty();
    }
    return files.size();
  }

  @Test
  void aPlantedWrongValue_isFoundOnlyIfLibreOfficeReallyRecalculates() throws Exception {
    byte[] right = Files.readAllBytes(WORKBOOKS.resolve("quince-hollow-estimate.xlsx"));
    Path planted = folder.resolve("planted.xlsx");
    Files.write(planted, EnginesAgreeTest.planted(right, "quote_total_usd", 1.0));
    Map<String, Object> wrong = Cells.written(Files.readAllBytes(planted));

    LibreOffice.convert(List.of(planted), folder.resolve("always"), Recalculation.ALWAYS);
    LibreOffice.convert(List.of(planted), folder.resolve("never"), Recalculation.NEVER);

    assertThat(Agreement.differences(wrong, written(folder.resolve("always/planted.xlsx"))))
        .isNotEmpty()
        .allSatisfy(difference -> assertThat(difference).contains("What it costs!"));
    assertThat(written(folder.resolve("never/planted.xlsx"))).containsAllEntriesOf(total(wrong));
  }

  private static Map<String, Object> total(Map<String, Object> values) {
    String total =
        values.keySet().stream()
            .filter(address -> address.startsWith("What it costs!E"))
            .reduce((above, below) -> below)
            .orElseThrow();
    return Map.of(total, values.get(total));
  }

  private static List<String> differences(Path file, Map<String, Object> written)
      throws IOException {
    return Agreement.differences(written, written(folder.resolve(file.getFileName())));
  }

  private static Map<String, Object> written(Path file) throws IOException {
    return Cells.written(Files.readAllBytes(file));
  }

  /** Of the filled tables, which are all made by one road, some (see {@link Walk}). */
  private static List<Path> workbooks() throws IOException {
    List<Path> all = in(WORKBOOKS);
    return IntStream.range(0, all.size())
        .filter(each -> !isFilled(all.get(each)) || Walk.takes(each))
        .mapToObj(all::get)
        .toList();
  }

  private static boolean isFilled(Path workbook) {
    return workbook.getFileName().toString().startsWith("fill-");
  }

  private static List<Path> in(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".xlsx")).sorted().toList();
    }
  }
}
