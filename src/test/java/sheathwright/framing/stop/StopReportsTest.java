package sheathwright.framing.stop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheathwright.figure.Choice;
import sheathwright.figure.Roll;
import sheathwright.figure.Traced;
import sheathwright.framing.stop.StopReports.Report;

/** What was reported and reckoned stands in each of the lists, in order and in its own words. */
class StopReportsTest {

  private static final Report SPLIT =
      new Report(
          Choice.literal("R1"),
          Choice.literal(StopFinding.SPLIT),
          Choice.literal("rafter 7"),
          Choice.literal("photograph 3"));
  private static final Report NOTHING =
      new Report(
          Choice.literal("R2"),
          Choice.literal(StopFinding.NOTHING),
          Choice.literal("attic"),
          Choice.literal(""));
  private static final Report RIDGE =
      Report.reckoned("reckoned 1", Choice.literal(StopFinding.RIDGE_BOARD), "rise_in_12");
  private static final StopReports REPORTS =
      new StopReports(List.of(SPLIT, NOTHING), List.of(RIDGE));

  private static List<String> cells(Roll roll, String column) {
    return roll.cellsOf(column).stream().map(Traced::plain).toList();
  }

  @Test
  void whatWasReported_standsAsItWasGiven() {
    Roll roll = REPORTS.roll();
    assertThat(cells(roll, "report")).containsExactly("R1", "R2");
    assertThat(cells(roll, "seen")).containsExactly("split", "nothing");
    assertThat(cells(roll, "where")).containsExactly("rafter 7", "attic");
    assertThat(cells(roll, "evidence")).containsExactly("photograph 3", "");
    assertThat(RIDGE.evidence().plain()).isEqualTo("reckoned");
    assertThat(RIDGE.where().plain()).isEqualTo("rise_in_12");
  }

  @Test
  void whatWasFound_standsWithWhoDecides() {
    Roll findings = REPORTS.findings();
    assertThat(cells(findings, "report")).containsExactly("R1", "R2", "reckoned 1");
    assertThat(cells(findings, "seen")).containsExactly("split", "nothing", "ridge-board");
    assertThat(cells(findings, "decides"))
        .containsExactly("a licensed engineer", "nobody else", "a licensed engineer");
    assertThat(cells(findings, "stops")).containsExactly("1", "0", "1");
    assertThat(cells(findings, "meanwhile").get(1)).isEqualTo("the work that is priced");
    assertThat(cells(findings, "order").get(1)).isEqualTo("0");
    assertThat(cells(findings, "order").get(0)).isEqualTo(cells(findings, "order").get(2));
  }

  @Test
  void eachReader_getsWordsOfTheirOwn() {
    List<Roll> lists = List.of(REPORTS.toCrew(), REPORTS.toInspector(), REPORTS.toHomeowner());
    for (Roll list : lists) {
      assertThat(cells(list, "report")).containsExactly("R1", "R2", "reckoned 1");
      assertThat(cells(list, "seen")).containsExactly("split", "nothing", "ridge-board");
      assertThat(cells(list, "said").get(0)).isNotBlank();
    }
    assertThat(lists.stream().map(list -> cells(list, "said").get(0)).distinct()).hasSize(3);
    assertThat(cells(REPORTS.toCrew(), "where")).containsExactly("rafter 7", "attic", "rise_in_12");
    assertThat(cells(REPORTS.toHomeowner(), "where")).startsWith("rafter 7");
    assertThat(cells(REPORTS.toInspector(), "source").get(0)).isNotBlank();
  }

  @Test
  void linesTell_whatStopsTheRepair() {
    assertThat(REPORTS.lines())
        .hasSize(2)
        .first()
        .asString()
        .startsWith("split (R1, rafter 7): a licensed engineer decides; meanwhile: ");
    assertThat(REPORTS.lines().get(1)).startsWith("ridge-board (reckoned 1, rise_in_12): ");
    assertThat(new StopReports(List.of(), List.of()).lines()).isEmpty();
  }
}
