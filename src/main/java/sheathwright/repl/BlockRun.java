package sheathwright.repl;

import java.util.List;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import sheathwright.repl.memory.Block;
import sheathwright.repl.memory.Block.Step;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.shell.Kept;

/** Runs a block of lines in a session, and says what each of them made as it is made. */
final class BlockRun {

  /** Beyond the last line. */
  private static final int NO_MORE = Integer.MAX_VALUE;

  private final Holdings holdings;
  private final Snippets snippets;
  private final Followers followers;
  private final BiPredicate<Integer, Answer> isToGoOn;
  private final Block block;
  private final List<String> lines;
  private int done;
  private long since;
  private boolean isStopped;

  BlockRun(
      Holdings holdings,
      Snippets snippets,
      Followers followers,
      Block block,
      List<String> lines,
      BiPredicate<Integer, Answer> isToGoOn) {
    this.lines = lines;
    this.holdings = holdings;
    this.snippets = snippets;
    this.followers = followers;
    this.block = block;
    this.isToGoOn = isToGoOn;
  }

  /**
   * Runs the block, unless the compiler does not take it; nothing of it has run then.
   *
   * @param alone gets the lines that have to be run alone, so that what is wrong with them is said
   * @return the line to go on with
   */
  int next(Set<Integer> alone) {
    List<Step> steps = block.steps();
    SnippetEvent ran = snippets.java().ran(block.code()).get(0);
    if (ran.status() != Snippet.Status.VALID) {
      alone.addAll(failing(ran.snippet()));
      snippets.java().drop(ran.snippet());
      return steps.get(0).line();
    }
    if (isStopped) {
      return NO_MORE;
    }
    boolean wasStopped = snippets.runner().isStopped();
    if (ran.exception() == null && !wasStopped) {
      return steps.get(steps.size() - 1).line() + 1;
    }
    Step failed = block.running().get(done);
    boolean goesOn =
        failed.isCarried()
            ? steps.stream()
                .skip(steps.indexOf(failed))
                .filter(step -> step.line() == failed.line())
                .allMatch(step -> isToGoOn.test(step.line(), followers.carriedAlone(step.name())))
            : isToGoOn.test(failed.line(), snippets.failed(ran));
    return goesOn && !wasStopped ? failed.line() + 1 : NO_MORE;
  }

  private Set<Integer> failing(Snippet snippet) {
    JShell shell = snippets.java().shell();
    Set<Integer> failing =
        shell
            .diagnostics(snippet)
            .filter(Diag::isError)
            .map(diag -> block.lineAt(diag.getPosition()))
            .filter(line -> line >= 0)
            .collect(Collectors.toSet());
    return failing.isEmpty() ? lines() : failing;
  }

  private Set<Integer> lines() {
    return block.steps().stream().map(Step::line).collect(Collectors.toSet());
  }

  /** Every line has to be run alone; the line to go on with. */
  int allAlone(Set<Integer> alone) {
    alone.addAll(lines());
    return block.steps().get(0).line();
  }

  /** Takes what the next step made, and what is said of those behind it that stay as they are. */
  void take(Kept<?> kept) {
    long now = System.nanoTime();
    List<Step> steps = block.steps();
    Step step = block.running().get(done++);
    say(
        step,
        made(step, lines.get(step.line()), kept, now - Math.max(since, snippets.runner().began())));
    for (int i = steps.indexOf(step) + 1; i < steps.size() && !steps.get(i).isToRun(); i++) {
      say(steps.get(i), holdings.stayed(steps.get(i).name(), steps.get(i).stays()));
    }
    since = System.nanoTime();
  }

  /** What a line of a block made. */
  private Answer made(Step step, String line, Kept<?> kept, long nanos) {
    if (!step.isCarried()) {
      holdings.journal().end();
      holdings.journal().begin(line);
    }
    if (step.name().isEmpty()) {
      return holdings.noted(Answer.of("", kept.value()), step.source());
    }
    String before = holdings.brief(step.name());
    holdings.keep(
        step.name(), step.source(), step.isCarried(), new Value(kept.value(), kept.type()), nanos);
    Answer answer = Answer.of(step.name(), kept.value());
    return step.isCarried()
        ? Followers.again(answer, before)
        : holdings.noted(answer, step.source());
  }

  private void say(Step step, Answer answer) {
    if (!isToGoOn.test(step.line(), answer)) {
      isStopped = true;
      throw new RefusedLine();
    }
  }

  /** Ends a block in which a line has failed. */
  private static final class RefusedLine extends RuntimeException {

    private static final long serialVersionUID = 1;

    RefusedLine() {
      super("refused", null, false, false);
    }
  }
}
