package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Asked;

/**
 * Loads that others printed or worked out, {@code load-cases.csv}. Each test is named with its
 * source and how sure it is.
 */
class LoadCasesTest {

  /** The last bits of a double, where a case is stated to be exact. */
  private static final double LAST_BITS = 1e-12;

  static Stream<Arguments> cases() {
    return PrintedSpan.rows("load-cases.csv").stream()
        .map(row -> Arguments.of(row.get("id"), row.get("source"), row.get("mark"), row));
  }

  @ParameterizedTest(name = "{0}: {1} ({2})")
  @MethodSource("cases")
  void load_isThatOfTheCase(String id, String source, String mark, CSVRecord row) {
    double tolerance = Double.parseDouble(row.get("tolerance")) + LAST_BITS;
    assertThat(answer(row)).isCloseTo(Double.parseDouble(row.get("expected")), within(tolerance));
  }

  @Test
  void cases_areAllThere() {
    assertThat(cases()).hasSize(39);
  }

  private static double answer(CSVRecord row) {
    Asked asked = Asked.of(row.get("function"));
    for (String argument : row.get("arguments").split(" ")) {
      String[] parts = argument.split("=", 2);
      asked = asked.with(parts[0], parts[1]);
    }
    String[] result = row.get("result").split("/");
    double answer = asked.number(result[0]);
    if (result.length > 1) {
      answer /= asked.number(result[1]);
    }
    if (row.get("width_in").isEmpty()) {
      return answer;
    }
    double poundsPerInch = answer * Double.parseDouble(row.get("width_in")) / 144;
    return switch (row.get("units")) {
      case "lb/in" -> poundsPerInch;
      case "plf" -> poundsPerInch * 12;
      default -> throw new AssertionError("no load on a length is in " + row.get("units"));
    };
  }
}
