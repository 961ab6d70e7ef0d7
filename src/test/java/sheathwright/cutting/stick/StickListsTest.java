package sheathwright.cutting.stick;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheathwright.Walk;
import sheathwright.cutting.Patience;
import sheathwright.cutting.TestPatience;

/** Longer lists against the least costs that foreign engines found. */
class StickListsTest {

  private static final double SECONDS = 5;

  /** Lists that take much longer than the others; the benchmark has them all. */
  private static final Set<String> SLOW =
      Set.of(
          "n60k1s1st1",
          "n60k1s2st1",
          "n120k1s1st1",
          "n200k1s1st1",
          "n200k1s2st1",
          "n120k2s1st1",
          "n200k0s1st1",
          "n200k2s1st1",
          "n200k0s2st1",
          "n200k2s2st1",
          "n120k2s2st1");

  static Stream<StickList> fast() {
    return StickList.priced(StickList.OURS).stream().filter(list -> !SLOW.contains(list.name()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("fast")
  void plan_costsWhatForeignEnginesFound(StickList list) {
    StickPlan plan = StickCutting.plan(list.order(), Patience.ENDLESS);
    assertThat(plan.cost()).isEqualTo(list.best());
    assertThat(plan.atLeast()).isEqualTo(list.best());
    assertThat(StickCertificateCheck.holds(list.order(), plan.certificate())).isTrue();
    // The linear program alone stays a little below: 6 in 100 on the shortest lists.
    assertThat(plan.certificate().atLeast()).isBetween(list.best() * 9 / 10, list.best());
  }

  /**
   * A list for which ojAlgo 57.1.0 reported 21782 as optimal; SCIP, HiGHS, CP-SAT and ojAlgo 57.0.0
   * found 21773.
   */
  @Test
  void plan_isRightWhereAnEngineWasWrong() {
    StickList list =
        StickList.priced(StickList.OURS).stream()
            .filter(one -> one.name().equals("n20k0s1st96"))
            .findFirst()
            .orElseThrow();
    StickPlan plan = StickCutting.plan(list.order(), Patience.ENDLESS);
    assertThat(plan.cost()).isEqualTo(21_773);
    assertThat(plan.isProven()).isTrue();
  }

  /**
   * Published sets of one length. They are not copied here; the folder is named by the variable
   * CUTTING_INSTANCES. Where the least number is open, only the known interval is held.
   */
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "falkenauer_u120",
        "falkenauer_t60",
        "falkenauer_t120",
        "scholl1",
        "scholl2",
        "schwerin1",
        "schwerin2",
        "waescher_gau1",
        "waescher_gau2"
      })
  void plan_needsAsManySticksAsPublished(String set) {
    List<StickList> lists = StickList.published(instances(), set);
    assertThat(lists).isNotEmpty();
    for (StickList list : sampled(lists)) {
      StickPlan plan = StickCutting.plan(list.order(), TestPatience.seconds(SECONDS));
      assertThat(plan.cost()).as(list.name()).isBetween(list.lower(), list.best());
      assertThat(plan.atLeast()).as(list.name()).isBetween(list.lower(), list.best());
    }
  }

  /** The hardest of the published sets: within one stick of the best number known. */
  @Test
  void plan_isNeverWrongOnTheHardSet() {
    for (StickList list : sampled(StickList.published(instances(), "hard28"))) {
      StickPlan plan = StickCutting.plan(list.order(), TestPatience.seconds(1));
      assertThat(plan.cost()).as(list.name()).isBetween(list.lower(), list.best() + 1);
      assertThat(plan.atLeast()).as(list.name()).isLessThanOrEqualTo(list.best());
    }
  }

  /** In the gate one of three. */
  private static List<StickList> sampled(List<StickList> lists) {
    return IntStream.range(0, lists.size()).filter(Walk::takes).mapToObj(lists::get).toList();
  }

  private static Path instances() {
    String folder = System.getenv("CUTTING_INSTANCES");
    assumeTrue(folder != null, "CUTTING_INSTANCES is not set");
    return Path.of(folder);
  }
}
