package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfEnvironmentVariable;
import sheathwright.Walk;
import sheathwright.cutting.TestPatience;

/**
 * Published lists of rectangles, which are not kept here: the environment variable names the folder
 * that holds them. Their table gives a bound and a best plan for free guillotine cuts, and the best
 * plans of an exact method that cuts in two stages. In the gate one of three is cut.
 */
@EnabledIfEnvironmentVariable(named = "CUTTING_INSTANCES", matches = ".+")
class PublishedSheetsTest {

  private static final List<String> SETS =
      List.of("2d_beng.txt", "2d_cgcut.txt", "2d_class.txt", "2d_gcut.txt", "2d_ngcut.txt");
  private static final double SECONDS_EACH = 2;

  @Test
  void plans_areNoDearerThanTwoStagePlansAndLieWithinTheBounds() throws IOException {
    Path folder = Path.of(System.getenv("CUTTING_INSTANCES"));
    Map<String, SheetOrder> orders = new HashMap<>();
    for (String set : SETS) {
      orders.putAll(SheetInstances.orders(SheetInstances.file(folder.resolve(set))));
    }
    Map<String, Map<String, String>> optima =
        SheetInstances.table(SheetInstances.file(folder.resolve("optima_2d.csv")), "instance");
    assertThat(orders).hasSameSizeAs(optima);
    AtomicInteger step = new AtomicInteger();
    optima.keySet().removeIf(name -> !Walk.takes(step.getAndIncrement()));
    assertThat(optima).hasSizeGreaterThan(40);
    SoftAssertions softly = new SoftAssertions();
    optima.forEach(
        (name, row) -> {
          SheetPlan plan = SheetCutting.plan(orders.get(name), TestPatience.seconds(SECONDS_EACH));
          int twoStage =
              Math.min(
                  Integer.parseInt(row.get("two_stage_h_best")),
                  Integer.parseInt(row.get("two_stage_v_best")));
          int least = Integer.parseInt(row.get("guillotine_lower_bound"));
          int best = Integer.parseInt(row.get("guillotine_best"));
          softly.assertThat(plan.newSheets()).as(name).isBetween(least, twoStage);
          softly.assertThat(plan.atLeast()).as("bound of " + name).isLessThanOrEqualTo(best);
        });
    softly.assertAll();
  }
}
