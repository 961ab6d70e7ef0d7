package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.lb;
import static sheathwright.figure.Amounts.psf;

import org.junit.jupiter.api.Test;
import sheathwright.fastening.uplift.UpliftSpacings;
import sheathwright.figure.Check;
import sheathwright.figure.Working;
import sheathwright.repl.show.Explained;
import sheathwright.roof.Plane;
import sheathwright.roof.Supports;
import sheathwright.sheathing.Layouts;
import sheathwright.sheathing.layout.DeckLayout;

/** What the crew marks or cuts stands in fractions, and nothing shows how Java would write it. */
class ShowsTest {

  @Test
  void aSpacing_isRoundedDownAndSaysSo() {
    // 80 lb ÷ (42 psf × 16 in): 80 × 144 ÷ (42 × 16) = 17.142857 in, between 17-2/16 and 17-3/16
    assertThat(Shows.variable("gap", UpliftSpacings.nailSpacingForUplift(lb(80), psf(42), in(16))))
        .isEqualTo("gap = 17-1/8 in, rounded down");
  }

  @Test
  void theCourseAtTheRidge_isCutDown() {
    // 161 in less three courses of 48 leaves 17; a third of an inch more lies above 5/16
    DeckLayout deck =
        Layouts.layout(Plane.rectangle("south", ft(16), in(161 + 1 / 3.0)), Supports.every(in(24)));
    assertThat(Shows.text(deck)).contains("17-5/16 in, rounded down");
  }

  @Test
  void aCutList_isReadBySheet() {
    // 8 ft by 7 ft: a whole course, then one of 3 ft, 36 in less the gap of 1/8
    DeckLayout deck = Layouts.layout(Plane.rectangle("shed", ft(8), ft(7)), Supports.every(in(24)));
    assertThat(Shows.text(deck.cutList()))
        .contains("sheet 1: shed 2-1 47-7/8 by 35-7/8")
        .endsWith("inches, a piece between two sixteenths rounded down");
  }

  @Test
  void aThingWithoutWordsOfItsOwn_isATableOfItsParts() {
    assertThat(Shows.text(new Bare(Plane.rectangle("shed", ft(8), ft(4)))))
        .contains("plane()", "plane shed, 32 sq ft")
        .doesNotContain("Bare", "[");
  }

  /** A thing without words of its own. */
  record Bare(Plane plane) {}

  @Test
  void aLaidPlane_isSaidInWords() {
    DeckLayout deck = Layouts.layout(Plane.rectangle("shed", ft(8), ft(4)), Supports.every(in(24)));
    assertThat(Shows.text(deck.planes().get(0))).isEqualTo("1 sheet laid on plane shed, 32 sq ft");
  }

  @Test
  void nothing_isCalledSo() {
    assertThat(Shows.text(null)).isEqualTo("nothing");
  }

  @Test
  void aCheck_isExplainedAsATree() {
    Check check = Check.of("bending", "bending_ratio", in(3), in(2));
    assertThat(Explained.briefly(check, "", 1, Working.USUAL, 80))
        .isEqualTo(
            """
            NOT ok: bending
            ├─ demand:
            │  demand = 3 in                                                   given
            ├─ capacity:
            │  capacity = 2 in                                                 given
            └─ ratio: demand ÷ capacity = 1.5, at most 1 is allowed""");
  }
}
