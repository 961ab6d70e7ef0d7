package sheathwright.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.job.file.Manifest;
import sheathwright.workbook.LibreOffice.Recalculation;
import sheathwright.workbook.audit.Audit;
import sheathwright.workbook.audit.AuditTrial;
import sheathwright.workbook.audit.Finding;
import sheathwright.workbook.audit.Returned;

/** Files that LibreOffice has saved, held against what was written. It runs in the gate. */
class AuditLibreOfficeCheck {

  private static final Path WORKBOOKS = Path.of("target", "workbooks");

  @TempDir private Path folder;

  private Map<String, byte[]> saved(Map<String, byte[]> files) throws Exception {
    Map<Path, String> written = new LinkedHashMap<>();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = Files.write(folder.resolve(file.getKey() + ".xlsx"), file.getValue());
      written.put(path, file.getKey());
    }
    Path saved = folder.resolve("saved");
    LibreOffice.convert(written.keySet().stream().toList(), saved, Recalculation.ALWAYS);
    Map<String, byte[]> back = new LinkedHashMap<>();
    for (Map.Entry<Path, String> file : written.entrySet()) {
      back.put(file.getValue(), Files.readAllBytes(saved.resolve(file.getKey().getFileName())));
    }
    return back;
  }

  private static byte[] book(String name) throws Exception {
    return Files.readAllBytes(WORKBOOKS.resolve(name + ".xlsx"));
  }

  @Test
  void itKeepsTheManifest_andWhatWasOnlyFilledInRaisesNoAlarm() throws Exception {
    Map<String, byte[]> books = new LinkedHashMap<>();
    for (String name :
        new String[] {
          "quince-hollow-quote",
          "mistwater-cottage-quote",
          "tallow-end-quote",
          "quince-hollow-estimate",
          "life-change-order",
          "life-invoice",
          "life-deck-record"
        }) {
      books.put(name, book(name));
    }
    AuditTrial trial = new AuditTrial(books, 2030);
    Map<String, byte[]> filled = new LinkedHashMap<>();
    books.forEach((name, book) -> filled.put(name, trial.filledIn(book, 2)));

    Map<String, byte[]> back = saved(filled);

    back.forEach(
        (name, file) -> {
          byte[] book = books.get(name);
          assertThat(AuditTrial.alarms(book, file)).as(name).isEmpty();
          assertThat(Manifest.hashIn(file)).as(name).isNotEmpty().isEqualTo(Manifest.hashIn(book));
        });
  }

  @Test
  void whatWasChangedInIt_isFound() throws Exception {
    byte[] quote = book("quince-hollow-quote");
    byte[] typedOver =
        Returned.with(
            quote, book -> Returned.typed(Returned.cell(book, "lines_amount_usd", 2), 100));
    byte[] priced =
        Returned.with(quote, book -> Returned.typed(Returned.cell(book, "lines_price_usd", 2), 90));

    Map<String, byte[]> back = saved(Map.of("typed-over", typedOver, "priced", priced));

    assertThat(Audit.between(quote, back.get("typed-over")).findings())
        .extracting(Finding::verdict)
        .hasToString("[OVERWRITTEN]");
    assertThat(Audit.between(quote, back.get("priced")).findings())
        .extracting(Finding::verdict)
        .hasToString("[CHANGED_TERMS]");
  }
}
