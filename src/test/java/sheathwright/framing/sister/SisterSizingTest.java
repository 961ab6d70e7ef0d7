package sheathwright.framing.sister;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.psf;
import static sheathwright.figure.Amounts.psi;
import static sheathwright.figure.Amounts.usdPerPiece;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sheathwright.framing.rafter.RafterLoad;
import sheathwright.framing.stop.RepairDecision.Decision;
import sheathwright.wood.Grade;
import sheathwright.wood.GradeStamp;
import sheathwright.wood.Species;

/** Sizes of sisters by price, against plain sorting and a hand calculation. */
class SisterSizingTest {

  private static final double[] DEPTHS = {3.5, 5.5, 7.25, 9.25, 11.25};
  private static final String[] WORDS = {"2x4", "2x6", "2x8", "2x10", "2x12"};

  /** Spruce-pine-fir no. 2 in the 2018 supplement: Fb 875 psi, E 1,400,000 psi, and CF by size. */
  private static final double[] SIZE_FACTORS = {1.5, 1.3, 1.2, 1.1, 1.0};

  private static SisterSizes sizes(double live, double span, double[] prices) {
    return SisterSizing.sisterSizes(
        RafterPly.depth(in(3.5)).bending(psi(1735.78125)),
        GradeStamp.of(Species.SPRUCE_PINE_FIR, Grade.NO_2),
        RafterLoad.SNOW,
        SisterLoad.of(SpanLoad.span(ft(span)).spacing(in(24)).live(psf(live)).dead(psf(10)))
            .existing(psf(4)),
        StickPrices.none()
            .price2x4(usdPerPiece(prices[0]))
            .price2x6(usdPerPiece(prices[1]))
            .price2x8(usdPerPiece(prices[2]))
            .price2x10(usdPerPiece(prices[3]))
            .price2x12(usdPerPiece(prices[4])));
  }

  private static double ratioByHand(int size, double live, double span) {
    double inches = span * 12;
    double perPsf = 24 / 144d * inches * inches / 8;
    double old = 1.5 * Math.pow(3.5, 3) / 12;
    double own = 1.5 * Math.pow(DEPTHS[size], 3) / 12;
    double share = own / (old + own);
    double added = (live + 6) * perPsf;
    double rafter = (4 * perPsf + (1 - share) * added) / (1.5 * 3.5 * 3.5 / 6) / 1735.78125;
    double allowed = 875 * 1.15 * 1.15 * SIZE_FACTORS[size];
    double sister = share * added / (1.5 * DEPTHS[size] * DEPTHS[size] / 6) / allowed;
    double sag =
        5 * (live * 24 / 144) * Math.pow(inches, 4) / (384 * 1.4e6 * (old + own)) / (inches / 180);
    return Math.max(sag, Math.max(rafter, sister));
  }

  @Test
  void ratios_areTheHandCalculation() {
    SisterSizes answer = sizes(38.5, 10, new double[] {8, 11, 17.1, 24, 31});
    for (int i = 0; i < 5; i++) {
      assertThat(answer.sizes().get(i).ratio().value())
          .isCloseTo(ratioByHand(i, 38.5, 10), within(1e-9));
    }
    assertThat(answer.ratio2x12()).isSameAs(answer.sizes().get(4).ratio());
  }

  @Test
  void ranks_areThoseOfPlainSorting() {
    Random chance = new Random(5);
    int chosen = 0;
    for (int i = 0; i < 200; i++) {
      double live = 15 + 60 * chance.nextDouble();
      double span = 7 + 7 * chance.nextDouble();
      double[] prices = new double[5];
      for (int k = 0; k < 5; k++) {
        // whole dollars, so that two sizes often cost the same; nothing now and then
        prices[k] = Math.max(0, chance.nextInt(12) - 1);
      }
      int[] passing =
          IntStream.range(0, 5)
              .filter(k -> prices[k] > 0 && ratioByHand(k, live, span) <= 1)
              .toArray();
      SisterSizes answer = sizes(live, span, prices);
      for (int k = 0; k < 5; k++) {
        int size = k;
        if (Arrays.stream(passing).anyMatch(p -> p == size)) {
          long cheaper = Arrays.stream(passing).filter(p -> prices[p] < prices[size]).count();
          assertThat(answer.sizes().get(k).rank().value()).isEqualTo(1 + cheaper);
        } else {
          assertThat(answer.sizes().get(k).rank())
              .hasToString(prices[k] > 0 ? "does not pass" : "not sold");
        }
      }
      if (passing.length == 0) {
        assertThat(answer.cheapest().value()).isEqualTo("none passes");
        assertThat(answer.price()).hasToString("none passes");
      } else {
        int best = passing[0];
        for (int p : passing) {
          best = prices[p] < prices[best] ? p : best;
        }
        chosen++;
        assertThat(answer.cheapest().value()).isEqualTo(WORDS[best]);
        assertThat(answer.price().value()).isEqualTo(prices[best]);
      }
    }
    assertThat(chosen).isBetween(30, 190);
  }

  @Test
  void decision_isTheEngineersWhereTheOldRafterAloneIsTooWeak() {
    double[] prices = {8, 11, 17.1, 24, 31};
    assertThat(sizes(38.5, 10, prices).decision().value()).isEqualTo(Decision.STOP_ENGINEER);
    assertThat(sizes(10, 6, prices).decision().value()).isEqualTo(Decision.WITHIN);
  }

  @Test
  void roll_holdsTheFiveSizes() {
    var roll = sizes(38.5, 10, new double[] {8, 11, 17.1, 24, 0}).roll();
    assertThat(roll.rows()).hasSize(5);
    assertThat(roll.cellsOf("size")).extracting(cell -> cell.plain()).containsExactly(WORDS);
    assertThat(roll.cellsOf("rank")).extracting(cell -> cell.plain()).endsWith("");
  }
}
