package sheathwright.repl;

import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import sheathwright.repl.shell.LineRunner;
import sheathwright.repl.shell.Lines;

/** The compiler behind a session. It sleeps until a line first needs it, or until it is woken. */
final class Compiler implements AutoCloseable {

  private final Lines lines;
  private final Supplier<Set<String>> names;
  private final LineRunner runner;
  private volatile CompletableFuture<JavaShell> java;

  /**
   * A compiler that sleeps.
   *
   * @param lines what lines reach while they run
   * @param names the session's variables
   * @param runner runs the lines
   */
  Compiler(Lines lines, Supplier<Set<String>> names, LineRunner runner) {
    this.lines = lines;
    this.names = names;
    this.runner = runner;
  }

  /** Wakes it behind the user's back. */
  void wake(boolean takesAllWords) {
    java =
        CompletableFuture.supplyAsync(
            () -> {
              JavaShell woken = new JavaShell(lines, names, runner);
              if (takesAllWords) {
                woken.takeAllWords();
              }
              return woken;
            });
  }

  /** The compiler awake. */
  JavaShell awake() {
    if (java == null) {
      wake(false);
    }
    return java.join();
  }

  boolean isAwake() {
    CompletableFuture<JavaShell> waking = java;
    return waking != null && waking.isDone();
  }

  @Override
  public void close() {
    if (java != null) {
      awake().close();
    }
  }
}
