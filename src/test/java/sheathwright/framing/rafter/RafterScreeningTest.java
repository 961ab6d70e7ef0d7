package sheathwright.framing.rafter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.catalog.Asked;

/** The whole rafter against {@link PlainRafter}, which knows nothing of figures. */
class RafterScreeningTest {

  private static final Percentage CLOSE = Percentage.withPercentage(1e-7);

  static Stream<PlainRafter> rafters() {
    Random chance = new Random(20261125);
    return Stream.generate(() -> PlainRafter.any(chance)).limit(60);
  }

  @ParameterizedTest
  @MethodSource("rafters")
  void everyRatio_isThePlainOne(PlainRafter rafter) {
    Asked asked = rafter.asked();
    rafter
        .ratios(rafter.span())
        .forEach(
            (column, ratio) -> assertThat(asked.number(column)).as(column).isCloseTo(ratio, CLOSE));
  }

  @ParameterizedTest
  @MethodSource("rafters")
  void longestSpan_isWherePlainChecksTurn(PlainRafter rafter) {
    double passes = 0.001;
    double fails = 2000;
    while (fails - passes > 1e-9 * fails) {
      double middle = (passes + fails) / 2;
      boolean ok =
          rafter.ratios(middle).entrySet().stream()
              .filter(each -> !each.getKey().startsWith("deck_off"))
              .filter(each -> !each.getKey().equals("notch_ratio"))
              .allMatch(each -> each.getValue() <= 1);
      passes = ok ? middle : passes;
      fails = ok ? fails : middle;
    }
    assertThat(rafter.asked().number("longest_span_ft") * 12).isCloseTo(passes, CLOSE);
  }

  @ParameterizedTest
  @MethodSource("rafters")
  void okAndGoverns_followTheRatios(PlainRafter rafter) {
    var ratios = rafter.ratios(rafter.span());
    double greatest =
        ratios.entrySet().stream()
            .filter(each -> !each.getKey().startsWith("deck_off"))
            .mapToDouble(java.util.Map.Entry::getValue)
            .max()
            .orElseThrow();
    Asked asked = rafter.asked();
    assertThat(asked.answer("ok")).isEqualTo(greatest <= 1 ? "yes" : "no");
    double governing =
        ratios.entrySet().stream()
            .filter(
                each ->
                    each.getKey().endsWith(asked.answer("governs").replace('-', '_') + "_ratio"))
            .filter(each -> !each.getKey().startsWith("deck_off"))
            .mapToDouble(java.util.Map.Entry::getValue)
            .max()
            .orElseThrow();
    assertThat(governing).isCloseTo(greatest, CLOSE);
    double off =
        Math.max(ratios.get("deck_off_bending_ratio"), ratios.get("deck_off_slenderness_ratio"));
    assertThat(asked.answer("deck_off_ok")).isEqualTo(off <= 1 ? "yes" : "no");
  }

  @ParameterizedTest
  @MethodSource("rafters")
  void bracesAtTheirGreatestDistance_areJustEnough(PlainRafter rafter) {
    double brace = rafter.asked().number("deck_off_brace_in");
    double atOnce = rafter.deckOff(rafter.span(), 1e-9)[0];
    if (brace == 0) {
      assertThat(atOnce).isGreaterThanOrEqualTo(1);
      return;
    }
    double[] ratios = rafter.deckOff(rafter.span(), brace);
    assertThat(Math.max(ratios[0], ratios[1])).isCloseTo(1, within(0.002));
    double[] further = rafter.deckOff(rafter.span(), brace * 1.01);
    assertThat(Math.max(further[0], further[1])).isGreaterThan(1);
  }

  @ParameterizedTest
  @MethodSource("rafters")
  void planks_leaveHalfOfAPersonToARafter(PlainRafter rafter) {
    double brace = rafter.asked().number("deck_off_plank_brace_in");
    assertThat(brace).isGreaterThanOrEqualTo(rafter.asked().number("deck_off_brace_in"));
    if (brace == 0) {
      assertThat(rafter.deckOff(rafter.span(), 1e-9, rafter.person() / 2)[0])
          .isGreaterThanOrEqualTo(1);
      return;
    }
    double[] ratios = rafter.deckOff(rafter.span(), brace, rafter.person() / 2);
    assertThat(Math.max(ratios[0], ratios[1])).isCloseTo(1, within(0.002));
  }

