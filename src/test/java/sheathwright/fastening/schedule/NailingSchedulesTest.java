package sheathwright.fastening.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class NailingSchedulesTest {

  private static Asked panel(
      String code, String thickness, String nail, String wind, String exposure) {
    return Asked.of("nailing_schedule")
        .with("specific_gravity", "0.42")
        .with("code", code)
        .with("thickness_in", thickness)
        .with("nail", nail)
        .with("wind_mph", wind)
        .with("exposure", exposure);
  }

  /** Since 2024 the code prints its rows for G of 0.42 at least; wood nobody knows has 0.36. */
  @Test
  void aRowThatAsksForAGravity_isNotGivenForWoodThatNobodyKnows() {
    Asked unknown = panel("irc-2024", "7/16", "8d-common", "115", "b").with("specific_gravity", "");
    assertThat(unknown.refusal().orElseThrow()).contains("specific gravity");
    Asked older = panel("irc-2021", "7/16", "8d-common", "115", "b").with("specific_gravity", "");
    assertThat(older.refusal()).isEmpty();
  }

  /** Every printed row for both ends of its thicknesses, read on code pages. */
  @ParameterizedTest(name = "{0} item {1}, {4}")
  @CsvFileSource(resources = "roof-nailing-rows.csv", useHeadersInDisplayName = true)
  void nailingSchedule_isThePrintedRow(
      String code, double item, String thin, String thick, String nail, double edge, double field) {
    for (String thickness : new String[] {thin, thick}) {
      Asked row = panel(code, thickness, nail, "110", "b");
      assertThat(row.number("item")).isEqualTo(item);
      assertThat(row.number("edge_spacing_in")).isEqualTo(edge);
      assertThat(row.number("field_spacing_in")).isEqualTo(field);
    }
  }

  /**
   * Footnote f of Table R602.3(1), and the note of IBC Table 2304.10.2, on both sides of its wind.
   */
  @ParameterizedTest(name = "{0} in {1} mph, exposure {2}")
  @CsvSource({
    "irc-2015, 130, b, 12, 6, wind-within-the-footnote",
    "irc-2015, 130.01, b, 6, 4, wind-beyond-the-footnote",
    "irc-2015, 130.01, d, 6, 4, wind-beyond-the-footnote",
    "irc-2015, 139.99, c, 6, 4, wind-beyond-the-footnote",
    "irc-2018, 129.99, c, 6, 6, wind-within-the-footnote",
    "irc-2018, 130, c, 4, 4, wind-beyond-the-footnote",
    "irc-2018, 139.99, d, 4, 4, wind-beyond-the-footnote",
    "irc-2021, 130, b, 6, 6, wind-within-the-footnote",
    "irc-2021, 130.01, b, 4, 4, wind-beyond-the-footnote",
    "irc-2021, 110, c, 6, 6, wind-within-the-footnote",
    "irc-2021, 110.01, c, 4, 4, wind-beyond-the-footnote",
    "irc-2024, 130.01, b, 4, 4, wind-beyond-the-footnote",
    "irc-2024, 110, c, 6, 6, wind-within-the-footnote",
    "ibc-2021, 130, b, 6, 6, wind-within-the-footnote",
    "ibc-2021, 139.99, b, 4, 4, wind-beyond-the-footnote",
    "ibc-2024, 110.01, c, 4, 4, wind-beyond-the-footnote"
  })
  void nearEdges_followTheFootnoteOnWind(
      String code, String wind, String exposure, double near, double gable, String reason) {
    Asked row = panel(code, "7/16", "8d-common", wind, exposure);
    assertThat(row.number("near_edges_spacing_in")).isEqualTo(near);
    assertThat(row.number("gable_spacing_in")).isEqualTo(gable);
    assertThat(row.answer("reason")).isEqualTo(reason);
  }

  /** What the pages do not print is refused, not made up. */
  @ParameterizedTest(name = "{0}: {1} in, {2}, {3} mph, {4}")
  @CsvSource({
    "irc-2021, 7/16, 8d-common, 100, d",
    "irc-2024, 7/16, 8d-common, 100, d",
    "irc-2015, 17/32, 8d-common, 110, b",
    "irc-2021, 13/16, 10d-common, 110, b",
    "irc-2021, 1, 8d-common, 110, b",
    "irc-2015, 7/16, rsrs-01, 110, b",
    "irc-2018, 7/16, 10d-common, 110, b",
    "irc-2021, 7/16, rsrs-03, 110, b",
    "ibc-2015, 19/32, 8d-box, 110, b",
    "irc-2021, 5/16, 8d-common, 110, b",
    "irc-2021, 1-3/8, 10d-common, 110, b"
  })
  void nailingSchedule_refusesWhatIsNotPrinted(
      String code, String thickness, String nail, String wind, String exposure) {
    assertThat(panel(code, thickness, nail, wind, exposure).refusal()).isPresent();
  }

  /**
   * IRC R301.2.1.1: from 140 mph the house is designed for wind, whatever the edition's table says.
   */
  @ParameterizedTest(name = "{0}, {1} in, {2} mph")
  @CsvSource({
    "irc-2015, 7/16, 8d-common, 140",
    "irc-2015, 7/16, 8d-common, 160",
    "irc-2018, 7/16, 8d-common, 140",
    "irc-2021, 7/16, rsrs-01, 200",
    "irc-2021, 1-1/8, 10d-common, 180",
    "irc-2024, 23/32, rsrs-01, 140",
    "ibc-2015, 7/16, 8d-box, 150",
    "ibc-2021, 7/16, 8d-common, 140"
  })
  void from140Mph_thePrescriptiveCodeEndsWithAWayOut(
      String code, String thickness, String nail, String wind) {
    assertThat(panel(code, thickness, nail, wind, "c").refusal().orElseThrow())
        .startsWith("the prescriptive code ends where the wind reaches 140 mph")
        .contains("sheathing_uplift", "nail_spacing_for_uplift", "a wind standard", "an engineer");
  }

  /** From 115 mph the map of IRC R301.2.1.1 says where wind design is required. */
  @ParameterizedTest
  @CsvSource({
    "114.99, not by this wind speed",
    "115, 'wind design may be required here, IRC R301.2.1.1 and its map'",
    "139.99, 'wind design may be required here, IRC R301.2.1.1 and its map'"
  })
  void from115Mph_windDesignMayBeRequired(String wind, String said) {
    assertThat(panel("irc-2018", "7/16", "8d-common", wind, "b").answer("wind_design"))
        .isEqualTo(said);
  }

  /**
   * Chance winds against the sentences of the footnotes and of R301.2.1.1: 130 mph in the editions
   * of 2015 and 2018, that one included in 2015 only; since 2021 130 mph in Exposure B and 110 in
   * C.
   */
  @Test
  void limitsOfWind_areTheCodesSentences() {
    Random chance = new Random(301_2_1_1);
    for (int i = 0; i < 300; i++) {
      String code =
          List.of("irc-2015", "irc-2018", "irc-2021", "irc-2024", "ibc-2021")
              .get(chance.nextInt(5));
      String exposure = chance.nextBoolean() ? "b" : "c";
      int tenths = 850 + chance.nextInt(900);
      // Half of them stand on a border or beside it.
      double wind =
          chance.nextBoolean()
              ? tenths / 10d
              : List.of(110, 115, 130, 140).get(chance.nextInt(4)) + (chance.nextInt(3) - 1) / 100d;
      Asked asked = panel(code, "7/16", "8d-common", "" + wind, exposure);
      if (wind >= 140) {
        assertThat(asked.refusal()).as("%s, %s mph", code, wind).isPresent();
        continue;
      }
      boolean isOld = code.equals("irc-2015") || code.equals("irc-2018");
      double most = isOld || exposure.equals("b") ? 130 : 110;
      boolean isWithin = code.equals("irc-2018") ? wind < most : wind <= most;
      assertThat(asked.answer("reason"))
          .as("%s, %s mph, %s", code, wind, exposure)
          .isEqualTo(isWithin ? "wind-within-the-footnote" : "wind-beyond-the-footnote");
      assertThat(asked.answer("wind_design").startsWith("wind design may be required"))
          .isEqualTo(wind >= 115);
    }
  }

  /** A panel measured a hair thicker or thinner than its stamp is still the panel of its row. */
  @ParameterizedTest(name = "{0}: {1} in is {2} in")
  @CsvSource({
    "irc-2021, 0.37, 3/8",
    "irc-2021, 0.505, 1/2",
    "irc-2021, 0.755, 3/4",
    "irc-2018, 1.005, 1",
    "irc-2018, 1.255, 1-1/4"
  })
  void aHairOfThickness_doesNotCount(String code, String measured, String stamped) {
    String nail = stamped.startsWith("1-") ? "10d-common" : "8d-common";
    assertThat(panel(code, measured, nail, "110", "b").number("item"))
        .isEqualTo(panel(code, stamped, nail, "110", "b").number("item"));
  }

  @Test
  void eachAnswerOfARowThatIsNotPrinted_isRefused() {
    Asked thin = panel("irc-2021", "5/16", "8d-common", "110", "b");
    for (String answer :
        new String[] {
          "edge_spacing_in", "field_spacing_in", "near_edges_spacing_in", "gable_spacing_in", "item"
        }) {
      assertThat(thin.refusal(answer)).as(answer).isPresent();
    }
  }

  /** The row of thick panels has no footnote on wind. */
  @Test
  void thickPanels_haveNoFootnote() {
    Asked thick = panel("irc-2021", "1-1/8", "10d-common", "139.99", "d");
    assertThat(thick.answer("reason")).isEqualTo("no-wind-footnote");
    assertThat(thick.number("near_edges_spacing_in")).isEqualTo(12);
  }

  /** Since 2024 the usual nails want G 0.42, and lighter framing down to 0.35 takes rsrs-03. */
  @ParameterizedTest
  @CsvSource({
    "8d-common, 0.42, true",
    "8d-common, 0.41, false",
    "rsrs-01, 0.41, false",
    "rsrs-03, 0.41, true",
    "rsrs-03, 0.35, true",
    "rsrs-03, 0.34, false",
    "rsrs-03, 0.42, false"
  })
  void gravity_countsSince2024(String nail, String gravity, boolean isPrinted) {
    for (String code : new String[] {"irc-2024", "ibc-2024"}) {
      assertThat(
              panel(code, "7/16", nail, "110", "b")
                  .with("specific_gravity", gravity)
                  .refusal()
                  .isEmpty())
          .isEqualTo(isPrinted);
    }
    assertThat(
            panel("irc-2021", "7/16", "8d-common", "110", "b")
                .with("specific_gravity", "0.3")
                .refusal())
        .isEmpty();
  }

  /** Footnote c: 6 in at all supports where they stand 48 in apart. */
  @Test
  void wideSpans_takeSixInches() {
    Asked wide = panel("irc-2018", "23/32", "8d-common", "110", "b");
    assertThat(wide.with("support_spacing_in", "48").number("field_spacing_in")).isEqualTo(6);
    assertThat(wide.with("support_spacing_in", "47.99").number("field_spacing_in")).isEqualTo(12);
    Asked thick = panel("irc-2021", "1-1/8", "10d-common", "110", "b");
    assertThat(thick.with("support_spacing_in", "48").number("near_edges_spacing_in")).isEqualTo(6);
  }
}
