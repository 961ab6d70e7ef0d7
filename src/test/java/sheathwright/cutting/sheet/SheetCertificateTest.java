package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;
import sheathwright.cutting.program.Certificate;

/** Certificates of real orders, and wrong ones made by hand, before the checker. */
class SheetCertificateTest {

  /** Two pieces of 60 by 48 on sheets of 96 by 48: each needs one. */
  private static final SheetOrder TWO = order(0, new SheetPiece(60, 48, 2));

  private static SheetOrder order(long kerf, SheetPiece... pieces) {
    return new SheetOrder(96, 48, List.of(), List.of(pieces), kerf);
  }

  private static boolean holds(SheetOrder order, long parts, long worth, long atLeast) {
    Certificate certificate = new Certificate(parts, List.of(worth), List.of(), atLeast);
    return SheetCertificateCheck.holds(order, certificate);
  }

  @Test
  void whatEachPieceIsWorth_addsUpToTheBound() {
    assertThat(holds(TWO, 1, 1, 2)).isTrue();
    assertThat(holds(order(0, new SheetPiece(48, 48, 4)), 2, 1, 2)).isTrue();
    assertThat(holds(order(1, new SheetPiece(48, 48, 4)), 1, 1, 4)).isTrue();
    assertThat(holds(order(0, new SheetPiece(24, 24, 9)), 8, 1, 2)).isTrue();
  }

  @Test
  void wrongCertificates_areRefused() {
    assertThat(holds(TWO, 1, 1, 3)).isFalse();
    assertThat(holds(TWO, 1, 2, 2)).isFalse();
    assertThat(holds(TWO, 0, 1, 2)).isFalse();
    assertThat(holds(order(0, new SheetPiece(48, 48, 4)), 1, 1, 4)).isFalse();
    assertThat(holds(order(0, new SheetPiece(24, 24, 9)), 7, 1, 2)).isFalse();
  }

  /** An offcut that holds a piece earns it, or the bound is too high. */
  @Test
  void offcuts_earn() {
    SheetOrder order = new SheetOrder(96, 48, List.of(new Offcut(60, 48, 1)), TWO.pieces(), 0);
    assertThat(SheetCertificateCheck.holds(order, new Certificate(1, List.of(1L), List.of(1L), 1)))
        .isTrue();
    assertThat(SheetCertificateCheck.holds(order, new Certificate(1, List.of(1L), List.of(0L), 2)))
        .isFalse();
  }

  @Test
  void everyBoundOfRandomOrders_isHeldAndNoMore() {
    SplittableRandom random = new SplittableRandom(20_261_128);
    for (int turn = 0; turn < 25; turn++) {
      List<SheetPiece> pieces = new ArrayList<>();
      for (int kind = 0; kind < 6; kind++) {
        pieces.add(
            new SheetPiece(random.nextInt(10, 60), random.nextInt(8, 40), random.nextInt(1, 6)));
      }
      List<Offcut> offcuts = List.of(new Offcut(random.nextInt(20, 70), random.nextInt(12, 48), 1));
      SheetOrder order = new SheetOrder(96, 48, offcuts, pieces, random.nextInt(0, 2));
      Certificate proven = SheetCutting.certificate(order, 1_000, Patience.asked(100_000));
      assertThat(SheetCertificateCheck.holds(order, proven)).isTrue();
      assertThat(
              SheetCertificateCheck.holds(
                  order,
                  new Certificate(
                      proven.parts(), proven.worth(), proven.earning(), proven.atLeast() + 1)))
          .isFalse();
    }
  }
}
