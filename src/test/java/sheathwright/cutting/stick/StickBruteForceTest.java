package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;

/**
 * Small lists against every way to share the pieces out. Independent: it tries each set of pieces
 * for the stick that holds the first piece left, on each stock. The same lists each time.
 */
class StickBruteForceTest {

  private static final int LISTS = 400;
  private static final long NEVER = Long.MAX_VALUE / 4;

  @Test
  void plan_costsWhatTheBestOfAllWaysCosts() {
    Random random = new Random(20_261_125);
    int impossible = 0;
    int closed = 0;
    for (int list = 0; list < LISTS; list++) {
      StickOrder order = order(random);
      int[] supply = order.stock().stream().mapToInt(StockLength::available).toArray();
      long least = least(order, pieces(order), supply, 0);
      if (least >= NEVER) {
        impossible++;
        assertThatThrownBy(() -> StickCutting.plan(order, Patience.ENDLESS))
            .as("list %d, %s", list, order)
            .isInstanceOf(CannotBeCutException.class);
      } else {
        StickPlan plan = StickCutting.plan(order, Patience.ENDLESS);
        assertThat(plan.cost()).as("cost of list %d, %s", list, order).isEqualTo(least);
        assertThat(plan.atLeast()).as("bound of list %d, %s", list, order).isEqualTo(least);
        Certificate certificate = plan.certificate();
        assertThat(StickCertificateCheck.holds(order, certificate))
            .as("certificate of list %d, %s, %s", list, order, certificate)
            .isTrue();
        assertThat(certificate.atLeast()).isLessThanOrEqualTo(least);
        closed += certificate.atLeast() == least ? 1 : 0;
      }
    }
    assertThat(impossible).isBetween(1, LISTS / 2);
    assertThat(closed).as("lists that the certificate alone proves").isGreaterThan(LISTS / 4);
  }

  private static StickOrder order(Random random) {
    List<StockLength> stock = new ArrayList<>();
    int stocks = 1 + random.nextInt(4);
    for (int k = 0; k < stocks; k++) {
      int available = random.nextInt(3) == 0 ? 1 + random.nextInt(3) : StockLength.ANY;
      int price = random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(40);
      stock.add(new StockLength(40 + random.nextInt(60), price, available));
    }
    List<StickPiece> pieces = new ArrayList<>();
    int left = 1 + random.nextInt(8);
    while (left > 0) {
      int count = 1 + random.nextInt(left);
      pieces.add(new StickPiece(5 + random.nextInt(50), count));
      left -= count;
    }
    return new StickOrder(stock, pieces, random.nextInt(4), random.nextInt(3));
  }

  private static long[] pieces(StickOrder order) {
    return order.pieces().stream()
        .flatMapToLong(piece -> LongStream.generate(piece::length).limit(piece.count()))
        .toArray();
  }

  private static long least(StickOrder order, long[] pieces, int[] supply, int done) {
    int all = (1 << pieces.length) - 1;
    if (done == all) {
      return 0;
    }
    int first = Integer.lowestOneBit(all & ~done);
    int others = all & ~done & ~first;
    long least = NEVER;
    for (int some = others; ; some = (some - 1) & others) {
      int together = some | first;
      for (int k = 0; k < supply.length; k++) {
        if (supply[k] > 0 && fits(order, pieces, together, order.stock().get(k).length())) {
          int[] rest = Arrays.copyOf(supply, supply.length);
          rest[k]--;
          long price = order.stock().get(k).price();
          least = Math.min(least, price + least(order, pieces, rest, done | together));
        }
      }
      if (some == 0) {
        return least;
      }
    }
  }

  private static boolean fits(StickOrder order, long[] pieces, int together, long stick) {
    long needed = 2 * order.trim() + (Integer.bitCount(together) - 1) * order.kerf();
    for (int i = 0; i < pieces.length; i++) {
      needed += (together >> i & 1) * pieces[i];
    }
    return needed <= stick;
  }
}
