package sheathwright.framing.stop;

import static org.assertj.core.api.Assertions.assertThat;
import static sheathwright.figure.Amounts.number;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;

/**
 * Common practice, no source: whatever was seen or overloaded stops the repair, and says for whom.
 */
class RepairStopsTest {

  private static final String ENGINEER = "STOP: a licensed engineer decides before any repair";
  private static final String TRUSS_DESIGNER =
      "STOP: the truss designer or a licensed engineer decides before any repair";

  @Test
  void aRafterUsedUpToItsLimit_mayBeRepaired() {
    StopAnswer whole = RepairStops.framingStop(number(1), StopFinding.NOTHING);
    assertThat(whole.decision().plain()).isEqualTo("within the screening limits");
    assertThat(whole.mayRepair().plain()).isEqualTo("yes");
    assertThat(whole.decides().plain()).isEqualTo("nobody else");
  }

  @Test
  void aRafterBeyondIt_isForAnEngineer() {
    StopAnswer beyond = RepairStops.framingStop(number(1.0001), StopFinding.NOTHING);
    assertThat(beyond.decision().plain()).isEqualTo(ENGINEER);
    assertThat(beyond.mayRepair().plain()).isEqualTo("no");
    assertThat(beyond.decides().plain()).isEqualTo("a licensed engineer");
    assertThat(beyond.meanwhile().plain()).contains("no rafter is cut or sistered");
  }

  /** Who decides about what, written down here again. */
  @ParameterizedTest
  @CsvSource({
    "OVERLOADED, a licensed engineer",
    "TRUSS, the truss designer or a licensed engineer",
    "SPLIT, a licensed engineer",
    "CUT, a licensed engineer",
    "BEARING_ROT, a licensed engineer",
    "SPREAD_WALL, a licensed engineer",
    "FIRE_RETARDANT_PANEL, the building official",
    "CHARRED, a licensed engineer",
    "INSECTS_OR_FUNGUS, a licensed engineer",
    "SAGGING_RIDGE, a licensed engineer",
    "RIDGE_BOARD, a licensed engineer",
    "MISSING_TIE, a licensed engineer",
    "LOST_STRUT, a licensed engineer",
    "RAFTER_TAIL, a licensed engineer",
    "POINT_LOAD, a licensed engineer",
    "HEAVIER_COVERING, a licensed engineer",
    "EXPOSED_PLANKS, the covering's maker",
    "CATHEDRAL_BAY, the building official",
    "ROOM_BELOW, the building official",
    "LIVE_WIRES, an electrician or the utility",
    "ASBESTOS_OR_VERMICULITE, an environmental firm"
  })
  void whateverIsSeen_stopsAStrongRafterToo(StopFinding seen, String who) {
    StopAnswer answer = RepairStops.framingStop(number(0.1), seen);
    assertThat(answer.mayRepair().plain()).isEqualTo("no");
    assertThat(answer.decision().plain()).isEqualTo("STOP: " + who + " decides before any repair");
    assertThat(answer.decides().plain()).isEqualTo(who);
    assertThat(answer.meanwhile().plain()).isNotEqualTo("the work that is priced");
  }

  /** What holds the roof up is asked first. */
  @ParameterizedTest
  @EnumSource(
      names = {"FIRE_RETARDANT_PANEL", "EXPOSED_PLANKS", "LIVE_WIRES", "ASBESTOS_OR_VERMICULITE"})
  void anOverloadedRafter_isForAnEngineerWhateverElseIsSeen(StopFinding seen) {
    StopAnswer answer = RepairStops.framingStop(number(1.2), seen);
    assertThat(answer.decision().plain()).isEqualTo(ENGINEER);
    assertThat(answer.decides().plain()).isEqualTo("a licensed engineer");
  }

  @Test
  void anOverloadedTruss_isForItsDesigner() {
    assertThat(RepairStops.framingStop(number(1.2), StopFinding.TRUSS).decision().plain())
        .isEqualTo(TRUSS_DESIGNER);
  }

