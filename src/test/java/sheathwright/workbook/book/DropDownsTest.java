package sheathwright.workbook.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import sheathwright.Walk;
import sheathwright.figure.Choice;
import sheathwright.figure.Solution;
import sheathwright.figure.Traced;
import sheathwright.job.Estimate;
import sheathwright.job.Job;
import sheathwright.job.JobTables;
import sheathwright.job.table.RowSource;
import sheathwright.workbook.page.Agreement;
import sheathwright.workbook.page.JobBook;
import sheathwright.workbook.page.Samples;

/**
 * Walks every drop-down of an estimate, its first or last other value or with {@code
 * -Dsheathwright.sweep=all} every one: recalculated elsewhere, the workbook says what Java says,
 * and where Java refuses the value, there is an error and never a number that rests on it.
 */
public class DropDownsTest {

  public static final Path WALKED = Path.of("target", "walked");
  public static final Path REFUSED = WALKED.resolve("refused");

  /**
   * The job with the most to say of its rafters first: each drop-down is walked where it is met.
   */
  private static final List<String> JOBS =
      List.of("mistwater-cottage", "tallow-end", "cinder-brook", "quince-hollow");

  @Test
  void anEstimate_followsEveryDropDown() {
    assertThat(JOBS).containsExactlyInAnyOrderElementsOf(Samples.JOBS);
    Set<String> met = new HashSet<>();
    int walked = 0;
    for (String job : JOBS) {
      JobTables tables = Samples.tables(job);
      Following.Made old = Following.made(JobBook::estimate, new Estimate(Job.of(tables)));
      Set<String> here = new HashSet<>();
      try (Engine engine = Engine.of(old.bytes())) {
        for (Map.Entry<Traced, Place> input : old.book().inputs().entrySet()) {
          List<String> options = Walk.of(otherOptions(input.getKey()), walked);
          if (!met.contains(input.getKey().name())) {
            for (String option : options) {
              walk(job, tables, old, engine, input, option, walked++);
            }
            here.add(input.getKey().name());
          }
        }
      }
      met.addAll(here);
    }
    assertThat(walked).isGreaterThan(40);
  }

  private static List<String> otherOptions(Traced input) {
    Matcher place = Following.PLACE.matcher(input.source().text());
    boolean isLikeTheFirst =
        place.matches()
            && List.of("marks", "reports", "maker", "layers").contains(place.group(1))
            && Long.parseLong(place.group(2)) > 2;
    if (!(input instanceof Choice<?> choice) || !place.matches() || isLikeTheFirst) {
      return List.of();
    }
    List<String> others = new ArrayList<>(choice.options());
    others.remove(choice.plain());
    return others;
  }

  private static void walk(
      String job,
      JobTables tables,
      Following.Made old,
      Engine engine,
      Map.Entry<Traced, Place> input,
      String option,
      int step) {
    Matcher place = Following.PLACE.matcher(input.getKey().source().text());
    assertThat(place.matches()).isTrue();
    RowSource file = tables.files().get(place.group(1));
    RowSource changed =
        Following.changed(file, Long.parseLong(place.group(2)), input.getKey(), option);
    Optional<Following.Made> made =
        Following.made(JobBook::estimate, tables, place.group(1), changed);
    String what = String.join("-", job, input.getKey().name(), place.group(2), option);
    Map<Traced, Place> other = Map.of(Choice.literal(option), input.getValue());
    if (made.isEmpty()) {
      engine.edit(other);
      assertRefused(what, engine);
      if (Walk.takes(step)) {
        Samples.keep(REFUSED.resolve(what + ".xlsx"), engine.bytes());
      }
      return;
    }
    Following.Made fresh = made.get();
    if (fresh.liveChecks() != old.liveChecks()) {
      // A check that can no longer be made is an error in its cell; one that now could be made is
      // still told in words.
      String told = fresh.liveChecks() < old.liveChecks() ? "#error" : "not looked at";
      engine.edit(other);
      assertThat(engine.values().values())
          .as(what)
          .anyMatch(value -> value.toString().contains(told));
      return;
    }
    List<Solution> stale = SolvedCells.restingOn(input.getKey(), old.book());
    engine.edit(fresh.book().inputs());
    if (stale.isEmpty()) {
      Following.assertFollows(what, engine, fresh.bytes());
      if (Walk.takes(step)) {
        Following.keepForOtherEngines(WALKED, what, engine, fresh.bytes());
      }
    } else {
      Following.assertFollowsBesideWhatWasSolved(what, engine, fresh.bytes(), old.book());
    }
  }

  /** An error stands in it, unless nothing rests on what was changed: then nothing else does. */
  private static void assertRefused(String what, Engine engine) {
    Map<String, Object> recalculated = engine.values();
    if (!recalculated.containsValue("#error")) {
      assertThat(Agreement.differences(engine.file().values(), recalculated)).as(what).isEmpty();
    }
  }
}
