package sheathwright.sheathing.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.figure.Amounts.sqft;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;

class BoardsTest {

  private static final Asked SPAN = Asked.of("board_span").with("support_spacing_in", "24");
  private static final Asked COUNT =
      Asked.of("boards_to_replace")
          .with("deck_area_sf", "100")
          .with("board_face_in", "7-1/4")
          .with("stock_ft", "16")
          .with("waste_pct", "10");
  private static final Asked BASE =
      Asked.of("board_base").with("thickness_in", "25/32").with("gap_in", "1/4");

  /** IRC 2015 to 2024 Table R803.1 with its three footnotes, on both sides of each limit. */
  @ParameterizedTest(name = "{0} in {1}, {2} psi and {3} psi")
  @CsvSource({
    "0.624, square, 2000, 2000000, 0",
    "5/8, square, 0, 0, 24",
    "3/4, square, 0, 0, 24",
    "1.5, square, 2000, 2000000, 24", // only tongue and groove goes further
    "1.49, tongue-and-groove, 2000, 2000000, 24",
    "1.5, tongue-and-groove, 0, 0, 24", // wood that nobody has named
    "1.5, tongue-and-groove, 269, 340000, 24",
    "1.5, tongue-and-groove, 270, 339999, 24",
    "1.5, tongue-and-groove, 270, 340000, 48",
    "1.5, tongue-and-groove, 419, 660000, 48",
    "1.5, tongue-and-groove, 420, 659999, 48",
    "1.5, tongue-and-groove, 420, 660000, 60",
    "1.5, tongue-and-groove, 599, 1150000, 60",
    "1.5, tongue-and-groove, 600, 1149999, 60",
    "1.5, tongue-and-groove, 600, 1150000, 72",
    "3, tongue-and-groove, 2000, 2000000, 72"
  })
  void boardSpan_isThePrintedOne(
      String thickness, String edge, String bending, String modulus, double span) {
    Asked asked =
        SPAN.with("thickness_in", thickness)
            .with("board_edge", edge)
            .with("bending_psi", bending)
            .with("modulus_psi", modulus);
    assertThat(asked.number("max_span_in")).isEqualTo(span);
    assertThat(asked.answer("ok")).isEqualTo(span >= 24 ? "yes" : "no");
    double atLeastSix = Math.max(span, 6);
    assertThat(asked.with("support_spacing_in", Double.toString(atLeastSix)).answer("ok"))
        .isEqualTo(span > 0 ? "yes" : "no");
    assertThat(asked.with("support_spacing_in", Double.toString(atLeastSix + 0.01)).answer("ok"))
        .isEqualTo("no");
  }

  /** By hand: 100 sq ft ÷ 7-1/4 in is 165.517 ft; a tenth more is 182.07 ft, 11.38 boards of 16. */
  @Test
  void boardsToReplace_isTheHandCount() {
    assertThat(COUNT.number("linear_ft")).isCloseTo(1200 / 7.25, within(1e-9));
    assertThat(COUNT.number("boards")).isEqualTo(12);
    assertThat(COUNT.with("waste_pct", "0").number("boards")).isEqualTo(11); // 10.34
    assertThat(COUNT.with("gap_in", "3/4").number("linear_ft")).isCloseTo(150, within(1e-9));
    assertThat(COUNT.with("deck_area_sf", "0").number("boards")).isZero();
  }

  /** Independent: lay whole rows of whole boards, and measure the deck that they make. */
  @Test
  void boardsToReplace_findsTheBoardsThatADeckWasMadeOf() {
    Random random = new Random(803);
    for (int i = 0; i < 300; i++) {
      int rows = 1 + random.nextInt(40);
      int inARow = 1 + random.nextInt(5);
      int stock = 8 + 2 * random.nextInt(5);
      double face = (16 + random.nextInt(120)) / 16.0;
      double gap = random.nextInt(8) / 16.0;
      double area = rows * (face + gap) / 12 * inARow * stock;
      BoardCount count =
          Boards.boardsToReplace(
              sqft(area), BoardStock.face(in(face)).gap(in(gap)).stock(ft(stock)), pct(0));
      assertThat(count.boards().value()).isEqualTo(rows * inARow);
      assertThat(count.laid().value()).isCloseTo(rows * inARow * stock, within(1e-6));
    }
  }

  /** What makers of coverings commonly ask for; common practice, no source. */
  @ParameterizedTest(name = "{0} in, gap {1} in, hole {2} in")
  @CsvSource({
    "25/32, 1/4, 1, yes, yes, yes, yes",
    "3/4, 1/4, 1, no, yes, yes, no",
    "25/32, 5/16, 1, yes, no, yes, no",
    "25/32, 1/4, 1-1/16, yes, yes, no, no",
    "5/8, 2, 6, no, no, no, no"
  })
  void boardBase_holdsEachLimitByItself(
      String thickness,
      String gap,
      String hole,
      String thick,
      String tight,
      String whole,
      String ok) {
    Asked asked = BASE.with("thickness_in", thickness).with("gap_in", gap).with("hole_in", hole);
    assertThat(asked.answer("thick_enough")).isEqualTo(thick);
    assertThat(asked.answer("gap_ok")).isEqualTo(tight);
    assertThat(asked.answer("hole_ok")).isEqualTo(whole);
    assertThat(asked.answer("ok")).isEqualTo(ok);
  }

  @Test
  void boardBase_takesTheMakersOwnLimits() {
    Asked old = BASE.with("thickness_in", "3/4").with("gap_in", "1/2");
    assertThat(old.answer("ok")).isEqualTo("no");
    assertThat(old.with("min_thickness_in", "3/4").with("max_gap_in", "1/2").answer("ok"))
        .isEqualTo("yes");
  }
}
