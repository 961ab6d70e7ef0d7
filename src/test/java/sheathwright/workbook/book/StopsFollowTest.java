package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sheathwright.framing.stop.StopFinding;
import sheathwright.job.Estimate;
import sheathwright.job.table.JobText;
import sheathwright.workbook.page.JobBook;

/**
 * Whoever changes a report, the slope or a layer in a workbook reads there at once who decides, as
 * Java would say it.
 */
class StopsFollowTest {

  private static final JobText GABLE = JobText.demo("quince-hollow");
  private static final Function<Estimate, JobBook> OFFICE = JobBook::estimate;
  private static final Following.Made SOUND = made(OFFICE, GABLE);

  private static Following.Made made(Function<Estimate, JobBook> book, JobText job) {
    return Following.made(book, new Estimate(job.job()));
  }

  private static byte[] assertFollows(
      Function<Estimate, JobBook> book, JobText before, JobText after) {
    return assertFollows(made(book, before), made(book, after));
  }

  private static byte[] assertFollows(Following.Made before, Following.Made fresh) {
    byte[] edited = Perturbed.edited(before.bytes(), fresh.book().inputs());
    boolean isStale =
        SolvedCells.states(edited, before.book().solutions()).values().stream()
            .anyMatch(state -> state.startsWith("solve again: "));
    if (isStale) {
      Following.assertFollowsBesideWhatWasSolved(
          "what stops", edited, fresh.bytes(), before.book());
    } else {
      Following.assertFollows("what stops", edited, fresh.bytes());
    }
    return edited;
  }

  @ParameterizedTest
  @EnumSource(value = StopFinding.class, mode = EnumSource.Mode.EXCLUDE, names = "NOTHING")
  void aReportChangedInTheWorkbook_changesWhoDecides(StopFinding finding) {
    JobText after = GABLE.with("reports", "F-1,nothing", "F-1," + finding.word());
    byte[] edited = assertFollows(SOUND, made(OFFICE, after));
    String decision = new Estimate(after.job()).framing().decision().plain();
    assertThat(decision).startsWith("STOP: ");
    assertThat(Cells.byPoi(edited).values()).contains(decision);
  }

  @Test
  void aSlopeARidgeAndAStrutChangedInTheWorkbook_stop() {
    JobText known =
        GABLE
            .with("job", "ridge,board", "ridge,beam")
            .withLines("job", "strut_ft,6,", "strut_on_bearing_wall,yes,");
    assertFollows(OFFICE, known, known.with("job", "rise_in_12,6", "rise_in_12,2.5"));
    assertFollows(OFFICE, known, known.with("job", "ridge,beam", "ridge,board"));
    assertFollows(
        OFFICE, known, known.with("job", "strut_on_bearing_wall,yes", "strut_on_bearing_wall,no"));
    assertFollows(
        OFFICE,
        known.with("job", "rise_in_12,6", "rise_in_12,2.5"),
        known
            .with("job", "rise_in_12,6", "rise_in_12,2.5")
            .with("job", "ridge,beam", "ridge,board"));
  }

  @Test
  void aLayerChangedInTheWorkbook_isWeighedAgainstWhatComesOff() {
    JobText light =
        JobText.demo("tallow-end")
            .withTable(
                "layers",
                """
                material,layers,thickness_in,fate
                asphalt-shingles,2,,comes-off
                plywood,1,15/32,stays
                standing-seam,1,,goes-on
                """);
    JobText heavy = light.with("layers", "standing-seam,1", "spanish-tile,1");
    byte[] edited = assertFollows(OFFICE, light, heavy);
    assertThat(Cells.byPoi(edited).values()).contains("heavier-covering");
    assertFollows(OFFICE, light, light.with("layers", "2,,comes-off", "2,,stays"));
  }
}
