package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Roll;
import sheathwright.figure.Source;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.sister.RafterPly;
import sheathwright.framing.sister.SisterLoad;
import sheathwright.framing.sister.SisterSizes;
import sheathwright.framing.sister.SisterSizing;
import sheathwright.framing.sister.SpanLoad;
import sheathwright.framing.sister.StickPrices;
import sheathwright.wood.Grade;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.Species;
import sheathwright.workbook.file.Particulars;
import sheathwright.workbook.page.Agreement;
import sheathwright.workbook.page.Sections;

/** The list of sister sizes as a table of a workbook that goes on ranking by itself. */
class SisterSizesListTest {

  private static final double[] PRICES = {8, 11, 17.1, 24, 31};

  /** A workbook with the list, its woods and prices being cells to change. */
  private static final class Listed {

    final Book book = new Book(Particulars.of("A test", ""));
    final SisterSizes sizes;

    Listed(Species species, Grade grade, double... prices) {
      List<Figure<Per<Money, Pieces>>> given = new ArrayList<>();
      for (int i = 0; i < prices.length; i++) {
        given.add(
            Figure.input(
                "stick_" + (i + 1), prices[i], Units.USD_PER_PIECE, Limits.NONE, Source.GIVEN));
      }
      Choice<Species> wood = Choice.input("sister_wood", species, Source.GIVEN);
      Choice<Grade> stamp = Choice.input("sister_stamp", grade, Source.GIVEN);
      sizes =
          SisterSizing.sisterSizes(
              RafterPly.depth(in(3.5)).bending(psi(1735.78)),
              GradeStamp.of(wood, stamp),
              RafterLoad.SNOW,
              SisterLoad.of(SpanLoad.span(ft(10)).spacing(in(24)).live(psf(38.5)).dead(psf(10.8)))
                  .existing(psf(0)),
              StickPrices.none()
                  .price2x4(given.get(0))
                  .price2x6(given.get(1))
                  .price2x8(given.get(2))
                  .price2x10(given.get(3))
                  .price2x12(given.get(4)));
      Tab tab = book.tab("Proof", 24, 12, 12, 12, 12, 12, 12, 24);
      tab.entry("wood", wood, "");
      tab.entry("grade", stamp, "");
      given.forEach(price -> tab.entry(price.name(), price, ""));
      Roll roll = sizes.roll();
      Unit<?>[] units = new Unit<?>[roll.columns().size()];
      tab.list(roll, roll.columns(), Arrays.asList(units));
      tab.entry("cheapest", sizes.cheapest(), "");
      tab.entry("its price", sizes.price(), "");
      tab.entry("who decides", sizes.decision(), "");
    }

    byte[] file() {
      return book.finished(
          Sections.workingTab(book, "invented"), Sections.tablesTab(book, "invented"));
    }
  }

  private static Listed listed() {
    return new Listed(Species.SPRUCE_PINE_FIR, Grade.NO_2, PRICES);
  }

  /** The first workbook, its inputs set to another's, is recalculated to what the other holds. */
  private static void assertFollows(Listed changed) {
    Map<String, Object> wanted = Cells.written(changed.file());
    try (Engine engine = Engine.of(listed().file())) {
      engine.edit(changed.book.inputs());
      assertThat(Agreement.differences(wanted, engine.values())).isEmpty();
    }
  }

  @Test
  void list_isWhatTheEngineRecalculates() {
    byte[] file = listed().file();
    assertThat(Agreement.differences(Cells.written(file), Cells.byPoi(file))).isEmpty();
    assertThat(Cells.byPoi(file)).containsValues("2x8", "does not pass");
  }

  @ParameterizedTest
  @CsvSource({
    "8, 11, 40, 24, 31",
    "8, 11, 40, 0, 31",
    "8, 11, 24, 24, 24",
    "8, 11, 0, 0, 0",
    "0.5, 0.5, 40, 39, 38"
  })
  void prices_rankAnew(double a, double b, double c, double d, double e) {
    Listed changed = new Listed(Species.SPRUCE_PINE_FIR, Grade.NO_2, a, b, c, d, e);
    assertThat(changed.sizes.cheapest().value()).isNotEqualTo("2x4");
    assertFollows(changed);
  }

  @ParameterizedTest
  @EnumSource(Species.class)
  void everySpecies_ranksAnew(Species species) {
    assertFollows(new Listed(species, Grade.NO_2, PRICES));
  }

  @Test
  void anotherWood_canMakeASmallerSizePass() {
    // by hand, a 2x6 of spruce-pine-fir no. 2 is used to 1.03, of Douglas fir-larch select to 0.64
    assertThat(listed().sizes.cheapest().value()).isEqualTo("2x8");
    Listed better = new Listed(Species.DOUGLAS_FIR_LARCH, Grade.SELECT_STRUCTURAL, PRICES);
    assertThat(better.sizes.cheapest().value()).isEqualTo("2x6");
    assertFollows(better);
  }
}
