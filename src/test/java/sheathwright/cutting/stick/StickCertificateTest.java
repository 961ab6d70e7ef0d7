package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;

/** Certificates of real plans, and wrong ones made by hand, before the checker. */
class StickCertificateTest {

  /** Two pieces of 60 on sticks of 96 at 5: each piece alone is worth a stick. */
  private static final StickOrder TWO_STICKS =
      new StickOrder(
          List.of(new StockLength(96, 5, StockLength.ANY)), List.of(new StickPiece(60, 2)), 0, 0);

  /** As before, but pieces of 48 go two on a stick, and a kerf leaves no room for the second. */
  private static StickOrder halves(long kerf) {
    return new StickOrder(
        List.of(new StockLength(96, 5, StockLength.ANY)), List.of(new StickPiece(48, 4)), kerf, 0);
  }

  private static Certificate certificate(long parts, long worth, long earning, long atLeast) {
    return new Certificate(parts, List.of(worth), List.of(earning), atLeast);
  }

  @Test
  void whatEachPieceIsWorth_addsUpToTheBound() {
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(1, 5, 0, 10))).isTrue();
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(2, 9, 0, 9))).isTrue();
    assertThat(StickCertificateCheck.holds(halves(0), certificate(2, 5, 0, 10))).isTrue();
    assertThat(StickCertificateCheck.holds(halves(1), certificate(1, 5, 0, 20))).isTrue();
  }

  @Test
  void wrongCertificates_areRefused() {
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(1, 5, 0, 11))).isFalse();
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(1, 6, 0, 10))).isFalse();
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(1, 6, 1, 11))).isFalse();
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(0, 5, 0, 10))).isFalse();
    assertThat(StickCertificateCheck.holds(TWO_STICKS, certificate(1, 5, -1, 11))).isFalse();
    assertThat(StickCertificateCheck.holds(halves(0), certificate(1, 5, 0, 20))).isFalse();
    Certificate tooShort = new Certificate(1, List.of(), List.of(0L), 0);
    assertThat(StickCertificateCheck.holds(TWO_STICKS, tooShort)).isFalse();
  }

  /** Of the one cheap stick each may earn 4: 2 pieces at 5, less 4, is 6. */
  @Test
  void limitedStock_earns() {
    StickOrder order =
        new StickOrder(
            List.of(new StockLength(96, 1, 1), new StockLength(96, 5, StockLength.ANY)),
            List.of(new StickPiece(60, 2)),
            0,
            0);
    assertThat(holds(order, 4, 6)).isTrue();
    assertThat(holds(order, 3, 7)).isFalse();
    assertThat(StickCutting.plan(order, Patience.ENDLESS).certificate().atLeast()).isEqualTo(6);
  }

  private static boolean holds(StickOrder order, long earning, long atLeast) {
    return StickCertificateCheck.holds(
        order, new Certificate(1, List.of(5L), List.of(earning, 0L), atLeast));
  }

  /** Lists with several sizes, kerf, trim, limited and useless stock, the same each time. */
  @Test
  void certificate_holdsOnRandomLists() {
    Random random = new Random(20_261_128);
    for (int list = 0; list < 200; list++) {
      List<StockLength> stock = new ArrayList<>();
      stock.add(new StockLength(400 + random.nextInt(400), 50, StockLength.ANY));
      for (int k = random.nextInt(4); k > 0; k--) {
        int available = random.nextBoolean() ? StockLength.ANY : random.nextInt(6);
        stock.add(new StockLength(100 + random.nextInt(700), random.nextInt(90), available));
      }
      List<StickPiece> pieces = new ArrayList<>();
      for (int i = 1 + random.nextInt(12); i > 0; i--) {
        pieces.add(new StickPiece(20 + random.nextInt(340), random.nextInt(7)));
      }
      StickOrder order = new StickOrder(stock, pieces, random.nextInt(4), random.nextInt(3));
      StickPlan plan = StickCutting.plan(order, Patience.asked(200));
      assertThat(StickCertificateCheck.holds(order, plan.certificate()))
          .as("list %d: %s, %s", list, order, plan.certificate())
          .isTrue();
      assertThat(plan.certificate().atLeast()).isLessThanOrEqualTo(plan.cost());
    }
  }
}
