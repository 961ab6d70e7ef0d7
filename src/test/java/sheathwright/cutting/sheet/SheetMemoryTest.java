package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.CountedPatience;
import sheathwright.cutting.Patience;

/** What was found with a counted patience is found once, and what follows goes on as behind it. */
class SheetMemoryTest {

  private static final List<SheetPiece> PIECES =
      List.of(new SheetPiece(40, 30, 5), new SheetPiece(33, 17, 7), new SheetPiece(61, 20, 3));

  private static SheetOrder order(long kerf) {
    return new SheetOrder(96, 48, List.of(), PIECES, kerf);
  }

  private static CountedPatience asked(int times) {
    return (CountedPatience) Patience.asked(times);
  }

  @Test
  void sameOrderWithTheSamePatience_isThePlanItWas_andLeavesAsMuchBehind() {
    CountedPatience first = asked(2_111);
    SheetPlan plan = SheetCutting.plan(order(0), first);
    CountedPatience second = asked(2_111);
    assertThat(SheetCutting.plan(order(0), second)).isSameAs(plan);
    assertThat(second.left()).isEqualTo(first.left());
  }

  @Test
  void anotherOrderOrPatience_isSoughtByItself() {
    SheetPlan plan = SheetCutting.plan(order(0), asked(2_112));
    assertThat(SheetCutting.plan(order(1), asked(2_112))).isNotSameAs(plan);
    assertThat(SheetCutting.plan(order(0), asked(2_113))).isNotSameAs(plan);
  }

  @Test
  void patienceByTheClock_isNeverKept() {
    Patience clock = () -> 1;
    SheetPlan plan = SheetCutting.plan(order(0), clock);
    assertThat(SheetCutting.plan(order(0), clock)).isNotSameAs(plan);
  }
}
