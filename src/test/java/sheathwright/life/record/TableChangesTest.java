package sheathwright.life.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.job.table.CsvFile;

/** What changed between two states of a job's tables, and tables that get wider. */
class TableChangesTest {

  private static final String MARKS = "mark,plane,finding\nR-1,A,rot\nR-2,A,soft\nR-3,B,rot\n";
  private static final String READINGS = "plane,rafter,drop_in\nA,1,0.5\nA,2,0.75\nA,3,1\n";

  private static List<String> changes(String table, String before, String after) {
    return TableChanges.between(
        Map.of(table, CsvFile.parse(table, before)), Map.of(table, CsvFile.parse(table, after)));
  }

  @Test
  void aKey_isToldWithOldAndNew() {
    assertThat(
            changes(
                "rates", "rate,value\nwaste_pct,5\nlow,1\n", "rate,value\nwaste_pct,8\nnew,2\n"))
        .containsExactly(
            "rates, waste_pct: 5 → 8", "rates, low: gone (low, 1)", "rates, new: new (new, 2)");
  }

  @Test
  void aLineTakenOut_leavesTheOthersAlone() {
    assertThat(changes("marks", MARKS, MARKS.replace("R-1,A,rot\n", "")))
        .containsExactly("marks, R-1: gone (R-1, A, rot)");
  }

  @Test
  void aCellOfALine_isToldByTheLinesName() {
    assertThat(changes("marks", MARKS, MARKS.replace("A,soft", "A,rot")))
        .containsExactly("marks, R-2, finding: soft → rot");
  }

  @Test
  void linesOfOneName_areToldByTheirNumber() {
    String other = READINGS.replace("A,1,0.5", "A,1,0.25").replace("A,3,1", "A,3,2");
    assertThat(changes("readings", READINGS, other))
        .containsExactly(
            "readings, line 2 (A), drop_in: 0.5 → 0.25", "readings, line 4 (A), drop_in: 1 → 2");
  }

  @Test
  void aTableMore_isToldByItsName() {
    assertThat(TableChanges.between(Map.of(), Map.of("marks", CsvFile.parse("marks", MARKS))))
        .containsExactly("marks: new, with 3 lines");
  }

  @ParameterizedTest
  @CsvSource({
    "16.770833333333332,16.7708333333333,true",
    "5,5.0,true",
    "5,5.001,false",
    "rot,soft,false",
    "'',0,false"
  })
  void numbersThatTwoProgramsWrote_areOne(String was, String is, boolean same) {
    assertThat(TableChanges.isSame(was, is)).isEqualTo(same);
  }

  @Test
  void aColumnMore_keepsEverythingElse() {
    String text = "mark;finding\r\nR-1;\"rot; wet\"\r\nR-2;soft";
    TableText wider = TableText.of(file(text), List.of()).withColumn("note_done");

    assertThat(new String(wider.bytes(), java.nio.charset.StandardCharsets.UTF_8))
        .isEqualTo("mark;finding;note_done\r\nR-1;\"rot; wet\";\r\nR-2;soft;");
    assertThat(wider.withCell(1, "note_done", "yes").parsed().lines().get(1).cells())
        .containsExactly("R-2", "soft", "yes");
  }

  private static java.nio.file.Path file(String text) {
    try {
      java.nio.file.Path file = java.nio.file.Files.createTempFile("marks", ".csv");
      file.toFile().deleteOnExit();
      return java.nio.file.Files.writeString(file, text);
    } catch (java.io.IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }
}
