package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import sheathwright.catalog.Asked;

/** Every printed row of the code's span tables, on both sides of each of its limits. */
class PanelSpanTablesTest {

  private static final String IRC = "irc-r503.2.1.1-1.csv";
  private static final String IBC = "ibc-2304.8-3.csv";
  private static final double A_HAIR = 0.001;

  private static Asked panel(String rating, String thickness, String edges, double spacing) {
    return Asked.of("panel_span")
        .with("span_rating", rating)
        .with("thickness_in", thickness)
        .with("edge_support", edges)
        .with("support_spacing_in", Double.toString(spacing));
  }

  /** IRC Table R503.2.1.1(1), four editions. */
  @ParameterizedTest(name = "{0} of {1} in")
  @CsvFileSource(resources = IRC, useHeadersInDisplayName = true)
  void panelSpan_isThePrintedSpan(
      String rating,
      String thickness,
      Double live16,
      Double live24,
      double supported,
      double unsupported) {
    assertThat(panel(rating, thickness, "yes", 12).number("max_span_in")).isEqualTo(supported);
    assertThat(panel(rating, thickness, "no", 12).number("max_span_in")).isEqualTo(unsupported);
    assertEndsAt(supported, rating, thickness, "yes");
    assertEndsAt(unsupported, rating, thickness, "no");
    assertThat(panel(rating, thickness, "yes", supported + A_HAIR).number("live_psf")).isZero();
  }

  private static void assertEndsAt(double span, String rating, String thickness, String edges) {
    assertThat(panel(rating, thickness, edges, span).answer("ok")).isEqualTo("yes");
    Asked beyond = panel(rating, thickness, edges, span + A_HAIR);
    assertThat(beyond.answer("ok")).isEqualTo("no");
  }

  /** The same table: a blank column has no load of its own, and the next one to the right holds. */
  @ParameterizedTest(name = "{0} of {1} in")
  @CsvFileSource(resources = IRC, useHeadersInDisplayName = true)
  void live_isPrintedAtTheNextLargerPrintedSpacing(
      String rating,
      String thickness,
      Double live16,
      Double live24,
      double supported,
      double unsupported,
      double total,
      double live) {
    double from24 = live24 == null ? live : live24;
    double from16 = live16 == null ? from24 : live16;
    DoubleStream.of(6, 12, 16).forEach(spacing -> assertLive(rating, thickness, spacing, from16));
    DoubleStream.of(16 + A_HAIR, 19.2, 24)
        .filter(spacing -> spacing <= supported)
        .forEach(spacing -> assertLive(rating, thickness, spacing, from24));
    DoubleStream.of(24 + A_HAIR, (24 + supported) / 2, supported)
        .filter(spacing -> spacing > 24 && spacing <= supported)
        .forEach(spacing -> assertLive(rating, thickness, spacing, live));
    assertThat(total - live).as("dead load that the table counts in").isEqualTo(10);
  }

  private static void assertLive(String rating, String thickness, double spacing, double live) {
    Asked asked = panel(rating, thickness, "yes", spacing);
    assertThat(asked.number("live_psf")).as("over %s in", spacing).isEqualTo(live);
    assertThat(asked.with("dead_psf", "10").number("live_psf")).isEqualTo(live);
    assertThat(asked.with("dead_psf", "14.5").number("live_psf"))
        .isCloseTo(live - 4.5, within(1e-9));
  }

  /** IBC Table 2304.8(3), which prints the same ratings for other roofs. */
  @ParameterizedTest(name = "{0} of {1} in")
  @CsvFileSource(resources = IBC, useHeadersInDisplayName = true)
  void panelSpan_isWhatTheBuildingCodePrintsToo(
      String rating,
      String thickness,
      double supported,
      double unsupported,
      double total,
      double live) {
    assertThat(panel(rating, thickness, "yes", 12).number("max_span_in")).isEqualTo(supported);
    assertThat(panel(rating, thickness, "no", 12).number("max_span_in")).isEqualTo(unsupported);
    boolean isOverTheLastColumn = supported > 24;
    assertThat(panel(rating, thickness, "yes", supported).number("live_psf"))
        .matches(found -> isOverTheLastColumn ? found == live : found >= live);
    assertThat(total - live).isEqualTo(10);
  }
}
