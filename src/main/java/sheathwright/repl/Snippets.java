package sheathwright.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import sheathwright.figure.RefusedException;
import sheathwright.repl.line.Mending;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Block;
import sheathwright.repl.memory.Block.Step;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.shell.Kept;
import sheathwright.repl.shell.LineRunner;

/** Runs what the compiler takes, and settles with it what each snippet has left behind. */
final class Snippets {

  /** What is said of a line that was stopped. */
  static final String STOPPED = "(stopped)";

  private final Holdings holdings;
  private final Values values;
  private final LineRunner runner;
  private Consumer<Kept<?>> heard;

  Snippets(Holdings holdings, LineRunner runner) {
    this.holdings = holdings;
    this.values = holdings.values();
    this.runner = runner;
  }

  /** What came of a snippet, and the snippet as it was mended to be compiled. */
  record Ran(String source, List<SnippetEvent> events) {}

  LineRunner runner() {
    return runner;
  }

  JavaShell java() {
    return holdings.compiler().awake();
  }

  /** Who hears what the next lines of a block make. */
  void tell(Consumer<Kept<?>> next) {
    heard = next;
  }

  /** What a line of a block that is running has made. */
  void take(Kept<?> kept) {
    heard.accept(kept);
  }

  /** Runs steps without keeping what they make; what each of them made. */
  List<Object> apart(List<Step> steps) {
    Block block = Block.of(steps, values, name -> java().knows(name));
    List<Object> made = new ArrayList<>();
    tell(kept -> made.add(kept.value()));
    java().takeWordsOf(block.code());
    SnippetEvent event = java().ran(block.code()).get(0);
    if (isFailed(event)) {
      Answer failed = failed(event);
      repair(event);
      throw new RefusedException(failed.text());
    }
    return made;
  }

  /** Runs one snippet; an operator that does not fit is mended, and it is compiled again. */
  Ran ran(String snippet) {
    String source = snippet;
    List<SnippetEvent> events = run(source);
    Optional<String> mended = mended(source, events);
    for (int times = 0; times < Mending.MOST_TIMES && mended.isPresent(); times++) {
      source = mended.get();
      java().takeWordsOf(source);
      events = run(source);
      mended = mended(source, events);
    }
    settle(events);
    return new Ran(source, events);
  }

  private Optional<String> mended(String source, List<SnippetEvent> events) {
    SnippetEvent last = events.isEmpty() ? null : events.get(events.size() - 1);
    if (last == null || last.status() != Snippet.Status.REJECTED) {
      return Optional.empty();
    }
    try {
      return java().mended(source, last.snippet());
    } catch (Unreadable wrong) {
      repair(last);
      throw wrong;
    }
  }

  /** Runs one snippet as it is; what it mentions, the compiler has to know from now on. */
  private List<SnippetEvent> run(String source) {
    for (String word : Definitions.wordsIn(source)) {
      if (values.has(word) && !java().knows(word)) {
        java().declare(word, values.of(word));
      }
    }
    return java().ran(source);
  }

  /** Tells the compiler anew what a snippet has left hanging, and takes over what it did. */
  private void settle(List<SnippetEvent> events) {
    String defined = "";
    for (SnippetEvent event : events) {
      defined = event.causeSnippet() == null ? definedBy(event.snippet()) : defined;
    }
    for (SnippetEvent event : events) {
      if (event.causeSnippet() != null
          && event.snippet() instanceof VarSnippet hanging
          && !hanging.name().equals(defined)) {
        holdings.toldAnew(hanging.name());
      }
    }
    readBack(defined);
  }

  /** Takes over what a statement or a method has done to variables. */
  private void readBack(String defined) {
    for (String name : java().known()) {
      if (!name.equals(defined) && values.has(name)) {
        Value now = java().valueOf(name);
        Object before = values.of(name).object();
        boolean isSame =
            now.object() == before
                || before instanceof Number && Objects.equals(now.object(), before);
        if (!isSame) {
          holdings.change(name, now);
        }
      }
    }
  }

  /** Whether a snippet has not run to its end. */
  boolean isFailed(SnippetEvent event) {
    return event.exception() != null
        || event.status() != Snippet.Status.VALID
        || runner.isStopped();
  }

  /** Why a snippet has not run to its end. */
  Answer failed(SnippetEvent event) {
    Complaints complaints = java().complaints();
    if (runner.isStopped()) {
      return new Answer(Answer.Kind.FAILED, STOPPED);
    }
    if (event.exception() != null) {
      return new Answer(Answer.Kind.FAILED, complaints.about(event.exception()));
    }
    String source = event.snippet().source();
    return new Answer(
        Answer.Kind.FAILED,
        complaints.about(event.snippet(), source),
        complaints.line(event.snippet(), source));
  }

  /** The compiler forgets what a snippet that failed has declared; what it was before stands. */
  void repair(SnippetEvent event) {
    String name = definedBy(event.snippet());
    if (event.snippet() instanceof MethodSnippet || !event.snippet().kind().isPersistent()) {
      if (event.status() != Snippet.Status.VALID) {
        java().drop(event.snippet());
      }
      return;
    }
    if (event.status() != Snippet.Status.NONEXISTENT) {
      java().drop(event.snippet());
    }
    holdings.toldAnew(name);
  }

  /** The value that a snippet has given the variable that it declares or assigns. */
  Value heldBy(SnippetEvent event) {
    if (event.snippet() instanceof VarSnippet variable) {
      java().add(variable);
    }
    String name =
        event.snippet() instanceof VarSnippet variable
            ? variable.name()
            : ((ExpressionSnippet) event.snippet()).name();
    return java().valueOf(name);
  }

  /** The name that a snippet gives a meaning; empty if none. */
  static String definedBy(Snippet snippet) {
    if (snippet instanceof VarSnippet variable) {
      return variable.name().startsWith("$") ? "" : variable.name();
    }
    if (snippet instanceof MethodSnippet method) {
      return method.name();
    }
    boolean isAssigned = snippet.subKind() == Snippet.SubKind.ASSIGNMENT_SUBKIND;
    return isAssigned ? ((ExpressionSnippet) snippet).name() : "";
  }
}
