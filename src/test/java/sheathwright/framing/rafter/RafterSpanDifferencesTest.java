package sheathwright.framing.rafter;

import static java.util.stream.Collectors.toMap;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.wood.Grade;
import sheathwright.wood.Species;

/** The reason that stands beside each printed span which the method does not give. */
class RafterSpanDifferencesTest {

  private static final Map<String, PrintedSpan> CELLS =
      PrintedSpan.all().stream().collect(toMap(PrintedSpan::key, Function.identity()));

  static Stream<Arguments> reasons() {
    return PrintedSpan.rows("rafter-span-differences.csv").stream()
        .map(row -> Arguments.of(row.get("reason"), PrintedSpan.keyOf(row), row));
  }

  @ParameterizedTest(name = "{0}: {1}")
  @MethodSource("reasons")
  void reason_isBorneOutByTheNumbers(String reason, String key, CSVRecord row) {
    PrintedSpan cell = CELLS.get(key);
    double span = cell.span();
    double reaction = cell.loadPerInch() * span / 2;
    switch (reason) {
      case "rounding tie" ->
          assertThat(span - Math.floor(span)).isBetween(0.5 - 0.011, 0.5 + 0.011);
      case "next whole foot" -> {
        assertThat(span % 12).isBetween(11.4, 11.5);
        assertThat(cell.printed()).isEqualTo(12 * (int) Math.ceil(span / 12));
      }
      case "printed cap" -> {
        assertThat(cell.printed()).isEqualTo(26 * 12);
        assertThat(span).isGreaterThan(26 * 12);
      }
      case "bearing limit" -> {
        double most = bearingValue(cell.species()) * 2.74;
        assertThat(reaction).isGreaterThan(most);
        assertThat((double) cell.printed())
            .isBetween(2 * most / cell.loadPerInch() - 1, 2 * most / cell.loadPerInch() + 1);
        assertThat(cell.grade()).isEqualTo(Grade.SELECT_STRUCTURAL);
        assertThat(cell.live()).isEqualTo(70);
      }
      case "likely misprint" ->
          assertThat(oneDigitApart(cell.spelled(), cell.computed().inFeetAndInches().value()))
              .isTrue();
      case "size factor of 2x12" ->
          assertThat(Math.round(span * Math.sqrt(1.0 / 1.1))).isEqualTo(cell.printed().longValue());
      default -> throw new AssertionError("nobody knows the reason of " + row);
    }
  }

  /** Fc-perp of NDS 2018 Supplement, Table 4A, secondary source. */
  private static double bearingValue(Species species) {
    return switch (species) {
      case HEM_FIR -> 405;
      case SPRUCE_PINE_FIR -> 425;
      default -> throw new AssertionError(species + " has no cell cut short by bearing");
    };
  }

  private static boolean oneDigitApart(String printed, String meant) {
    if (printed.length() < meant.length()) {
      return oneDigitApart(meant, printed);
    }
    for (int i = 0; i < printed.length(); i++) {
      String without = printed.substring(0, i) + printed.substring(i + 1);
      boolean changed =
          printed.length() == meant.length()
              && without.equals(meant.substring(0, i) + meant.substring(i + 1));
      if (without.equals(meant) || changed) {
        return true;
      }
    }
    return false;
  }
}
