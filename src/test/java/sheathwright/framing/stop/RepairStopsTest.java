package sheathwright.framing.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.number;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Units;

/**
 * Common practice, no source: whatever was seen or overloaded stops the repair, and says for whom.
 */
class RepairStopsTest {

  @Test
  void aRafterUsedUpToItsLimit_mayBeRepaired() {
    RepairDecision whole = RepairStops.framingStop(number(1), StopFinding.NOTHING);
    assertThat(whole.decision().plain()).isEqualTo("within the screening limits");
    assertThat(whole.mayRepair().plain()).isEqualTo("yes");
  }

  @Test
  void aRafterBeyondIt_isForAnEngineer() {
    RepairDecision beyond = RepairStops.framingStop(number(1.0001), StopFinding.NOTHING);
    assertThat(beyond.decision().plain()).startsWith("STOP").contains("licensed engineer");
    assertThat(beyond.mayRepair().plain()).isEqualTo("no");
  }

  @ParameterizedTest
  @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "NOTHING")
  void whateverIsSeen_stopsAStrongRafterToo(StopFinding seen) {
    RepairDecision decision = RepairStops.framingStop(number(0.1), seen);
    assertThat(decision.mayRepair().plain()).isEqualTo("no");
    assertThat(decision.decision().plain())
        .startsWith("STOP: ")
        .endsWith("decides before any repair");
    assertThat(decision.decision().plain().contains("truss designer"))
        .isEqualTo(seen == StopFinding.TRUSS);
  }

  @Test
  void oneReportOfMany_isEnough() {
    for (StopFinding seen : StopFinding.values()) {
      StopReports reports = reports(StopFinding.NOTHING, seen, StopFinding.NOTHING);
      RepairDecision decision = reports.decision(isMore(2, 1), KnownFacts.ALL);
      assertThat(decision.decision().plain())
          .isEqualTo(RepairStops.framingStop(number(0.5), seen).decision().plain());
      Check check = reports.check();
      assertThat(check.ok().holds()).isEqualTo(seen == StopFinding.NOTHING);
      assertThat(check.toString()).contains("none allowed");
    }
  }

  @Test
  void aTrussAmongOthers_isForItsDesigner() {
    StopReports reports = reports(StopFinding.SPLIT, StopFinding.TRUSS, StopFinding.CUT);
    assertThat(reports.decision(isMore(2, 1), KnownFacts.ALL).decision().plain()).contains("truss designer");
    assertThat(reports.decision().decision().plain()).contains("truss designer");
  }

  @Test
  void raftersThatNobodyKnows_areNotSaidToBeStrong() {
    assertThat(reports(StopFinding.NOTHING).decision().decision().plain()).contains("not checked");
    assertThat(reports(StopFinding.SPLIT).decision().decision().plain()).startsWith("STOP");
    assertThat(reports(StopFinding.NOTHING).decision().mayRepair().plain()).isEqualTo("no");
  }

  /** Without a report nobody looked, however strong the rafters reckon. */
  @Test
  void framingThatNobodyLookedAt_isNotInspected() {
    RepairDecision strong = decided(isMore(2, 1), KnownFacts.ALL);
    assertThat(strong.decision().plain()).isEqualTo("not inspected: nobody may say");
    assertThat(strong.mayRepair().plain()).isEqualTo("no");
    RepairDecision weak = decided(isMore(1, 2), KnownFacts.ALL);
    assertThat(weak.decision().plain()).startsWith("STOP");
    assertThat(reports().decision().decision().plain()).isEqualTo("not inspected: nobody may say");
    assertThat(reports().decision().mayRepair().plain()).isEqualTo("no");
  }

  @Test
  void aFactThatNobodyKnows_isNotSound_andAnAssumedOneStaysAssumed() {
    KnownFacts unknown = new KnownFacts(number(1), number(1));
    KnownFacts assumed = new KnownFacts(number(0), number(2));
    StopReports looked = reports(StopFinding.NOTHING);
    assertThat(looked.decision(isMore(2, 1), unknown).decision().plain())
        .isEqualTo("not inspected: nobody may say");
    assertThat(looked.decision(isMore(2, 1), assumed).decision().plain())
        .isEqualTo("within the screening limits only as assumed: somebody looks before any repair");
    assertThat(looked.decision(isMore(1, 2), assumed).decision().plain()).startsWith("STOP");
    assertThat(looked.decision(isMore(2, 1), unknown).mayRepair().plain()).isEqualTo("no");
    assertThat(looked.decision(isMore(2, 1), assumed).mayRepair().plain()).isEqualTo("no");
    assertThat(unknown.holding().plain()).isEqualTo("not looked at");
    assertThat(assumed.holding().plain()).isEqualTo("assumed");
    assertThat(KnownFacts.ALL.holding().plain()).isEqualTo("holds");
  }

  /** By reports that are none. */
  private static RepairDecision decided(
      sheathwright.figure.Condition strong, KnownFacts facts) {
    StopReports none = reports();
    return none.decision(strong, none.known(facts));
  }

  private static sheathwright.figure.Condition isMore(double one, double other) {
    return Figure.of(one, Units.RATIO).isMoreThan(Figure.of(other, Units.RATIO));
  }

  private static StopReports reports(StopFinding... seen) {
    List<StopReports.Report> reports =
        Arrays.stream(seen)
            .map(
                each ->
                    new StopReports.Report(
                        Choice.literal("a report"),
                        Choice.literal(each),
                        Choice.literal("somewhere"),
                        Choice.literal("none")))
            .toList();
    return new StopReports(reports, java.util.Optional.empty());
  }
}
