package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.cutting.Patience;

/** What holds for every order, on invented lists of patches. */
class SheetPropertiesTest {

  private static SheetPlan plan(SheetOrder order) {
    return SheetCutting.plan(order, Patience.ENDLESS);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void plan_buysAtLeastTheAreaOfItsPieces(int seed) {
    SheetOrder order = SheetOrders.patches(seed);
    SheetPlan plan = plan(order);
    long area =
        order.pieces().stream()
            .mapToLong(piece -> piece.width() * piece.height() * piece.count())
            .sum();
    assertThat((long) plan.newSheets() * 96 * 48).isGreaterThanOrEqualTo(area);
    assertThat(plan.newSheets()).isBetween(plan.atLeast(), plan.atLeast() + 1);
  }

  /** Paints every piece, with its kerf to the right and above, on a sheet of single units. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void pieces_areAllThereAndShareNoUnit(int seed) {
    SheetOrder order = SheetOrders.withOffcut(SheetOrders.patches(seed), new Offcut(60, 40, 1));
    int[] left = order.pieces().stream().mapToInt(SheetPiece::count).toArray();
    for (CutSheet sheet : plan(order).sheets()) {
      int width = sheet.isNew() ? 96 : 60;
      int height = sheet.isNew() ? 48 : 40;
      boolean[][] painted = new boolean[width + 1][height + 1];
      for (PlacedPiece piece : sheet.pieces()) {
        left[piece.piece()]--;
        for (long x = piece.x(); x <= piece.x() + piece.width(); x++) {
          for (long y = piece.y(); y <= piece.y() + piece.height(); y++) {
            assertThat(painted[(int) x][(int) y]).as("unit %d, %d", x, y).isFalse();
            painted[(int) x][(int) y] = true;
          }
        }
      }
    }
    assertThat(left).containsOnly(0);
  }

  /** Follows the saw: every cut goes through one part, and the parts at the end are the pieces. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void cuts_freeEveryPiece(int seed) {
    for (CutSheet sheet : plan(SheetOrders.patches(seed)).sheets()) {
      List<long[]> parts = new ArrayList<>(List.of(new long[] {0, 0, 96, 48}));
      for (SheetCut cut : sheet.cuts()) {
        SheetPart whole = cut.part();
        long[] part = {whole.x(), whole.y(), whole.x() + whole.width(), whole.y() + whole.height()};
        assertThat(parts.removeIf(other -> Arrays.equals(other, part))).isTrue();
        int side = cut.direction() == SheetCut.Direction.ACROSS ? 0 : 1;
        long[] near = part.clone();
        near[side + 2] = part[side] + cut.at();
        long[] far = part.clone();
        far[side] = part[side] + cut.at() + 1;
        parts.add(near);
        parts.add(far);
      }
      for (PlacedPiece piece : sheet.pieces()) {
        long[] wanted = {
          piece.x(), piece.y(), piece.x() + piece.width(), piece.y() + piece.height()
        };
        assertThat(parts.removeIf(part -> Arrays.equals(part, wanted))).isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void orderOfPieces_changesNothing(int seed) {
    SheetOrder order = SheetOrders.patches(seed);
    SheetPlan plan = plan(order);
    SheetPlan shuffled = plan(SheetOrders.shuffled(order, seed));
    if (plan.isProven() && shuffled.isProven()) {
      assertThat(shuffled.newSheets()).isEqualTo(plan.newSheets());
    }
    assertThat(shuffled.atLeast()).isLessThanOrEqualTo(plan.newSheets());
    assertThat(plan.atLeast()).isLessThanOrEqualTo(shuffled.newSheets());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 5})
  void moreOffcuts_neverCostASheet(int seed) {
    SheetOrder order = SheetOrders.patches(seed);
    Random random = new Random(seed);
    SheetPlan plan = plan(order);
    SheetPlan more =
        plan(
            SheetOrders.withOffcut(
                order, new Offcut(20 + random.nextInt(70), 10 + random.nextInt(35), 2)));
    assertThat(more.atLeast()).isLessThanOrEqualTo(plan.newSheets());
    assertThat(more.newSheets()).isLessThanOrEqualTo(plan.newSheets());
  }

  @ParameterizedTest
  @ValueSource(longs = {3, 1_000_003})
  void otherUnit_changesNothing(long factor) {
    for (int seed = 1; seed <= 3; seed++) {
      SheetOrder order = SheetOrders.patches(seed);
      SheetPlan plan = plan(order);
      SheetPlan scaled = plan(SheetOrders.scaled(order, factor));
      assertThat(scaled.newSheets()).isEqualTo(plan.newSheets());
      assertThat(scaled.atLeast()).isEqualTo(plan.atLeast());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void sameOrder_givesTheSamePlan(int seed) {
    assertThat(plan(SheetOrders.patches(seed))).isEqualTo(plan(SheetOrders.patches(seed)));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void spentPatience_stillGivesAPlanAndABound(int seed) {
    SheetPlan plan = SheetCutting.plan(SheetOrders.patches(seed), () -> 0);
    assertThat(plan.newSheets()).isGreaterThanOrEqualTo(plan.atLeast());
    assertThat(plan.atLeast()).isPositive();
  }
}
