package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import sheathwright.repl.show.Screen;

/** Ctrl-C stops a line that is evaluated without the compiler as well; the old values stay. */
@Timeout(60)
public class StopTest {

  private static volatile CountDownLatch begun = new CountDownLatch(1);
  private static volatile boolean isOver;

  @TempDir private Path folder;

  private final Session session = new Session();

  /** Something of ours that takes long, and hears nobody. */
  public static final class Stuck {

    /** The number itself; only for 1 at once. */
    public int answer(int number) {
      if (number > 1) {
        begun.countDown();
      }
      while (number > 1 && !isOver) {
        LockSupport.parkNanos(1_000_000);
      }
      return number;
    }
  }

  @AfterEach
  void close() {
    isOver = true;
    session.close();
    begun = new CountDownLatch(1);
    isOver = false;
  }

  private List<String> stopped(String line) throws InterruptedException {
    Thread stopper =
        new Thread(
            () -> {
              try {
                begun.await(5, TimeUnit.SECONDS);
                session.stop();
              } catch (InterruptedException early) {
                Thread.currentThread().interrupt();
              }
            });
    stopper.start();
    List<String> said = session.answers(line).stream().map(Answer::text).toList();
    stopper.join();
    return said;
  }

  private String answer(String line) {
    return EstimatorGuideTest.answer(session, line);
  }

  @Test
  void aLineWithoutTheCompiler_isStopped_andMakesNothing() throws Exception {
    answer("stuck = new sheathwright.repl.StopTest.Stuck()");
    assertThat(stopped("slow = stuck.answer(2)")).containsExactly("(stopped)");
    assertThat(session.variables()).doesNotContainKey("slow");
    assertThat(answer("stuck.answer(1)")).isEqualTo("1");
    assertThat(answer("show java")).contains("stuck.answer(1)");
  }

  @Test
  void whatAChangeCarriesAlong_staysAsItWas_untilEnter() throws Exception {
    answer("stuck = new sheathwright.repl.StopTest.Stuck()");
    answer("n = 1");
    answer("slow = stuck.answer(n)");
    answer("after = slow + 1");
    assertThat(stopped("n = 2"))
        .containsExactly(
            "n = 2",
            "  slow stays 1, stale: stopped; Enter alone goes on",
            "  after stays 2, stale: stopped; Enter alone goes on");
    isOver = true;
    assertThat(session.answers("").stream().map(Answer::text))
        .containsExactly("  slow = 2 (was 1)", "  after = 3 (was 2)");
  }

  @Test
  void aLineThatDidNotEnd_isNotReplayed_butSaid() throws Exception {
    Path file = folder.resolve("morning.session");
    answer("stuck = new sheathwright.repl.StopTest.Stuck()");
    answer("n = 1");
    answer("slow = stuck.answer(n)");
    stopped("n = 2");
    answer("other = 3");
    assertThat(answer("save \"" + file + "\"")).contains("4 lines");
    try (Session second = new Session()) {
      assertThat(EstimatorGuideTest.answer(second, "resume \"" + file + "\""))
          .startsWith("left out: line 5 did not end: n = 2\n")
          .contains("n = 1", "slow = 1", "other = 3");
    }
    isOver = true;
    session.answers("");
    assertThat(answer("saveOver \"" + file + "\"")).contains("5 lines");
  }

  @Test
  void whileALineRuns_theFileOnTheSideHoldsItAsOneThatDidNotEnd() throws Exception {
    Autosave autosave = new Autosave(folder, "first");
    try (Session killed = Session.atPrompt(autosave, () -> Screen.PIPE)) {
      EstimatorGuideTest.answer(killed, "stuck = new sheathwright.repl.StopTest.Stuck()");
      EstimatorGuideTest.answer(killed, "n = 1");
      EstimatorGuideTest.answer(killed, "slow = stuck.answer(n)");
      Thread typed = new Thread(() -> killed.answers("n = 2"));
      typed.start();
      assertThat(begun.await(20, TimeUnit.SECONDS)).isTrue();
      Autosave next = new Autosave(folder, "second");
      assertThat(Files.readString(next.last().orElseThrow())).contains("# did not end: n = 2\n");
      isOver = true;
      typed.join();
      assertThat(Files.readString(next.last().orElseThrow())).contains("\nn = 2\n");
    }
  }
}
