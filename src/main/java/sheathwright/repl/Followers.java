package sheathwright.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.repl.Uncompiled.Made;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Plan;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Stale;
import sheathwright.repl.shell.LineRunner;
import sheathwright.repl.shell.LineRunner.StoppedLine;

/**
 * Carries along what is made from what changes. A variable that cannot follow keeps its last good
 * value, marked stale.
 */
final class Followers {

  private static final Stale STOPPED = new Stale("stopped; Enter alone goes on", true);

  private final Holdings holdings;
  private final Definitions definitions;
  private final Values values;
  private final Snippets snippets;
  private final Uncompiled uncompiled;
  private final LineRunner runner;
  private final boolean isWaiting;

  /**
   * Carries along for a session.
   *
   * @param isWaiting whether what takes long is carried along only when told to
   */
  Followers(
      Holdings holdings,
      Snippets snippets,
      Uncompiled uncompiled,
      LineRunner runner,
      boolean isWaiting) {
    this.holdings = holdings;
    this.definitions = holdings.definitions();
    this.values = holdings.values();
    this.snippets = snippets;
    this.uncompiled = uncompiled;
    this.runner = runner;
    this.isWaiting = isWaiting;
  }

  /** A plan from how things stand, to look ahead with. */
  Plan ahead() {
    return new Plan(definitions.copy(), values, isWaiting);
  }

  /** Carries along whatever is made from a variable. */
  List<Answer> of(String name) {
    return definitions.dependents(name).stream().map(each -> carriedAlone(each.name())).toList();
  }

  /** Runs one variable's own line again. */
  Answer carriedAlone(String name) {
    Definition definition = definitions.of(name);
    Stale stays =
        runner.isStopped() ? STOPPED : new Plan(definitions, values, isWaiting).carried(definition);
    return stays == null ? followed(definition) : holdings.stayed(name, stays);
  }

  /** Runs again what was waiting to be told, and what is made from it. */
  List<Answer> refreshed() {
    holdings.journal().begin("");
    List<Answer> answers = new ArrayList<>();
    for (String name : definitions.variables()) {
      if (values.stale(name).filter(Stale::isWaiting).isPresent()) {
        answers.add(followed(definitions.of(name)));
        answers.addAll(of(name));
      }
    }
    if (!runner.isStopped()) {
      holdings.journal().endAll();
    }
    return answers;
  }

  private Answer followed(Definition definition) {
    String name = definition.name();
    String before = holdings.brief(name);
    try {
      List<Made> made = uncompiled.again(definition.source());
      if (made.isEmpty()) {
        return compiledAgain(definition, before);
      }
      holdings.keep(name, definition.source(), true, made.get(0).value(), runner.nanos());
      holdings.toldAnew(name);
      return again(Answer.of(name, made.get(0).value().object()), before);
    } catch (StoppedLine stopped) {
      return holdings.stayed(name, STOPPED);
    } catch (RefusedException | Unreadable refused) {
      return holdings.stayed(name, why(definition, false, refused.getMessage()));
    }
  }

  private Answer compiledAgain(Definition definition, String before) {
    String name = definition.name();
    for (SnippetEvent event : snippets.ran(definition.source()).events()) {
      if (event.causeSnippet() == null) {
        if (snippets.isFailed(event)) {
          String failed = snippets.failed(event).text();
          boolean isTaken = event.status() == Snippet.Status.VALID;
          snippets.repair(event);
          return holdings.stayed(
              name, runner.isStopped() ? STOPPED : why(definition, isTaken, failed));
        }
        holdings.keep(name, definition.source(), true, snippets.heldBy(event), runner.nanos());
        return again(Answer.of(name, values.of(name).object()), before);
      }
    }
    throw new IllegalStateException(definition.source());
  }

  /** Why a line no longer runs: mostly because something has lost its unit. */
  private Stale why(Definition definition, boolean isTaken, String failed) {
    return definition.reads().stream()
        .filter(read -> !isTaken && hasLostItsUnit(read))
        .findFirst()
        .map(
            read ->
                "%s is %s, a number without a unit"
                    .formatted(Reader.saidName(read), holdings.brief(read)))
        .map(reason -> new Stale(reason, false))
        .orElseGet(() -> Stale.failed(failed));
  }

  private boolean hasLostItsUnit(String name) {
    return values.has(name)
        && values.of(name).object() instanceof Number
        && holdings
            .journal()
            .before(name)
            .filter(state -> state.value() != null && state.value().object() instanceof Traced)
            .isPresent();
  }

  /** What is said of a variable whose line was run again. */
  static Answer again(Answer now, String before) {
    String was = before.isEmpty() ? "" : " (was " + before + ")";
    String text = now.text().replaceFirst("\n|$", Matcher.quoteReplacement(was) + "$0");
    return new Answer(Answer.Kind.DEFINED, text.replaceAll("(?m)^", "  "));
  }
}
