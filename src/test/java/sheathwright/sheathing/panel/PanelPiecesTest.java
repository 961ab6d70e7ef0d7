package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.in;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class PanelPiecesTest {

  private static Asked piece(String length, String width, String spacing) {
    return Asked.of("piece_fit")
        .with("piece_length_in", length)
        .with("piece_width_in", width)
        .with("support_spacing_in", spacing);
  }

  /**
   * The table's footnotes: two spans or more, 24 in or wider. By hand: with 1/2 in of bearing at
   * each end of 1-1/2 in rafters, two spans of 24 in take at least 47-1/2 in.
   */
  @ParameterizedTest(name = "{0} by {1} at {2}")
  @CsvSource({
    "96, 48, 24, 4, yes, yes, yes",
    "48, 24, 24, 2, yes, yes, yes",
    "47-1/2, 24, 24, 2, yes, yes, yes",
    "47-3/8, 24, 24, 1, yes, no, no",
    "32, 24, 16, 2, yes, yes, yes",
    "31-3/8, 24, 16, 1, yes, no, no",
    "24, 48, 24, 1, yes, no, no",
    "12, 48, 24, 0, yes, no, no",
    "1, 48, 96, 0, yes, no, no",
    "96, 23-7/8, 24, 4, no, yes, no",
    "95-7/8, 48, 19.2, 5, yes, yes, yes"
  })
  void pieceFit_wantsTwoSpansAndTwoFeet(
      String length,
      String width,
      String spacing,
      double spans,
      String wide,
      String two,
      String ok) {
    Asked asked = piece(length, width, spacing);
    assertThat(asked.number("spans")).isEqualTo(spans);
    assertThat(asked.answer("wide_enough")).isEqualTo(wide);
    assertThat(asked.answer("two_spans")).isEqualTo(two);
    assertThat(asked.answer("ok")).isEqualTo(ok);
  }

  /** A narrow strip may lie where all its edges are held, but still needs its two spans. */
  @Test
  void aNarrowStrip_isSavedBySupportedEdgesOnly() {
    assertThat(piece("96", "9-1/4", "24").answer("ok")).isEqualTo("no");
    assertThat(piece("96", "9-1/4", "24").with("edges_supported", "yes").answer("ok"))
        .isEqualTo("yes");
    assertThat(piece("24", "9-1/4", "24").with("edges_supported", "yes").answer("ok"))
        .isEqualTo("no");
    assertThat(piece("96", "23-7/8", "24").with("min_width_in", "23.75").answer("ok"))
        .isEqualTo("yes");
  }

  /** FEMA's advice for windy places, read: no piece shorter than 4 ft. */
  @Test
  void aShortPiece_isRefusedItsYesWhereALengthIsAskedFor() {
    Asked windy = piece("32", "24", "16").with("min_length_in", "48");
    assertThat(windy.answer("two_spans")).isEqualTo("yes");
    assertThat(windy.answer("long_enough")).isEqualTo("no");
    assertThat(windy.answer("ok")).isEqualTo("no");
    assertThat(windy.with("piece_length_in", "48").answer("ok")).isEqualTo("yes");
  }

  @Test
  void thePanelTurnedTheWeakWay_isStopped() {
    assertThat(piece("96", "48", "24").with("strength_axis", "along").refusal().orElseThrow())
        .startsWith("a panel with its strength axis along the supports is much weaker")
        .contains("stop and ask");
  }

  /**
   * Independent: on rafters drawn in sixteenths, slide the piece until one end just bears on the
   * first rafter, and count the rafters on which its other end could still bear.
   */
  @Test
  void spans_agreeWithSlidingThePieceOverTheRafters() {
    Random random = new Random(24);
    for (int i = 0; i < 400; i++) {
      int spacing = 16 * 8 + random.nextInt(16 * 24);
      int length = 16 + random.nextInt(16 * 120);
      int rafter = 24 + random.nextInt(24);
      int bearing = random.nextInt(20);
      int start = rafter / 2 - bearing; // of the piece, from the first rafter's center
      int spans = 0;
      while ((spans + 1) * spacing - (rafter - rafter / 2) + bearing <= start + length) {
        spans++;
      }
      PieceFit fit =
          PanelPieces.pieceFit(
              CutPanel.length(in(length / 16.0)).width(in(48)),
              RafterRow.spacing(in(spacing / 16.0)).width(in(rafter / 16.0)),
              new PieceRules(null, null, in(bearing / 16.0)));
      assertThat(fit.spans().value()).as("length %s, spacing %s", length, spacing).isEqualTo(spans);
    }
  }
}