  /** What a crew does follows the numbers, from the least trouble to the most. */
  @ParameterizedTest
  @MethodSource("rafters")
  void way_isTheLeastTroubleThatHolds(PlainRafter rafter) {
    Asked asked = rafter.asked();
    double braces = asked.number("deck_off_brace_in");
    String expected =
        asked.answer("deck_off_ok").equals("yes")
            ? "as-it-stands"
            : braces >= 48
                ? "few-sheets-or-braces"
                : braces > 0
                    ? "braces"
                    : asked.number("deck_off_plank_brace_in") > 0
                        ? "planks-and-braces"
                        : "nobody-on-it";
    assertThat(asked.answer("deck_off_way")).isEqualTo(expected);
  }

  /** The old roof is gone with the deck: what it weighed changes nothing of this check. */
  @Test
  void deckOff_bearsTheFramingAndNotTheOldRoof() {
    Asked heavy = PLAIN.with("dead_psf", "30");
    for (String column : List.of("deck_off_bending_ratio", "deck_off_brace_in")) {
      assertThat(heavy.number(column)).isEqualTo(PLAIN.number(column));
    }
    // By hand: 35 pcf × 1-1/2 in × 5-1/2 in ÷ 144 × √(1 + 0.5²) ÷ 16 in.
    assertThat(PLAIN.number("deck_off_dead_psf"))
        .isCloseTo(35 * 8.25 / 144 * Math.sqrt(1.25) / (16 / 12d), within(1e-9));
    assertThat(PLAIN.with("hung_psf", "5").number("deck_off_dead_psf"))
        .isCloseTo(PLAIN.number("deck_off_dead_psf") + 5, within(1e-9));
  }

  /** What hangs from the rafters and nobody knows is the whole dead load, and never more. */
  @Test
  void deckOff_bearsTheWholeDeadLoadWhereNobodyKnowsWhatHangs() {
    double own = PLAIN.number("deck_off_dead_psf");
    for (String unknown : List.of("", "100", "10")) {
      assertThat(PLAIN.with("hung_psf", unknown).number("deck_off_dead_psf"))
          .isCloseTo(own + 10, within(1e-9));
    }
  }

  private static final Asked PLAIN =
      Asked.of("rafter_screening")
          .with("moisture", "dry")
          .with("hung_psf", "0")
          .with("species", "spruce-pine-fir")
          .with("grade", "no-2")
          .with("size", "2x6")
          .with("spacing_in", "16")
          .with("roof_live_psf", "20")
          .with("snow_psf", "30")
          .with("dead_psf", "10")
          .with("deflection_limit", "180")
          .with("value_set", "nds2018")
          .with("notch_known", "measured") // none: rafter_check knows no seat cut
          .with("rise_in_12", "6")
          .with("span_ft", "12");

  @ParameterizedTest
  @CsvSource({"roof-live, 20, roof_live", "snow, 30, snow"})
  void plainRafter_isThatOfTheCheck(String load, String live, String column) {
    Asked check =
        Asked.of("rafter_check")
            .with("species", "spruce-pine-fir")
            .with("grade", "no-2")
            .with("size", "2x6")
            .with("spacing_in", "16")
            .with("live_psf", live)
            .with("dead_psf", "10")
            .with("load", load)
            .with("deflection_limit", "180")
            .with("value_set", "nds2018")
            .with("span_ft", "12");
    assertThat(PLAIN.number(column + "_bending_ratio"))
        .isCloseTo(check.number("bending_ratio"), CLOSE);
    assertThat(PLAIN.number(column + "_shear_ratio")).isCloseTo(check.number("shear_ratio"), CLOSE);
  }

  @Test
  void roofLiveLoadAndSnow_areNeverAdded() {
    assertThat(PLAIN.with("snow_psf", "0").number("roof_live_bending_ratio"))
        .isEqualTo(PLAIN.number("roof_live_bending_ratio"));
    assertThat(PLAIN.with("roof_live_psf", "30").number("deflection_ratio"))
        .isEqualTo(PLAIN.number("deflection_ratio"));
    assertThat(PLAIN.with("roof_live_psf", "29").number("bearing_ratio"))
        .isEqualTo(PLAIN.number("bearing_ratio"));
  }

  @Test
  void deadLoadAlone_mayGovern() {
    // (D) ÷ 0.9 is over (D + Lr) ÷ 1.25 where D is over 0.9 Lr ÷ 0.35.
    Asked heavy = PLAIN.with("snow_psf", "0").with("roof_live_psf", "12").with("dead_psf", "31");
    assertThat(heavy.number("dead_bending_ratio"))
        .isGreaterThan(heavy.number("roof_live_bending_ratio"));
    Asked light = heavy.with("dead_psf", "30");
    assertThat(light.number("dead_bending_ratio"))
        .isLessThan(light.number("roof_live_bending_ratio"));
  }

