package sheathwright.cutting.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sheathwright.cutting.Patience;

/**
 * Invented lists of roof patches with the bounds of earlier trials (see the heads of the files).
 * The lists that take seconds are left to the benchmark.
 */
class SheetDomainTest {

  private static final Set<String> SLOW =
      Set.of(
          "small16_n50_s1",
          "small24_n100_s1",
          "small24_n200_s1",
          "small16_n200_s2",
          "small24_n200_s2");

  @Test
  void plans_areProvenAndLieWithinTheBoundsOfEarlierTrials() throws IOException {
    Map<String, SheetOrder> orders =
        SheetInstances.orders(SheetInstances.resource("domain_2d.txt"));
    Map<String, Map<String, String>> optima =
        SheetInstances.table(SheetInstances.resource("optima_domain_2d.csv"), "instance");
    assertThat(orders).hasSize(32);
    orders.keySet().removeAll(SLOW);
    orders.forEach(
        (name, order) -> {
          SheetPlan plan = SheetCutting.plan(order, Patience.ENDLESS);
          int least = Integer.parseInt(optima.get(name).get("lower_bound"));
          int best = Integer.parseInt(optima.get(name).get("best_guillotine"));
          assertThat(plan.isProven()).as(name).isTrue();
          assertThat(plan.newSheets()).as(name).isBetween(least, best);
        });
  }
}
