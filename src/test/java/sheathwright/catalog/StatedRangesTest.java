package sheathwright.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;

/** The range that a parameter's text states is the range that its function enforces. */
class StatedRangesTest {

  static Stream<Arguments> numericParameters() {
    return Catalog.shipped().cards().stream()
        .flatMap(
            card ->
                card.parameters().stream()
                    .filter(parameter -> parameter.unit() != null)
                    .map(parameter -> Arguments.of(card, parameter, name(card, parameter))));
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource("numericParameters")
  void text_statesARangeInTheUnitOfTheColumn(Card card, Parameter parameter, String name) {
    StatedRange range = StatedRange.in(parameter.text());
    assertThat(range).as(parameter.text()).isNotNull();
    assertThat(range.least()).isLessThan(range.most());
    String unit = parameter.unit().symbol();
    boolean ofACount = parameter.unit().suffix().isEmpty();
    assertThat(range.unit())
        .matches(said -> said.equals(unit) || unit.startsWith(said + "/") || ofACount, unit);
    assertThat(range.unit().isEmpty()).as("needs its unit").isEqualTo(ofACount);
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource("numericParameters")
  void function_acceptsBothEnds(Card card, Parameter parameter, String name) {
    StatedRange range = StatedRange.in(parameter.text());
    for (double end : List.of(range.least(), range.most())) {
      assertThat(refusals(card, parameter, end))
          .noneMatch(reason -> reason.startsWith(parameter.column() + " is "));
    }
  }

  @ParameterizedTest(name = "{2}")
  @MethodSource("numericParameters")
  void function_refusesJustOutsideBothEnds(Card card, Parameter parameter, String name) {
    StatedRange range = StatedRange.in(parameter.text());
    double below = range.least() - 1e-6 * Math.max(1, Math.abs(range.least()));
    double above = range.most() + 1e-6 * Math.max(1, Math.abs(range.most()));
    assertRefused(card, parameter, range, below);
    assertRefused(card, parameter, range, above);
    if (range.onlyTheEnds()) {
      assertRefused(card, parameter, range, (range.least() + range.most()) / 2);
    }
  }

  private static void assertRefused(
      Card card, Parameter parameter, StatedRange range, double given) {
    String least = Shown.plain(range.least());
    String most = Shown.plain(range.most());
    String allowed = range.onlyTheEnds() ? least + " or " + most : "from " + least + " to " + most;
    String start = "%s is %s; it must be ".formatted(parameter.column(), Shown.plain(given));
    assertThat(refusals(card, parameter, given))
        .as("%s given %s", card.name(), given)
        .anyMatch(
            reason ->
                reason.startsWith(start + allowed)
                    || reason.startsWith(start + "a whole number " + allowed));
  }

  private static List<String> refusals(Card card, Parameter parameter, double given) {
    return Calls.refusals(
        card, Calls.allowedArgumentsBut(card, parameter, Figure.of(given, parameter.unit())));
  }

  private static String name(Card card, Parameter parameter) {
    return card.name() + " " + parameter.column();
  }

  @Test
  void statedRange_readsEveryWayOfStatingOne() {
    assertThat(StatedRange.in("center to center, 4 in to 48 in; taken up to 24 in"))
        .isEqualTo(new StatedRange(4, 48, "in", false));
    assertThat(StatedRange.in("area on the slope, 1 sq ft to 200000 sq ft"))
        .isEqualTo(new StatedRange(1, 200_000, "sq ft", false));
    assertThat(StatedRange.in("before tax, 0 $/sheet to 1000.5 $/sheet"))
        .isEqualTo(new StatedRange(0, 1000.5, "$/sheet", false));
    assertThat(StatedRange.in("rafters to sister, 0 to 500"))
        .isEqualTo(new StatedRange(0, 500, "", false));
    assertThat(StatedRange.in("divided by this is the sag: 180 or 240"))
        .isEqualTo(new StatedRange(180, 240, "", true));
    assertThat(StatedRange.in("nail to nail along the edges of a 4 by 8 sheet")).isNull();
  }
}
