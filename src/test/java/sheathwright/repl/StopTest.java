package sheathwright.repl;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Ctrl-C stops a line that is evaluated without the compiler as well; the old values stay. */
@Timeout(60)
public class StopTest {

  private static volatile CountDownLatch begun = new CountDownLatch(1);
  private static volatile boolean isOver;

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
}
