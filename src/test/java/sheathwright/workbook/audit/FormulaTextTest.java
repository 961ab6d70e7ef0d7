package sheathwright.workbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What programs spell as they like in a formula, and what they may not. */
class FormulaTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ROUND(B22*D22,2) | round( $B$22 * d22 , 2 )",
        "0.1*a_b | 1E-1*A_B",
        "'Crew'!$A$1+1 | Crew!A1+1.0",
        "'What we know'!$B$5 | 'What we know'!B5",
        "IF(TRUE,\"a b\",1) | _xlfn.IF(TRUE(),\"a b\",1)",
        "'Here'!$C$3 | C3",
        "SUM(A1:B9) | =SUM($A$1:$B$9)",
      })
  void theSame(String one, String other) {
    assertThat(FormulaText.canonical(one, "Here")).isEqualTo(FormulaText.canonical(other, "Here"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1+B1 | A1-B1",
        "IF(x=\"a b\",1,2) | IF(x=\"ab\",1,2)",
        "IF(x=\"yes\",1,2) | IF(x=\"YES\",1,2)",
        "SUM(A1:A9) | SUM(A1:A8)",
        "x*0.1 | x*0.01",
        "'There'!A1 | A1",
      })
  void another(String one, String other) {
    assertThat(FormulaText.canonical(one, "Here"))
        .isNotEqualTo(FormulaText.canonical(other, "Here"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1*$B$2+LOG10(C3) | 1 | 2 | C2*$B$2+LOG10(E4)",
        "\"A1\"&A1 | 3 | 0 | \"A1\"&A4",
      })
  void aSharedFormula_isMovedAlong(String first, int rows, int columns, String moved) {
    assertThat(References.shifted(first, rows, columns)).isEqualTo(moved);
  }
}
