package sheathwright.fastening.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.catalog.Asked;
import sheathwright.figure.Amounts;
import sheathwright.roof.PlaneSize;
import sheathwright.roof.SheetSize;

class NailOrdersTest {

  /** A worked answer of the trade: 62 sheets of 45 nails and 5 % are 2929.5, two boxes of 2500. */
  @Test
  void nailOrder_isTheWorkedOrder() {
    Asked order = Asked.of("nail_order").with("nails", "2790").with("waste_pct", "5");
    assertThat(order.number("nails_with_waste")).isCloseTo(2929.5, within(0.01));
    assertThat(order.number("boxes")).isEqualTo(2);
    // by hand: 2929.5 ÷ 100 and ÷ 300
    assertThat(order.with("nails_per_pound", "100").number("pounds_lb"))
        .isCloseTo(29.295, within(1e-9));
    assertThat(order.with("nails_per_coil", "300").number("coils")).isEqualTo(10);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "1, 1", "2500, 1", "2501, 2"})
  void boxes_areWhole(String nails, double boxes) {
    assertThat(Asked.of("nail_order").with("nails", nails).with("waste_pct", "0").number("boxes"))
        .isEqualTo(boxes);
  }

  /** Independent: courses laid one by one, their joints set down one by one. */
  @Test
  void seamLength_agreesWithCoursesLaidOneByOne() {
    Random random = new Random(96);
    for (int i = 0; i < 2_000; i++) {
      double eave = random.nextInt(1, 400) / 4.0 + 1;
      double slope = random.nextInt(1, 160) / 4.0 + 1;
      double found =
          NailOrders.seamLength(
                  PlaneSize.eave(Amounts.ft(eave)).slope(Amounts.ft(slope)),
                  SheetSize.FOUR_BY_EIGHT)
              .value();
      assertThat(found).as("%s by %s", eave, slope).isCloseTo(seams(eave, slope), within(1e-9));
    }
  }

  private static double seams(double eave, double slope) {
    double feet = 0;
    int course = 0;
    for (double bottom = 0; bottom < slope; bottom += 4) {
      double height = Math.min(4, slope - bottom);
      feet += bottom > 0 ? eave : 0;
      for (double joint = course % 2 == 0 ? 8 : 4; joint < eave; joint += 8) {
        feet += height;
      }
      course++;
    }
    return feet;
  }
}
