package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.YesNo.NO;
import static sheathwright.figure.YesNo.YES;
import static sheathwright.sheathing.panel.SpanRating.RATING_24_16;
import static sheathwright.sheathing.panel.SpanRating.RATING_32_16;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.RefusedException;

class PanelSpanTest {

  private static final Asked USUAL =
      Asked.of("panel_span")
          .with("span_rating", "24/16")
          .with("thickness_in", "7/16")
          .with("support_spacing_in", "24")
          .with("edge_support", "no");

  /** The table's footnote: 10 psf of dead load are counted in, more comes off. By hand from 40. */
  @ParameterizedTest(name = "{0} psf leave {1}")
  @CsvSource({
    "0, 40, yes",
    "10, 40, yes",
    "10.5, 39.5, yes",
    "15, 35, yes",
    "49.9, 0.1, yes",
    "50, 0, no",
    "100, 0, no"
  })
  void dead_takesFromTheLiveLoadWhatItHasOverTen(double dead, double live, String ok) {
    PanelSpan span =
        Panels.panelSpan(RatedPanel.of(RATING_24_16, in(0.4375)), in(24), NO, psf(dead));
    assertThat(span.live().value()).isCloseTo(live, within(1e-9));
    assertThat(span.ok()).hasToString(ok);
    assertThat(span.maxSpan().value()).isEqualTo(24);
  }

  /**
   * A thickness is taken for the printed one within half a sixty-fourth, here 1/128 = 0.0078125.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "32/16, 15/32",
    "32/16, 0.46875",
    "32/16, 0.47",
    "32/16, 1/2",
    "32/16, 0.4609375",
    "32/16, 0.4765625",
    "24/16, 7/16",
    "24/16, 0.44",
    "24/16, 0.43",
    "40/20, 0.59",
    "40/20, 0.63",
    "48/24, 0.72",
    "60/32, 0.88",
    "24/0, 0.38",
    "24/0, 0.47",
    "48-oc, 1-3/32",
    "48-oc, 1.09"
  })
  void thickness_isReadToTheNearestPrintedOne(String rating, String thickness) {
    assertThat(USUAL.with("span_rating", rating).with("thickness_in", thickness).refusal())
        .isEmpty();
  }

  @ParameterizedTest(name = "{0} of {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "40/20 | 7/16   | 7/16 in   | 19/32 in or 5/8 in  | 32/16 from 15/32 in",
        "32/16 | 3/8    | 3/8 in    | 15/32 in or 1/2 in  | 24/16 from 7/16 in",
        "24/0  | 5/16   | 5/16 in   | 3/8 in or 15/32 in or 1/2 in | 20/0 from 3/8 in",
        "16/0  | 0.29   | 0.29 in   | 3/8 in              | 16/0 from 5/16 in",
        "48-oc | 3/4    | 3/4 in    | 1-3/32 in or 1-1/8 in | 32-oc from 7/8 in",
      })
  void thickness_isRefusedWhereNoRatingIsPrintedForSoLittle(
      String rating, String thickness, String given, String printed, String counted) {
    Asked asked = USUAL.with("span_rating", rating).with("thickness_in", thickness);
    for (String edges : List.of("yes", "no")) {
      assertThat(asked.with("edge_support", edges).refusal().orElseThrow())
          .startsWith(
              "no panel of %s is printed for the span rating %s, only of %s (IRC 2021"
                  .formatted(given, rating, printed))
          .contains("an old one counts as " + counted + " on; read the stamp");
    }
  }

  /**
   * A stamp of an old deck answers as the next lower printed one does, at that one's own least
   * thickness, and says so: never better than the stamp.
   */
  @ParameterizedTest(name = "{0} of {1} in")
  @CsvSource({
    "24/0, 7/16, 20/0, 3/8",
    "32/16, 5/8, 24/16, 7/16",
    "32/16, 7/16, 24/16, 7/16",
    "24/16, 15/32, 24/0, 3/8",
    "24/16, 0.4296, 24/0, 3/8",
    "20/0, 1/2, 16/0, 3/8",
    "20/0, 5/16, 16/0, 3/8",
    "16/0, 5/16, 16/0, 3/8",
    "16/0, 1/2, 16/0, 3/8",
    "30/12, 5/8, 24/0, 3/8",
    "36/16, 3/4, 32/16, 15/32",
    "42/20, 3/4, 40/20, 19/32",
    "none, 3/8, 16/0, 3/8",
    "none, 3/4, 16/0, 3/8",
    "16-oc, 1/2, 24/0, 3/8",
    "24-oc, 7/8, 20-oc, 19/32"
  })
  void anOldStamp_countsAsTheNextLowerPrintedOne(
      String rating, String thickness, String counted, String least) {
    for (String edges : List.of("yes", "no")) {
      for (String spacing : List.of("16", "19.2", "24", "32")) {
        Asked asked = USUAL.with("edge_support", edges).with("support_spacing_in", spacing);
        Asked old = asked.with("span_rating", rating).with("thickness_in", thickness);
        Asked printed = asked.with("span_rating", counted).with("thickness_in", least);
        assertThat(old.answer("counted_as")).isEqualTo(counted);
        for (String answer : List.of("max_span_in", "live_psf", "ok")) {
          assertThat(old.answer(answer)).as(answer).isEqualTo(printed.answer(answer));
        }
      }
    }
    assertThat(USUAL.answer("counted_as")).isEqualTo("24/16");
  }

