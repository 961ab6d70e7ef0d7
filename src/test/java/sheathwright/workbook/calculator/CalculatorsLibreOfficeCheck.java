package sheathwright.workbook.calculator;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.workbook.LibreOffice;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.book.Cells;

/**
 * Inputs of every page changed by chance: LibreOffice says what Java says, a refusal for a refusal.
 * {@code -DcalculatorBooks} changes more copies of the workbook than the gate does.
 */
class CalculatorsLibreOfficeCheck {

  private static final long SEED = 20261128;
  private static final int BOOKS = Integer.getInteger("calculatorBooks", 2);

  @TempDir private Path folder;

  @Test
  void everyPage_saysWhatJavaSaysToInputsByChance() throws Exception {
    Map<Path, List<Trial>> changed = new LinkedHashMap<>();
    Random chance = new Random(SEED);
    byte[] book = CalculatorBook.ofAll();
    for (int i = 0; i < BOOKS; i++) {
      Path file = folder.resolve("calculators-" + i + ".xlsx");
      changed.put(file, changed(book, file, (i + 1.0) / BOOKS, chance));
    }

    Path recalculated = folder.resolve("recalculated");
    LibreOffice.convert(List.copyOf(changed.keySet()), recalculated, Recalculation.ALWAYS);

    List<String> differences = new ArrayList<>();
    long answered = 0;
    for (Map.Entry<Path, List<Trial>> each : changed.entrySet()) {
      differences.addAll(differences(recalculated.resolve(each.getKey().getFileName()), each));
      answered += each.getValue().stream().filter(Trial::isAnswered).count();
    }
    assertThat(differences).isEmpty();
    assertThat(answered).isGreaterThan(BOOKS * 30L);
  }

  private static List<Trial> changed(byte[] book, Path file, double share, Random chance)
      throws IOException {
    List<Trial> trials = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(book);
        OutputStream out = Files.newOutputStream(file)) {
      for (OpenPage page : CalculatorsFollowTest.pages(workbook)) {
        Trial trial = Trial.of(page, share, chance);
        trial.typeInto(page);
        trials.add(trial);
      }
      workbook.write(out);
    }
    return trials;
  }

  private static List<String> differences(Path recalculated, Map.Entry<Path, List<Trial>> changed)
      throws IOException {
    List<String> differences = new ArrayList<>();
    try (XSSFWorkbook workbook = Cells.opened(Files.readAllBytes(recalculated))) {
      List<OpenPage> pages = CalculatorsFollowTest.pages(workbook);
      for (int i = 0; i < pages.size(); i++) {
        List<Object> said = pages.get(i).results().stream().map(Trial::held).toList();
        differences.addAll(changed.getValue().get(i).differences(said));
      }
    }
    return differences;
  }
}