  @ParameterizedTest
  @EnumSource(StopFinding.class)
  void oneReportOfMany_isEnough(StopFinding seen) {
    StopReports reports = reports(StopFinding.NOTHING, seen, StopFinding.NOTHING);
    RepairDecision decision = reports.decision(KnownFacts.ALL);
    StopAnswer alone = RepairStops.framingStop(number(0.5), seen);
    assertThat(decision.decision().plain()).isEqualTo(alone.decision().plain());
    assertThat(decision.mayRepair().plain()).isEqualTo(alone.mayRepair().plain());
    Check check = reports.check();
    assertThat(check.ok().holds()).isEqualTo(seen == StopFinding.NOTHING);
    assertThat(check.toString()).contains("none allowed");
  }

  @Test
  void aTrussAmongOthers_isForItsDesigner() {
    StopReports reports = reports(StopFinding.SPLIT, StopFinding.TRUSS, StopFinding.LIVE_WIRES);
    assertThat(reports.decision(KnownFacts.ALL).decision().plain()).isEqualTo(TRUSS_DESIGNER);
    assertThat(reports.decision().decision().plain()).isEqualTo(TRUSS_DESIGNER);
  }

  @Test
  void eachFinding_keepsWhoDecidesAboutIt() {
    StopReports reports = reports(StopFinding.SPLIT, StopFinding.LIVE_WIRES);
    assertThat(reports.findings().cellsOf("decides"))
        .extracting(Object::toString)
        .containsExactly("a licensed engineer", "an electrician or the utility");
  }

  @Test
  void whatTheNumbersSay_stopsAsWhatWasReportedDoes() {
    StopReports reckoned = reckoned(StopFinding.RIDGE_BOARD);
    assertThat(reckoned.decision(KnownFacts.ALL).decision().plain()).isEqualTo(ENGINEER);
    assertThat(reckoned.check().ok().holds()).isFalse();
  }

  @Test
  void raftersThatNobodyKnows_areNotSaidToBeStrong() {
    assertThat(reports(StopFinding.NOTHING).decision().decision().plain()).contains("not checked");
    assertThat(reports(StopFinding.SPLIT).decision().decision().plain()).isEqualTo(ENGINEER);
    assertThat(reports(StopFinding.NOTHING).decision().mayRepair().plain()).isEqualTo("no");
  }

  /** Without a report nobody looked, however strong the rafters reckon. */
  @Test
  void framingThatNobodyLookedAt_isNotInspected() {
    StopReports strong = reckoned(StopFinding.NOTHING);
    RepairDecision nobody = strong.decision(strong.known(KnownFacts.ALL));
    assertThat(nobody.decision().plain()).isEqualTo("not inspected: nobody may say");
    assertThat(nobody.mayRepair().plain()).isEqualTo("no");
    StopReports weak = reckoned(StopFinding.OVERLOADED);
    assertThat(weak.decision(weak.known(KnownFacts.ALL)).decision().plain()).isEqualTo(ENGINEER);
    assertThat(reports().decision().decision().plain()).isEqualTo("not inspected: nobody may say");
    assertThat(reports().decision().mayRepair().plain()).isEqualTo("no");
  }

  @Test
  void aFactThatNobodyKnows_isNotSound_andAnAssumedOneStaysAssumed() {
    KnownFacts unknown = new KnownFacts(number(1), number(1));
    KnownFacts assumed = new KnownFacts(number(0), number(2));
    StopReports looked = reports(StopFinding.NOTHING);
    assertThat(looked.decision(unknown).decision().plain())
        .isEqualTo("not inspected: nobody may say");
    assertThat(looked.decision(assumed).decision().plain())
        .isEqualTo("within the screening limits only as assumed: look first");
    assertThat(reckoned(StopFinding.OVERLOADED).decision(assumed).decision().plain())
        .isEqualTo(ENGINEER);
    assertThat(looked.decision(unknown).mayRepair().plain()).isEqualTo("no");
    assertThat(looked.decision(assumed).mayRepair().plain()).isEqualTo("no");
    assertThat(unknown.holding().plain()).isEqualTo("not looked at");
    assertThat(assumed.holding().plain()).isEqualTo("assumed");
    assertThat(KnownFacts.ALL.holding().plain()).isEqualTo("holds");
  }

  private static StopReports reckoned(StopFinding found) {
    return new StopReports(
        List.of(),
        List.of(StopReports.Report.reckoned("screening", found.choice(), "the worst rafter")));
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
    return new StopReports(reports, List.of());
  }
}
