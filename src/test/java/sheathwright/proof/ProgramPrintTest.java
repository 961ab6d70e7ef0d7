package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A fingerprint is that of what lies there, to the byte. */
class ProgramPrintTest {

  private static SortedMap<String, byte[]> files(String text) {
    return new TreeMap<>(Map.of("a.csv", text.getBytes(StandardCharsets.UTF_8)));
  }

  /** By sha256sum: a file of "abc" (FIPS 180-4's own example), listed, and the list taken again. */
  @Test
  void aFingerprint_isWhatSha256sumSays() {
    assertThat(ProgramPrint.of("tables", files("abc"), "tables").digits())
        .isEqualTo("de6ab0485a2f9629e095a68561ccd0c060392a610135ce7af1b6c2a27831959f");
  }

  @Test
  void aSpoiledTable_hasAnother() {
    SortedMap<String, byte[]> tables = Shipped.below("published");
    String before = ProgramPrint.of("tables", tables, "tables").digits();
    assertThat(before).isEqualTo(ProgramPrint.ofTables().digits());
    byte[] spoiled = tables.get(tables.firstKey()).clone();
    spoiled[spoiled.length / 2]++;
    tables.put(tables.firstKey(), spoiled);
    assertThat(ProgramPrint.of("tables", tables, "tables").digits()).isNotEqualTo(before);
  }
}