  /** None of the answers gets past a wrong thickness. */
  @Test
  void aWrongThickness_leavesNoAnswer() {
    PanelSpan span = Panels.panelSpan(RatedPanel.of(RATING_32_16, in("3/8")), in(16), YES, psf(10));
    assertThatThrownBy(() -> span.maxSpan().value()).isInstanceOf(RefusedException.class);
    assertThatThrownBy(() -> span.live().value()).isInstanceOf(RefusedException.class);
    assertThatThrownBy(() -> span.ok().value()).isInstanceOf(RefusedException.class);
    assertThatThrownBy(() -> span.countedAs().value()).isInstanceOf(RefusedException.class);
  }

  @ParameterizedTest
  @CsvSource({
    "24/17, ; did you mean 24/16?",
    "7/16, ; did you mean 24/16?",
    "24-Jul, 24/16",
    "2024-07-16, 24/16"
  })
  void anUnknownRating_isRefused(String rating, String instead) {
    assertThatThrownBy(() -> USUAL.with("span_rating", rating).refusal())
        .isInstanceOf(RefusedException.class)
        .hasMessageStartingWith("span_rating is \"%s\"", rating)
        .hasMessageContaining(instead);
  }

  @Test
  void aThicknessThatBecameADate_isRefusedAndSaidSo() {
    assertThatThrownBy(() -> USUAL.with("thickness_in", "16-Jul").refusal())
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("a spreadsheet program may have made a date of it");
  }

  /** Whatever the stamp: wider supports and more dead load never carry more, edges never harm. */
  @Test
  void live_neverGrowsWithSpacingOrDeadLoadNorShrinksWithSupportedEdges() {
    Random random = new Random(503);
    for (SpanRating rating : SpanRating.values()) {
      double thickness = printedThickness(rating);
      for (int i = 0; i < 60; i++) {
        double spacing = 6 + 60 * random.nextDouble();
        double dead = 60 * random.nextDouble();
        double live = live(rating, thickness, spacing, true, dead);
        assertThat(live(rating, thickness, spacing + 5, true, dead)).isLessThanOrEqualTo(live);
        assertThat(live(rating, thickness, spacing, true, dead + 5)).isLessThanOrEqualTo(live);
        assertThat(live(rating, thickness, spacing, false, dead)).isLessThanOrEqualTo(live);
      }
    }
  }

  private static double live(
      SpanRating rating, double thickness, double spacing, boolean edges, double dead) {
    return Panels.panelSpan(
            RatedPanel.of(rating, in(thickness)), in(spacing), edges ? YES : NO, psf(dead))
        .live()
        .value();
  }

  /** The least category printed for each rating, IRC Table R503.2.1.1(1). */
  private static double printedThickness(SpanRating rating) {
    return switch (rating) {
      case RATING_16_0, RATING_20_0, RATING_24_0, RATING_30_12, NONE -> 3 / 8.0;
      case RATING_24_16 -> 7 / 16.0;
      case RATING_32_16, RATING_36_16 -> 15 / 32.0;
      case RATING_40_20, RATING_42_20, RATING_16_OC, RATING_20_OC -> 19 / 32.0;
      case RATING_48_24, RATING_24_OC -> 23 / 32.0;
      case RATING_60_32, RATING_32_OC -> 7 / 8.0;
      case RATING_48_OC -> 1 + 3 / 32.0;
    };
  }
}
