package sheathwright.sheathing.panel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.in;
import static sheathwright.sheathing.panel.PanelKind.OSB;
import static sheathwright.sheathing.panel.PanelKind.PLYWOOD;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.figure.Lengths;
import sheathwright.roof.SheetSize;

class PanelWeightTest {

  private static double sheet(PanelCategory category, PanelKind kind) {
    return Panels.panelWeight(category, kind, SheetSize.FOUR_BY_EIGHT).sheet().value();
  }

  /** The trade's pounds of a 4 by 8 sheet, from the same kind of list secondary source. */
  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "CATEGORY_7_16, OSB, 44, 46",
    "CATEGORY_15_32, PLYWOOD, 44.8, 48",
    "CATEGORY_15_32, OSB, 44.8, 48",
    "CATEGORY_1_2, PLYWOOD, 48, 54.4",
    "CATEGORY_1_2, OSB, 48, 54.4",
    "CATEGORY_19_32, PLYWOOD, 57.6, 64",
    "CATEGORY_19_32, OSB, 57.6, 64"
  })
  void sheet_weighsWhatTheTradeSays(
      PanelCategory category, PanelKind kind, double least, double most) {
    assertThat(sheet(category, kind)).isBetween(least - 1e-9, most + 1e-9);
  }

  /** ASCE 7-10 Table C3-1, read: plywood weighs 0.4 psf for each 1/8 in. */
  @ParameterizedTest
  @CsvSource({
    "CATEGORY_3_8, 3/8", "CATEGORY_7_16, 7/16", "CATEGORY_15_32, 15/32", "CATEGORY_1_2, 1/2",
    "CATEGORY_19_32, 19/32", "CATEGORY_5_8, 5/8", "CATEGORY_23_32, 23/32", "CATEGORY_3_4, 3/4"
  })
  void plywood_isWithinATenthOfTheStandardsRule(PanelCategory category, String thickness) {
    double byRule = 0.4 * 8 * Lengths.inches(thickness);
    double listed = Panels.panelWeight(category, PLYWOOD, SheetSize.FOUR_BY_EIGHT).weight().value();
    assertThat(listed).isCloseTo(byRule, within(0.1 * byRule));
    assertThat(sheet(category, OSB)).isGreaterThan(sheet(category, PLYWOOD));
  }

  /** By hand: 14 sheets of 7/16 OSB on one spot are 19.6 psf, just under a 20 psf roof. */
  @Test
  void aStackOfFourteen_isAllThatAnOldRoofBears() {
    double one =
        Panels.panelWeight(PanelCategory.CATEGORY_7_16, OSB, SheetSize.FOUR_BY_EIGHT)
            .weight()
            .value();
    assertThat(14 * one).isCloseTo(19.6, within(1e-9));
    assertThat(15 * one).isGreaterThan(20);
  }

  /** By hand: 2.3 psf on 4 by 2 ft. */
  @Test
  void aPiece_weighsItsShareOfTheSheet() {
    PanelWeight piece =
        Panels.panelWeight(
            PanelCategory.CATEGORY_3_4, PLYWOOD, SheetSize.length(in(48)).width(in(24)));
    assertThat(piece.sheet().value()).isCloseTo(18.4, within(1e-9));
  }
}
