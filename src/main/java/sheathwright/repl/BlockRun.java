package sheathwright.repl;

import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import sheathwright.repl.Block.Step;

/** Runs a block of lines in a session, and says what each of them made as it is made. */
final class BlockRun {

  private static final int NO_MORE = Integer.MAX_VALUE;

  private final Session session;
  private final JShell shell;
  private final Held held;
  private final BiPredicate<Integer, Answer> isToGoOn;
  private boolean isStopped;

  BlockRun(Session session, JShell shell, Held held, BiPredicate<Integer, Answer> isToGoOn) {
    this.session = session;
    this.shell = shell;
    this.held = held;
    this.isToGoOn = isToGoOn;
  }

  /**
   * Runs a block, unless the compiler does not take it; nothing of it has run then.
   *
   * @param alone gets the lines that have to be run alone, so that what is wrong with them is said
   * @return the line to go on with
   */
  int next(Block block, Set<Integer> alone) {
    List<Step> steps = block.steps();
    held.hear((step, kept) -> made(steps.get(step), kept));
    SnippetEvent ran = shell.eval(block.code()).get(0);
    if (ran.status() != Snippet.Status.VALID) {
      alone.addAll(failing(block, ran.snippet()));
      shell.drop(ran.snippet());
      return steps.get(0).line();
    }
    if (isStopped) {
      return NO_MORE;
    }
    if (ran.exception() == null) {
      return steps.get(steps.size() - 1).line() + 1;
    }
    Step failed = steps.get(held.done());
    boolean goesOn =
        failed.isCarried()
            ? steps.stream()
                .skip(held.done())
                .filter(step -> step.line() == failed.line())
                .allMatch(step -> isToGoOn.test(step.line(), session.recomputed(step)))
            : isToGoOn.test(failed.line(), session.raised(ran.exception()));
    return goesOn ? failed.line() + 1 : NO_MORE;
  }

  private Set<Integer> failing(Block block, Snippet snippet) {
    Set<Integer> failing =
        shell
            .diagnostics(snippet)
            .filter(Diag::isError)
            .map(diag -> block.lineAt(diag.getPosition()))
            .filter(line -> line >= 0)
            .collect(Collectors.toSet());
    return failing.isEmpty()
        ? block.steps().stream().map(Step::line).collect(Collectors.toSet())
        : failing;
  }

  private void made(Step step, Kept<?> kept) {
    if (!isToGoOn.test(step.line(), session.made(step, kept))) {
      isStopped = true;
      throw new Exits.LineEnded(0);
    }
  }
}
