package sheathwright.fastening.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class OtherSchedulesTest {

  private static Asked alternate(String code, String thickness, String fastener, String wind) {
    return Asked.of("alternate_schedule")
        .with("specific_gravity", "0.42")
        .with("code", code)
        .with("thickness_in", thickness)
        .with("alternate", fastener)
        .with("wind_mph", wind);
  }

  private static Asked highWind(String exposure, String wind, String gravity) {
    return Asked.of("high_wind_schedule")
        .with("exposure", exposure)
        .with("wind_mph", wind)
        .with("specific_gravity", gravity);
  }

  /** Every printed row of Table R602.3(2) for roofs, read on code pages. */
  @ParameterizedTest(name = "{0}, {1} in, {2}")
  @CsvFileSource(resources = "roof-alternate-rows.csv", useHeadersInDisplayName = true)
  void alternateSchedule_isThePrintedRow(
      String code, String thickness, String fastener, String length, double edge, double field) {
    Asked row = alternate(code, thickness, fastener, "105");
    assertThat(row.number("edge_spacing_in")).isEqualTo(edge);
    assertThat(row.number("field_spacing_in")).isEqualTo(field);
    assertThat(row.number("length_in")).isEqualTo(inches(length));
  }

  private static double inches(String printed) {
    String[] parts = printed.split("[-/]");
    return parts.length == 1
        ? Double.parseDouble(parts[0])
        : Double.parseDouble(parts[0])
            + Double.parseDouble(parts[1]) / Double.parseDouble(parts[2]);
  }

  /** The footnotes: under 130 mph in 2015 and 2018, up to 110 mph since 2021, G 0.42 in 2024. */
  @ParameterizedTest(name = "{0} in {1} mph, G {2}")
  @CsvSource({
    "irc-2015, 129.99, 0.3, true",
    "irc-2015, 130, 0.5, false",
    "irc-2018, 130, 0.5, false",
    "irc-2021, 110, 0.3, true",
    "irc-2021, 110.01, 0.5, false",
    "irc-2024, 110, 0.42, true",
    "irc-2024, 110, 0.41, false",
    "ibc-2021, 100, 0.5, false"
  })
  void alternateSchedule_endsAtItsWind(
      String code, String wind, String gravity, boolean isPrinted) {
    Asked row = alternate(code, "7/16", "staple-16-ga", wind).with("specific_gravity", gravity);
    assertThat(row.refusal().isEmpty()).isEqualTo(isPrinted);
  }

  @ParameterizedTest
  @CsvSource({"17/32, staple-16-ga", "21/32, nail-0.097", "7/8, nail-0.097", "1-1/8, nail-0.097"})
  void alternateSchedule_refusesAThicknessBetweenRows(String thickness, String fastener) {
    assertThat(alternate("irc-2018", thickness, fastener, "105").refusal()).isPresent();
  }

  /** A panel measured a hair thicker or thinner than its stamp is still the panel of its row. */
  @ParameterizedTest(name = "{0} in is {1} in")
  @CsvSource({
    "0.37, 3/8, staple-16-ga",
    "0.505, 1/2, staple-16-ga",
    "0.59, 19/32, nail-0.113",
    "0.63, 5/8, nail-0.113",
    "0.715, 23/32, staple-16-ga",
    "0.755, 3/4, staple-16-ga",
    "1.005, 1, nail-0.113"
  })
  void alternateSchedule_takesAHairOfThickness(String measured, String stamped, String fastener) {
    for (String answer : new String[] {"length_in", "edge_spacing_in", "field_spacing_in"}) {
      assertThat(alternate("irc-2018", measured, fastener, "105").number(answer))
          .isEqualTo(alternate("irc-2018", stamped, fastener, "105").number(answer));
    }
  }

  @Test
  void alternateSchedule_refusesEachOfItsAnswers() {
    Asked between = alternate("irc-2018", "17/32", "nail-0.113", "105");
    for (String answer : new String[] {"length_in", "edge_spacing_in", "field_spacing_in"}) {
      assertThat(between.refusal(answer)).as(answer).isPresent();
    }
  }

  /** Every printed row of FBC-Residential 2023, R803.2.3.1. */
  @ParameterizedTest(name = "exposure {0}, {1} mph, G {2}")
  @CsvFileSource(resources = "fbc-r803.2.3.1.csv", useHeadersInDisplayName = true)
  void highWindSchedule_isThePrintedRow(
      String exposure, String wind, String gravity, double edge, double field) {
    Asked row = highWind(exposure, wind, gravity);
    assertThat(row.number("edge_spacing_in")).isEqualTo(edge);
    assertThat(row.number("field_spacing_in")).isEqualTo(field);
  }

  /**
   * Between printed winds the next larger one holds; framing between 0.42 and 0.49 is the lighter.
   */
  @Test
  void highWindSchedule_takesTheNextLargerWindAndTheLighterFraming() {
    assertThat(highWind("d", "120.01", "0.42").number("edge_spacing_in")).isEqualTo(4);
    assertThat(highWind("d", "85", "0.42").number("edge_spacing_in")).isEqualTo(6);
    assertThat(highWind("b", "120.01", "0.49").number("field_spacing_in")).isEqualTo(6);
    assertThat(highWind("b", "115", "0.48").number("field_spacing_in")).isEqualTo(6);
    assertThat(highWind("b", "115", "0.6").number("field_spacing_in")).isEqualTo(12);
  }
}
