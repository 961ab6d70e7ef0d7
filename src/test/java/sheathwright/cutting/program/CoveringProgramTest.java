package sheathwright.cutting.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;
import sheathwright.cutting.Patience;

/** Linear programs by hand, and random ones against a general library. */
class CoveringProgramTest {

  /** Halves of each of three patterns with two of three pieces: 1.5, and each piece costs 0.5. */
  @Test
  void threePairs_takeHalfOfEach() {
    CoveringProgram program = new CoveringProgram(new int[] {1, 1, 1}, 10, Patience.ENDLESS);
    program.add(1, new int[] {1, 1, 0}, -1);
    program.add(1, new int[] {0, 1, 1}, -1);
    program.add(1, new int[] {1, 0, 1}, -1);
    assertThat(program.solve()).isTrue();
    assertThat(program.value()).isCloseTo(1.5, within(1e-5));
    assertThat(program.prices()).containsExactly(new double[] {0.5, 0.5, 0.5}, within(1e-6));
    assertThat(program.amounts()).containsExactly(new double[] {0.5, 0.5, 0.5}, within(1e-5));
  }

  @Test
  void cost_agreesWithAGeneralLibrary() {
    for (int seed = 0; seed < 60; seed++) {
      Random random = new Random(seed);
      int rows = 2 + random.nextInt(8);
      int columns = 5 + random.nextInt(40);
      int[] demand = IntStream.range(0, rows).map(row -> 1 + row % 3).toArray();
      demand[rows - 1] = -(1 + random.nextInt(3)); // a limited supply
      CoveringProgram program = new CoveringProgram(demand, 5, Patience.ENDLESS);
      ExpressionsBasedModel model = new ExpressionsBasedModel();
      Expression[] covered = new Expression[rows];
      for (int row = 0; row < rows; row++) {
        covered[row] = model.newExpression("row" + row).lower(demand[row]);
        covered[row].set(model.newVariable("spare" + row).lower(0).upper(50).weight(5), 1);
      }
      for (int column = 0; column < columns; column++) {
        boolean limited = random.nextInt(4) == 0;
        double cost = limited ? 0 : 1;
        Variable variable = model.newVariable("column" + column).lower(0).upper(50).weight(cost);
        int[] amounts = new int[rows - 1];
        for (int row = 0; row < rows - 1; row++) {
          amounts[row] = Math.max(0, random.nextInt(4) - 1);
          covered[row].set(variable, amounts[row]);
        }
        if (limited) {
          covered[rows - 1].set(variable, -1);
        }
        program.add(cost, amounts, limited ? rows - 1 : -1);
      }
      assertThat(program.solve()).isTrue();
      assertThat(program.value())
          .as("seed %d", seed)
          .isCloseTo(model.minimise().getValue(), within(1e-4));
    }
  }
}
