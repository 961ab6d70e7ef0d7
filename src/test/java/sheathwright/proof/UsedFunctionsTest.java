package sheathwright.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.ft;
import static sheathwright.figure.Amounts.in;
import static sheathwright.figure.Amounts.number;
import static sheathwright.figure.Amounts.pct;
import static sheathwright.figure.Amounts.pitch;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.fastening.strength.Shank;
import sheathwright.fastening.strength.Withdrawal;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;
import sheathwright.roof.Slopes;
import sheathwright.sheathing.layout.SheetCounts;

/** A value tells which functions it came out of. */
class UsedFunctionsTest {

  @Test
  void aFunctionIsTold_fromWhateverWasMadeOfIt() {
    Figure<?> deck = ft(42).times(ft(16)).times(Slopes.slopeFactor(pitch(9))).in(Units.SQUARE_FOOT);
    assertThat(UsedFunctions.behind(List.of(deck))).containsExactly("slope_factor");
    assertThat(
            UsedFunctions.behind(
                List.of(SheetCounts.sheetsByArea(deck.in(Units.SQUARE_FOOT), pct(10)))))
        .containsExactly("sheets_by_area", "slope_factor");
  }

  /** Both give withdrawal_lb_per_in, by formulas of their own. */
  @Test
  void functionsWhoseResultsHaveOneName_areToldApart() {
    Figure<?> nail = Withdrawal.nailWithdrawal(number(0.42), in(0.131), Shank.SMOOTH);
    assertThat(UsedFunctions.behind(List.of(nail))).containsExactly("nail_withdrawal");
  }

  @Test
  void plainArithmetic_cameOutOfNone() {
    assertThat(UsedFunctions.behind(List.of(ft(42).times(ft(16))))).isEmpty();
    assertThat(CheckedLines.behind(List.of(ft(42)))).isEmpty();
    assertThat(CheckedLines.inShort(List.of(ft(42)))).isEmpty();
  }
}
