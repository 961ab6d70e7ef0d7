package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The name that was meant: one slip, one more for every four letters, or the name's beginning. */
class NearestTest {

  /** Letters to change counted by hand. */
  @ParameterizedTest(name = "{0} for {1}: {2}")
  @CsvSource({
    "abd,  abc,             true", // 1 of 3 letters
    "ade,  abc,             false", // 2 of 3
    "abxy, abcd,            true", // 2 of 4
    "axyz, abcd,            false", // 3 of 4
    "pan,  panel_thickness, true", // its beginning, of 3 letters
    "pa,   panel_thickness, false",
    "nel,  panel_thickness, false",
    "MARK, marks,           true",
    "rizein12, Rise In_12,  true",
  })
  void near_isASlipOrABeginning(String given, String name, boolean isNear) {
    assertThat(Nearest.to(given, List.of(name)).isPresent()).isEqualTo(isNear);
    assertThat(Nearest.to(given, List.of(name)).orElse(name)).isEqualTo(name);
  }

  @Test
  void nearest_isTheOneWithFewestLettersToChange() {
    assertThat(Nearest.to("boxes", List.of("boxer", "b-o-x-e-s"))).contains("b-o-x-e-s");
    assertThat(Nearest.to("boxes", List.of("roof", "nail"))).isEmpty();
  }

  @Test
  void asked_isAQuestionOrNothing() {
    assertThat(Nearest.asked("Mark_s", List.of("tape", "marks")))
        .isEqualTo(" (did you mean marks?)");
    assertThat(Nearest.asked("ladder", List.of("tape", "marks"))).isEmpty();
  }

  @Test
  void instead_saysAllOfAFew() {
    assertThat(Nearest.instead("mark", List.of("tape", "marks")))
        .isEqualTo(" (did you mean marks?); it must be one of tape, marks");
    assertThat(Nearest.instead("ladder", List.of("tape", "marks")))
        .isEqualTo("; it must be one of tape, marks");
  }

  @Test
  void instead_saysTheNearestOfMoreThanTwelve() {
    String twelve = String.join(", ", words(12));
    assertThat(Nearest.instead("plank", words(12)))
        .isEqualTo(" (did you mean planks?); it must be one of " + twelve);
    assertThat(Nearest.instead("plank", words(13))).isEqualTo("; did you mean planks?");
    assertThat(Nearest.instead("ladder", words(13)))
        .isEqualTo("; it must be one of " + String.join(", ", words(13)));
  }

  private static List<String> words(int count) {
    return Stream.concat(
            Stream.of("planks"), IntStream.range(1, count).mapToObj(i -> "12345678" + i))
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "nails, nail",
    "Ties, tie",
    "gas, gas",
    "glass, glass",
    "sheet, sheet",
    "BOARDS, board",
  })
  void singular_isOneOfMany(String word, String one) {
    assertThat(Nearest.singular(word)).isEqualTo(one);
  }

  @Test
  void folded_hasNoBlanksHyphensOrCapitals() {
    assertThat(Nearest.folded("Rise In_12-x")).isEqualTo("risein12x");
  }
}