  @Test
  void creep_isThatOfItsWood() {
    // NDS 2018 3.5.2, from memory: K_cr 1.5 seasoned, 2.0 green or wet; 30 psf snow, 10 dead.
    Asked dry = PLAIN.with("seasoned", "yes");
    double seasoned = dry.number("total_deflection_ratio");
    assertThat(seasoned / PLAIN.number("deflection_ratio")).isCloseTo(45 / 30d * 120 / 180, CLOSE);
    Asked same = dry.with("thickness_in", "1.5").with("depth_in", "5.5");
    // What nobody knows of old framing is not dry: a blank creeps as green wood does.
    for (Asked creeping :
        new Asked[] {PLAIN, dry.with("seasoned", "no"), same.with("stock", "green")}) {
      assertThat(creeping.number("total_deflection_ratio") / seasoned).isCloseTo(50 / 45d, CLOSE);
    }
  }

  /** IRC Table R301.7, secondary source: L/180 is for slopes of more than 3 in 12 alone. */
  @ParameterizedTest
  @CsvSource({"3.01, 180, 180", "3, 180, 240", "2, 180, 240", "2, 360, 360", "1, 240, 240"})
  void onALowSlope_theSagIsHeldAsThatOfAnyOtherMember(String rise, String asked, double held) {
    Asked steep = PLAIN.with("rise_in_12", "6").with("deflection_limit", "180");
    Asked low = PLAIN.with("rise_in_12", rise).with("deflection_limit", asked);
    assertThat(low.number("deflection_ratio") / steep.number("deflection_ratio"))
        .isCloseTo(held / 180, CLOSE);
  }

  /** 12 ft with a strut at 7 ft on a wall: the longest of 7 ft and 5 ft, and the whole thrust. */
  @Test
  void aStrutOnABearingWall_shortensTheSpanAndLeavesTheThrust() {
    Asked whole = PLAIN.with("strut_ft", "7");
    Asked strutted = whole.with("strut_on_bearing_wall", "yes");
    assertThat(strutted.number("roof_live_bending_ratio"))
        .isCloseTo(PLAIN.with("span_ft", "7").number("roof_live_bending_ratio"), CLOSE);
    assertThat(strutted.number("thrust_lb")).isEqualTo(PLAIN.number("thrust_lb"));
    for (String unseen : new String[] {"unknown", "no"}) {
      assertThat(whole.with("strut_on_bearing_wall", unseen).number("roof_live_bending_ratio"))
          .isEqualTo(PLAIN.number("roof_live_bending_ratio"));
    }
  }

  /** IBC Table 1604.3, secondary source: live load beside dead and live load, by the ceiling. */
  @ParameterizedTest
  @CsvSource({"180, 120", "240, 180", "360, 240"})
  void totalLimit_followsTheLimitUnderLiveLoad(String live, double total) {
    Asked blank = PLAIN.with("deflection_limit", live);
    Asked typed = blank.with("total_deflection_limit", String.valueOf(total));
    assertThat(blank.number("total_deflection_ratio"))
        .isEqualTo(typed.number("total_deflection_ratio"));
    // 2.0 dead and 30 psf of snow against snow alone.
    assertThat(blank.number("total_deflection_ratio") / blank.number("deflection_ratio"))
        .isCloseTo(50 / 30d * total / Double.parseDouble(live), CLOSE);
  }

  @ParameterizedTest
  @CsvSource({
    "deflection_limit, 200",
    "deflection_limit, 300",
    "total_deflection_limit, 30",
    "total_deflection_limit, 59"
  })
  void limitsOfSag_areRefusedBetweenThoseOfTheCode(String column, String given) {
    assertThat(PLAIN.with(column, given).refusal().orElseThrow())
        .startsWith(column + " is " + given + "; it must be ");
  }

  @Test
  void notchDeeperThanAQuarter_isNotOk() {
    Asked roomy = PLAIN.with("span_ft", "4");
    assertThat(roomy.with("notch_in", "1.375").answer("ok")).isEqualTo("yes");
    Asked deep = roomy.with("notch_in", "1.376");
    assertThat(deep.answer("ok")).isEqualTo("no");
    assertThat(deep.answer("governs")).isEqualTo("notch");
    assertThat(deep.number("longest_span_ft")).isZero();
    assertThat(roomy.with("notch_in", "5.5").refusal())
        .contains("the seat cut leaves nothing of the rafter");
  }
}
