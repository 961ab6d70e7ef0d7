package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheathwright.cutting.CannotBeCutException;
import sheathwright.cutting.Patience;

/** Cases that can be checked by hand, in 1/8 in on a sheet of 96 by 48 in with a kerf of 1/8 in. */
class SheetTinyCasesTest {

  private static SheetOrder order(long kerf, SheetPiece... pieces) {
    return new SheetOrder(768, 384, List.of(), List.of(pieces), kerf);
  }

  private static SheetPlan plan(SheetOrder order) {
    return SheetCutting.plan(order, Patience.ENDLESS);
  }

  @ParameterizedTest(name = "{2} pieces of {0} by {1} eighths: {3} sheets")
  @CsvSource({
    "255, 383, 3, 1", // three of 31 7/8 in and two kerfs are 95 7/8 in
    "256, 383, 3, 2", // three of 32 in and two kerfs are 96 1/4 in
    "383, 191, 4, 1", // two by two of 47 7/8 by 23 7/8 in
    "767,  95, 7, 2", // four of 11 7/8 in and three kerfs are 47 7/8 in
    "767,  96, 7, 3", // four of 12 in and three kerfs are 48 3/8 in
    "768, 384, 2, 2", // a whole sheet each, no cut
    "767, 383, 1, 1", // the rest is as thin as the kerf
  })
  void equalPieces_takeTheSheetsCountedByHand(long width, long height, int count, int sheets) {
    SheetPlan plan = plan(order(1, new SheetPiece(width, height, count)));
    assertThat(plan.newSheets()).isEqualTo(sheets);
    assertThat(plan.isProven()).isTrue();
  }

  @Test
  void piece_isNotTurned() {
    assertThatThrownBy(() -> plan(order(1, new SheetPiece(383, 767, 2))))
        .isInstanceOf(CannotBeCutException.class)
        .hasMessageContaining("quarter turn")
        .extracting(refusal -> ((CannotBeCutException) refusal).piece())
        .isEqualTo(0);
  }

  @Test
  void piece_thatIsTooLargeIsNamed() {
    assertThatThrownBy(() -> plan(order(1, new SheetPiece(100, 100, 1), new SheetPiece(769, 9, 1))))
        .isInstanceOf(CannotBeCutException.class)
        .extracting(refusal -> ((CannotBeCutException) refusal).piece())
        .isEqualTo(1);
  }

  /** They fill 4416 of 4608 square inches, but only round a hole; no saw can do it. */
  @Test
  void pinwheel_takesTwoSheets() {
    SheetPlan plan = plan(order(0, new SheetPiece(480, 160, 2), new SheetPiece(288, 224, 2)));
    assertThat(plan.newSheets()).isEqualTo(2);
    assertThat(plan.isProven()).isTrue();
  }

  @Test
  void noPieces_takeNoSheets() {
    SheetPlan plan = plan(order(1));
    assertThat(plan.sheets()).isEmpty();
    assertThat(plan.newSheets()).isZero();
    assertThat(plan.isProven()).isTrue();
  }

  @Test
  void wholeSheet_needsNoCutAndLeavesNothing() {
    CutSheet sheet = plan(order(1, new SheetPiece(768, 384, 1))).sheets().get(0);
    assertThat(sheet.cuts()).isEmpty();
    assertThat(sheet.rest()).isEqualTo(SheetPart.NONE);
  }

  /** Two strips of 16 in off the long side: two cuts, and 15 3/4 in are left. */
  @Test
  void strips_takeOneCutEachAndLeaveTheRest() {
    CutSheet sheet = plan(order(1, new SheetPiece(768, 128, 2))).sheets().get(0);
    assertThat(sheet.cuts()).hasSize(2);
    assertThat(sheet.rest()).isEqualTo(new SheetPart(0, 258, 768, 126));
  }

  /** A piece of 32 by 24 in: along or across first leaves 63 7/8 by 48 in as the larger rest. */
  @Test
  void lastSheet_leavesTheLargerRest() {
    CutSheet sheet = plan(order(1, new SheetPiece(256, 192, 1))).sheets().get(0);
    assertThat(sheet.rest()).isEqualTo(new SheetPart(257, 0, 511, 384));
  }

  @Test
  void offcut_isUsedBeforeASheetIsBought() {
    SheetOrder order =
        new SheetOrder(
            768, 384, List.of(new Offcut(300, 200, 1)), List.of(new SheetPiece(300, 200, 2)), 1);
    SheetPlan plan = plan(order);
    assertThat(plan.sheets()).extracting(CutSheet::offcut).containsExactly(0, CutSheet.NEW);
    assertThat(plan.newSheets()).isEqualTo(1);
    assertThat(plan.isProven()).isTrue();
  }

  @Test
  void offcuts_mayMakeEverySheetNeedless() {
    SheetOrder order =
        new SheetOrder(
            768, 384, List.of(new Offcut(800, 100, 2)), List.of(new SheetPiece(780, 90, 2)), 1);
    assertThat(plan(order).newSheets()).isZero();
  }

  @Test
  void piece_thatFitsOnlyOffcutsInUseIsRefused() {
    SheetOrder order =
        new SheetOrder(
            768, 384, List.of(new Offcut(800, 100, 1)), List.of(new SheetPiece(780, 90, 2)), 1);
    assertThatThrownBy(() -> plan(order))
        .isInstanceOf(CannotBeCutException.class)
        .hasMessageContaining("offcuts");
  }

  /** The offcut is left to the piece that fits nothing else. */
  @Test
  void pieceThatFitsOnlyAnOffcut_comesFirst() {
    SheetOrder order =
        new SheetOrder(
            768,
            384,
            List.of(new Offcut(800, 100, 1)),
            List.of(new SheetPiece(500, 90, 1), new SheetPiece(780, 90, 1)),
            1);
    SheetPlan plan = plan(order);
    assertThat(plan.newSheets()).isEqualTo(1);
    assertThat(plan.isProven()).isTrue();
  }

  @ParameterizedTest(name = "{0} by {1}, {2} times")
  @CsvSource({"0, 5, 1", "5, -1, 1", "5, 5, 0", "1000000001, 5, 1"})
  void nonsense_isRefused(long width, long height, int count) {
    assertThatThrownBy(() -> new SheetPiece(width, height, count))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Offcut(width, height, count))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void negativeKerf_isRefused() {
    assertThatThrownBy(() -> order(-1)).isInstanceOf(IllegalArgumentException.class);
  }
}
