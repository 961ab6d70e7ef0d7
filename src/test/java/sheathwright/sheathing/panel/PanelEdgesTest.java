package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.sheathing.panel.SpanRating.RATING_24_16;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class PanelEdgesTest {

  private static Asked edges(String rating, String thickness, String spacing, String feet) {
    return Asked.of("edge_clips")
        .with("span_rating", rating)
        .with("thickness_in", thickness)
        .with("support_spacing_in", spacing)
        .with("edge_ft", feet);
  }

  /**
   * A worked answer of the trade: an eave of 74 ft, trusses 24 in apart, seven courses: 37 bays on
   * each of six edges, 222 clips a plane and 444 for two.
   */
  @Test
  void edgeClips_countsTheWorkedRoof() {
    assertThat(edges("24/16", "7/16", "24", "444").number("clips")).isEqualTo(222);
    assertThat(edges("24/16", "7/16", "24", "888").number("clips")).isEqualTo(444);
    assertThat(edges("24/16", "7/16", "24", "444").answer("needed")).isEqualTo("no");
  }

  /** IRC Table R503.2.1.1(1): needed just beyond the span printed without edge support. */
  @ParameterizedTest(name = "{0} of {1} in")
  @CsvSource({
    "24/0, 3/8, 20, 24",
    "32/16, 1/2, 28, 32",
    "40/20, 5/8, 32, 40",
    "48/24, 3/4, 36, 48",
    "60/32, 7/8, 48, 60",
    "24-oc, 23/32, 36, 48",
    "32-oc, 7/8, 40, 48",
    "48-oc, 1-1/8, 48, 60"
  })
  void clips_areNeededBeyondTheUnsupportedSpanAndRefusedBeyondTheSupportedOne(
      String rating, String thickness, double unsupported, double supported) {
    assertThat(needed(rating, thickness, unsupported)).isEqualTo("no");
    assertThat(needed(rating, thickness, unsupported + 0.001)).isEqualTo("yes");
    assertThat(needed(rating, thickness, supported)).isEqualTo("yes");
    assertThat(at(rating, thickness, supported + 0.001).refusal().orElseThrow())
        .startsWith("the supports stand further apart than this panel spans");
  }

  private static String needed(String rating, String thickness, double spacing) {
    return at(rating, thickness, spacing).answer("needed");
  }

  private static Asked at(String rating, String thickness, double spacing) {
    return edges(rating, thickness, Double.toString(spacing), "100");
  }

  /** The table's footnote: one clip midway, two where the supports stand 48 in apart. */
  @ParameterizedTest
  @CsvSource({
    "48/24, 3/4, 24, 1",
    "48/24, 3/4, 40, 1",
    "48/24, 3/4, 47.9, 1",
    "48/24, 3/4, 48, 2",
    "60/32, 7/8, 60, 2"
  })
  void perBay_isOneOrTwo(String rating, String thickness, String spacing, double clips) {
    assertThat(edges(rating, thickness, spacing, "100").number("clips_per_bay")).isEqualTo(clips);
  }

  /** By hand: between 1-1/2 in rafters a block is 14-1/2 in at 16 in, 22-1/2 in at 24 in. */
  @Test
  void blocking_isTheClearLengthOfEveryBay() {
    assertThat(edges("24/16", "7/16", "16", "40").number("blocking_ft"))
        .isCloseTo(30 * 14.5 / 12, within(1e-9));
    assertThat(edges("24/16", "7/16", "24", "42").number("blocking_ft"))
        .isCloseTo(21 * 22.5 / 12, within(1e-9));
    assertThat(
            edges("24/16", "7/16", "24", "42").with("rafter_width_in", "3").number("blocking_ft"))
        .isCloseTo(21 * 21 / 12.0, within(1e-9));
  }

  /** Independent: walk along the edge from rafter to rafter and clip every bay that is begun. */
  @Test
  void edgeClips_agreesWithWalkingAlongTheEdge() {
    for (double spacing : List.of(12.0, 16.0, 19.2, 24.0)) {
      for (int inches = 0; inches < 1500; inches += 37) {
        int clips = 0;
        while (clips * spacing < inches - 1e-6) {
          clips++;
        }
        EdgeClips found =
            PanelEdges.edgeClips(
                RatedPanel.of(RATING_24_16, in("7/16")),
                RafterRow.spacing(in(spacing)),
                ft(inches / 12.0));
        assertThat(found.clips().value()).isEqualTo(clips);
      }
    }
  }

  /** A stamp of an old deck counts as the next lower printed one, and says so. */
  @Test
  void anOldStamp_asksForClipsAsTheLowerOneDoes() {
    Asked old = edges("32/16", "5/8", "24", "444");
    assertThat(old.answer("counted_as")).isEqualTo("24/16");
    assertThat(old.answer("needed")).isEqualTo("no");
    assertThat(edges("24/0", "7/16", "24", "444").refusal().orElseThrow())
        .as("counted as 20/0, it does not reach")
        .isNotEmpty();
  }

  @Test
  void aWrongThickness_isRefused() {
    assertThat(edges("24/16", "5/16", "16", "40").refusal().orElseThrow())
        .startsWith("no panel of 5/16 in is printed for the span rating 24/16");
  }
}
