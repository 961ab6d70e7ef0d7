package sheathwright.sheathing;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.pitch;
import static sheathwright.figure.Amounts.usdPerPiece;
import static sheathwright.figure.Amounts.usdPerSheet;

import org.junit.jupiter.api.Test;
import sheathwright.roof.House;
import sheathwright.roof.HouseBody;
import sheathwright.roof.Houses;
import sheathwright.roof.RoofEnds;
import sheathwright.roof.Supports;
import sheathwright.sheathing.layout.DeckLayout;

/** Sheets come first, and what another choice costs is arithmetic on counts and prices. */
class LayoutChoicesTest {

  private static final House GABLE =
      Houses.house(HouseBody.length(ft(42)).width(ft(30)).rise(pitch(6)).ends(RoofEnds.GABLED));
  private static final Supports RAFTERS = Supports.every(in(24));

  @Test
  void aHouse_isLaidOnAllItsPlanes() {
    DeckLayout deck = Layouts.layout(GABLE, RAFTERS);
    assertThat(deck.planes()).hasSize(2);
    // no fewer than its area takes: 42 × 30 × 1.118034 ÷ 32 = 44.02
    assertThat(deck.sheets().value()).isGreaterThanOrEqualTo(45);
  }

  @Test
  void eachFurtherLayout_buysFewerShortPiecesWithSheets() {
    LayoutChoices choices = Layouts.layoutChoices(GABLE, RAFTERS, usdPerSheet(38), usdPerPiece(4));
    assertThat(choices.layouts()).isNotEmpty();
    for (int i = 1; i < choices.layouts().size(); i++) {
      DeckLayout before = choices.layouts().get(i - 1);
      DeckLayout here = choices.layouts().get(i);
      assertThat(here.sheets().value()).isGreaterThan(before.sheets().value());
      assertThat(here.shortPieces().value()).isLessThan(before.shortPieces().value());
      double more = here.sheets().value() - choices.first().sheets().value();
      double less = choices.first().shortPieces().value() - here.shortPieces().value();
      assertThat(choices.sheetsMore(here).value()).isEqualTo(38 * more);
      assertThat(choices.blockingLess(here).value()).isEqualTo(4 * less);
    }
    assertThat(choices.toString()).startsWith(choices.first().sheets() + ", ");
  }
}
