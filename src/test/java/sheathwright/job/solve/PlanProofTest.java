package sheathwright.job.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import sheathwright.cutting.Patience;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.ProblemsException;

/** A plan of cuts in a file is held by its own numbers, and by nothing that made it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlanProofTest {

  private static final String STICKS = "length_in,count\n22.5,14\n37 1/4,9\n14,11\n";
  private static final String SHEETS =
      "width_in,height_in,count\n40,24,5\n30 1/4,16 1/2,9\n14,20,7\n";

  private String sticks;
  private String sheets;

  @BeforeAll
  void plansWithTheirCertificates() {
    sticks =
        plan(
            Solver.CUT_STOCK,
            STICKS,
            Map.of("stock_ft", "8,10,12", "stock_usd", "4.10,5.35,6.60", "on_hand_in", "60"));
    sheets = plan(Solver.CUT_SHEETS, SHEETS, Map.of("on_hand_in", "48x24"));
  }

  private static String plan(Solver solver, String pieces, Map<String, String> options) {
    Map<String, String> all = new HashMap<>(options);
    all.put("certificate", "anywhere.csv");
    StringBuilder text = new StringBuilder();
    try {
      solver
          .solve(file(pieces), all, seconds -> Patience.asked(100_000))
          .beside()
          .orElseThrow()
          .table()
          .writeTo(text);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.toString();
  }

  private static CsvFile file(String text) throws IOException {
    return CsvFile.read(
        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "plan.csv");
  }

  private static PlanProof proof(String text) {
    try {
      return PlanProof.of(file(text));
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  /**
   * By hand: four sticks of 10 ft at 5.35 and three of 8 ft at 4.10 are 33.70, and an offcut costs
   * nothing; pieces with their saw cuts have 2.2 times the area of a sheet, less the offcut.
   */
  @Test
  void aPlanThatWasFound_holds() {
    assertThat(proof(sticks).holds()).isTrue();
    assertThat(proof(sticks).plan()).isEqualTo("8 sticks, 33.70 usd");
    assertThat(proof(sheets).holds()).isTrue();
    assertThat(proof(sheets).isProven()).isTrue();
    assertThat(proof(sheets).least()).isEqualTo("3 sheets");
  }

  @Test
  void aPieceThatNobodyCuts_isSaid() {
    assertThat(proof(sticks.replaceFirst("\nstick,60.*", "")).fault().orElseThrow())
        .contains("is cut");
    assertThat(proof(sheets.replaceFirst("\nplaced,40,24,,,offcut.*", "")).fault().orElseThrow())
        .contains("too few");
  }

  @Test
  void aPlaceThatIsTaken_isSaid() {
    assertThat(proof(sheets.replace("sheet 1,40.125,0", "sheet 1,30,0")).fault().orElseThrow())
        .contains("kerf");
    assertThat(proof(sticks.replace("stick,96,,,,22.5", "stick,96,,,,37.25+22.5")).fault())
        .isPresent();
  }

  @Test
  void aBoundThatTheWorthsDoNotReach_isNotHeld() {
    assertThat(proof(sticks.replace("least,,32.85", "least,,33.70")).isHeld()).isFalse();
    assertThat(proof(sheets.replace("least,,,3", "least,,,4")).isHeld()).isFalse();
  }

  /** A piece worth more than what it is cut out of proves nothing. */
  @Test
  void aWorthThatAStockDoesNotPay_isNotHeld() {
    assertThat(proof(sticks.replaceFirst("(piece,37.25,,9,)2", "$13")).isHeld()).isFalse();
    assertThat(proof(sheets.replaceFirst("(piece,40,24,5,)1", "$12")).isHeld()).isFalse();
  }

  @Test
  void whatCannotBeRead_hasItsPlace() {
    assertThatThrownBy(() -> proof(sticks.replaceFirst("(piece,37.25,,9,)\\d+", "$1many")))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("plan.csv")
        .hasMessageContaining("parts");
    assertThatThrownBy(() -> proof(sticks.replaceFirst("kerf.*\n", "")))
        .hasMessageContaining("kerf");
    assertThatThrownBy(() -> proof(sticks.replaceFirst("stick,60", "stick,61")))
        .hasMessageContaining("no stock of this length");
  }
}
