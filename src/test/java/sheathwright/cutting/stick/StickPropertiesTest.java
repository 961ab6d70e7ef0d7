package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;
import sheathwright.cutting.TestPatience;

/** What must hold for every list, whatever its least cost is. The same lists each time. */
class StickPropertiesTest {

  private static final int LISTS = 60;
  private static final StockLength LONG = new StockLength(3840, 2296, StockLength.ANY);
  private static final List<StockLength> STOCK =
      List.of(
          new StockLength(1536, 798, StockLength.ANY),
          new StockLength(1920, 1042, StockLength.ANY),
          new StockLength(2304, 1197, StockLength.ANY),
          LONG);

  private static StickOrder order(Random random) {
    List<StickPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      pieces.add(new StickPiece(200 + random.nextInt(1800), 1 + random.nextInt(3)));
    }
    return new StickOrder(STOCK, pieces, 2, 4);
  }

  private static StickPlan proven(StickOrder order) {
    StickPlan plan = StickCutting.plan(order, Patience.ENDLESS);
    assertThat(plan.isProven()).as("proven: %s", order).isTrue();
    return plan;
  }

  @Test
  void cost_isAtLeastThatOfTheMaterial() {
    Random random = new Random(1);
    for (int list = 0; list < LISTS; list++) {
      StickOrder order = order(random);
      double material = 0;
      for (StickPiece piece : order.pieces()) {
        material += (double) piece.length() * piece.count();
      }
      double cheapest =
          STOCK.stream()
              .mapToDouble(stock -> (double) stock.price() / stock.length())
              .min()
              .orElseThrow();
      StickPlan plan = proven(order);
      assertThat((double) plan.cost()).isGreaterThan(material * cheapest);
    }
  }

  @Test
  void cost_doesNotDependOnTheOrderOfPiecesAndStock() {
    Random random = new Random(2);
    for (int list = 0; list < LISTS; list++) {
      StickOrder order = order(random);
      List<StickPiece> pieces = new ArrayList<>(order.pieces());
      List<StockLength> stock = new ArrayList<>(order.stock());
      Collections.shuffle(pieces, random);
      Collections.shuffle(stock, random);
      assertThat(proven(new StickOrder(stock, pieces, 2, 4)).cost())
          .isEqualTo(proven(order).cost());
    }
  }

  @Test
  void cost_neverRisesWithAnotherStock() {
    Random random = new Random(3);
    int lower = 0;
    for (int list = 0; list < LISTS; list++) {
      StickOrder order = order(random);
      List<StockLength> more = new ArrayList<>(order.stock());
      more.add(new StockLength(2688, 1400, 2));
      long before = proven(order).cost();
      long after = proven(new StickOrder(more, order.pieces(), 2, 4)).cost();
      assertThat(after).isLessThanOrEqualTo(before);
      lower += after < before ? 1 : 0;
    }
    assertThat(lower).isPositive();
  }

  @Test
  void cost_isTheSameInAnotherUnit() {
    Random random = new Random(4);
    for (int list = 0; list < LISTS; list++) {
      StickOrder order = order(random);
      List<StockLength> stock =
          order.stock().stream()
              .map(one -> new StockLength(3 * one.length(), one.price(), one.available()))
              .toList();
      List<StickPiece> pieces =
          order.pieces().stream()
              .map(one -> new StickPiece(3 * one.length(), one.count()))
              .toList();
      assertThat(proven(new StickOrder(stock, pieces, 6, 12)).cost())
          .isEqualTo(proven(order).cost());
    }
  }

  /** Five times in one process, so that caches and threads would show. */
  @Test
  void plan_isTheSameEachTime() {
    StickOrder order = order(new Random(5));
    StickPlan first = StickCutting.plan(order, Patience.ENDLESS);
    for (int again = 1; again < 5; again++) {
      assertThat(StickCutting.plan(order, Patience.ENDLESS)).isEqualTo(first);
    }
  }

  /** A unit so small that the table of one stick cannot have a cell for each. */
  @Test
  void plan_worksInVerySmallUnits() {
    Random random = new Random(6);
    List<StockLength> stock =
        List.of(
            new StockLength(16_000_000, 798, StockLength.ANY),
            new StockLength(20_000_001, 1042, StockLength.ANY));
    List<StickPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      pieces.add(new StickPiece(3_000_000 + random.nextInt(9_000_000), 1));
    }
    StickPlan plan =
        StickCutting.plan(new StickOrder(stock, pieces, 20_833, 0), TestPatience.seconds(2));
    double material = pieces.stream().mapToLong(StickPiece::length).sum() / 16e6 * 798;
    assertThat((double) plan.atLeast()).isGreaterThan(material);
    assertThat((double) plan.cost()).isLessThan(1.02 * plan.atLeast());
  }

  /** With no patience at all there is still a plan, and a bound that is true. */
  @Test
  void plan_comesWithoutPatience() {
    Random random = new Random(7);
    List<StickPiece> pieces = new ArrayList<>();
    for (int i = 0; i < 2_000; i++) {
      pieces.add(new StickPiece(200 + random.nextInt(3_000), 1));
    }
    StickPlan plan = StickCutting.plan(new StickOrder(STOCK, pieces, 2, 4), () -> 0);
    assertThat(plan.sticks()).isNotEmpty();
    assertThat(plan.atLeast()).isBetween(plan.cost() / 2, plan.cost());
  }
}
