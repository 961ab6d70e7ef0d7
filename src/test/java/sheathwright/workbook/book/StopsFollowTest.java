package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collection;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sheathwright.Walk;
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
  private static final Following.Made SOUND = made(GABLE);
  private static Engine sound;

  @BeforeAll
  static void open() {
    sound = Engine.of(SOUND.bytes());
  }

  @AfterAll
  static void close() {
    sound.close();
  }

  private static Following.Made made(JobText job) {
    return Following.made(JobBook::estimate, new Estimate(job.job()));
  }

  static Stream<StopFinding> findings() {
    List<StopFinding> stopping =
        Stream.of(StopFinding.values()).filter(finding -> finding != StopFinding.NOTHING).toList();
    return IntStream.range(0, stopping.size()).filter(Walk::takes).mapToObj(stopping::get);
  }

  /** What the edited workbook says then. */
  private static Collection<Object> assertFollows(JobText before, JobText after) {
    Following.Made made = made(before);
    try (Engine engine = Engine.of(made.bytes())) {
      return assertFollows(made, engine, made(after));
    }
  }

  private static Collection<Object> assertFollows(
      Following.Made before, Engine engine, Following.Made fresh) {
    engine.edit(fresh.book().inputs());
    boolean isStale =
        engine.states(before.book().solutions()).values().stream()
            .anyMatch(state -> state.startsWith("solve again: "));
    if (isStale) {
      Following.assertFollowsBesideWhatWasSolved(
          "what stops", engine, fresh.bytes(), before.book());
    } else {
      Following.assertFollows("what stops", engine, fresh.bytes());
    }
    return engine.values().values();
  }

  @ParameterizedTest
  @MethodSource("findings")
  void aReportChangedInTheWorkbook_changesWhoDecides(StopFinding finding) {
    JobText after = GABLE.with("reports", "F-1,nothing", "F-1," + finding.word());
    Collection<Object> values = assertFollows(SOUND, sound, made(after));
    String decision = new Estimate(after.job()).framing().decision().plain();
    assertThat(decision).startsWith("STOP: ");
    assertThat(values).contains(decision);
  }

  @Test
  void aSlopeARidgeAndAStrutChangedInTheWorkbook_stop() {
    JobText known =
        GABLE
            .with("job", "ridge,board", "ridge,beam")
            .withLines("job", "strut_ft,6,", "strut_on_bearing_wall,yes,");
    assertFollows(known, known.with("job", "rise_in_12,6", "rise_in_12,2.5"));
    assertFollows(known, known.with("job", "ridge,beam", "ridge,board"));
    assertFollows(
        known, known.with("job", "strut_on_bearing_wall,yes", "strut_on_bearing_wall,no"));
    assertFollows(
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
    Collection<Object> values = assertFollows(light, heavy);
    assertThat(values).contains("heavier-covering");
    assertFollows(light, light.with("layers", "2,,comes-off", "2,,stays"));
  }
}
