package sheathwright.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Source;
import sheathwright.figure.Table;

/** Velocity pressure exposure coefficients of three editions in one table. */
class EditionTablesTest {

  private static final Source SOURCE = Source.fromMemory("ASCE 7, velocity exposure");

  /** Handed over with the latest edition first. */
  private static Table table() {
    Map<LoadEdition, String> files = new LinkedHashMap<>();
    files.put(LoadEdition.ASCE7_22, "asce7/2022/velocity-exposure.csv");
    files.put(LoadEdition.ASCE7_16, "asce7/2016/velocity-exposure.csv");
    files.put(LoadEdition.ASCE7_10, "asce7/2010/velocity-exposure.csv");
    return EditionTables.table("kz", "exposure coefficients", 1, SOURCE, files);
  }

  @Test
  void head_isTheEditionBeforeThatOfOneFile() {
    assertThat(table().name()).isEqualTo("kz");
    assertThat(table().title()).isEqualTo("exposure coefficients");
    assertThat(table().keys()).containsExactly("edition", "exposure");
    assertThat(table().columns())
        .containsExactly("at_15", "at_20", "at_25", "at_30", "at_40", "at_50", "at_60");
    assertThat(table().source()).isEqualTo(SOURCE);
  }

  /**
   * Exposure B, C and D from 15 ft to 60 ft, from memory of ASCE 7-10 Table 30.3-1 and of Table
   * 26.10-1 of ASCE 7-16 and 7-22.
   */
  @Test
  void rows_standEditionByEdition() {
    String c = "c 0.85 0.90 0.94 0.98 1.04 1.09 1.13";
    String d = "d 1.03 1.08 1.12 1.16 1.22 1.27 1.31";
    assertThat(table().rows().stream().map(row -> String.join(" ", row)))
        .containsExactly(
            "asce7-10 b 0.70 0.70 0.70 0.70 0.76 0.81 0.85",
            "asce7-10 " + c,
            "asce7-10 " + d,
            "asce7-16 b 0.57 0.62 0.66 0.70 0.76 0.81 0.85",
            "asce7-16 " + c,
            "asce7-16 " + d,
            "asce7-22 b 0.57 0.62 0.66 0.70 0.74 0.79 0.83",
            "asce7-22 " + c,
            "asce7-22 " + d);
  }

  @Test
  void notes_areThoseOfEveryFile() {
    assertThat(table().notes())
        .hasSize(15)
        .containsSubsequence(
            List.of(
                "source: ASCE 7-10, Table 30.3-1",
                "source: ASCE 7-16, Table 26.10-1",
                "source: ASCE 7-22, Table 26.10-1"));
  }
}
