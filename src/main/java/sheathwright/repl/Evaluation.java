package sheathwright.repl;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.VarSnippet;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.repl.Block.Step;
import sheathwright.repl.Definitions.Definition;
import sheathwright.repl.Values.Stale;
import sheathwright.repl.Values.Value;
import sheathwright.repl.shell.Kept;

/**
 * Evaluates lines of Java and carries along what is made from what they change. A variable that
 * cannot follow keeps its last good value, marked stale.
 */
final class Evaluation {

  private static final Stale STOPPED = new Stale("stopped; Enter alone goes on", true);

  private final Supplier<JavaShell> java;
  private final BooleanSupplier isAwake;
  private final BooleanSupplier isStopped;
  private final Definitions definitions;
  private final Values values;
  private final Journal journal;
  private final boolean isWaiting;
  private final Road road;
  private Consumer<Kept<?>> heard;

  /**
   * What came of a line that was evaluated without the compiler.
   *
   * @param name the variable that it gives a value; empty if none
   * @param source the line as a statement of Java
   */
  record Made(String name, String source, Value value) {}

  /** A way to evaluate lines that need not go through the compiler as they stand. */
  @FunctionalInterface
  interface Road {

    /**
     * What came of a line; empty if the line is none for this road.
     *
     * @throws RefusedException if it is one, and is refused
     */
    Optional<Made> made(String line);
  }

  /**
   * Evaluates for a session.
   *
   * @param java the compiler, which wakes when it is first asked for
   * @param isAwake whether it is awake
   * @param isStopped whether the user has stopped what is going on
   * @param isWaiting whether what takes long is carried along only when told to
   */
  Evaluation(
      Supplier<JavaShell> java,
      BooleanSupplier isAwake,
      BooleanSupplier isStopped,
      Definitions definitions,
      Values values,
      Journal journal,
      boolean isWaiting) {
    this.java = java;
    this.isAwake = isAwake;
    this.isStopped = isStopped;
    this.definitions = definitions;
    this.values = values;
    this.journal = journal;
    this.isWaiting = isWaiting;
    this.road = new Varying(definitions, this::apart);
  }

  /**
   * Evaluates whole lines in order, plain ones together.
   *
   * @param mustRunAlone which lines are not to be compiled with others
   * @param alone evaluates such a line
   * @param isToGoOn hears each answer with the number of its line, and says whether to go on
   * @return whether it went on to the end
   */
  boolean answers(
      List<String> lines,
      Predicate<String> mustRunAlone,
      Predicate<Integer> alone,
      BiPredicate<Integer, Answer> isToGoOn) {
    Set<Integer> single = new HashSet<>();
    int next = 0;
    while (next < lines.size()) {
      Block planned =
          Block.at(
              next,
              lines,
              new Plan(definitions.copy(), values, isWaiting),
              values,
              name -> java.get().knows(name),
              line -> PlainLine.is(line) && !mustRunAlone.test(line) && !Varying.is(line),
              single::contains);
      if (planned.isEmpty()) {
        if (!alone.test(next)) {
          return false;
        }
        next++;
      } else {
        java.get().takeWordsOf(planned.code());
        BlockRun block = new BlockRun(this, java.get(), planned, lines, isToGoOn);
        heard = block::take;
        next = ran(block, single);
      }
    }
    return next == lines.size();
  }

  private static int ran(BlockRun block, Set<Integer> single) {
    try {
      return block.next(single);
    } catch (StackOverflowError tooLong) {
      return block.allAlone(single);
    }
  }

  /** What a line of a block that is running has made. */
  void take(Kept<?> kept) {
    heard.accept(kept);
  }

  /** Evaluates one line by itself, which may hold several snippets; stops at one that fails. */
  List<Answer> alone(String line) {
    List<Answer> answers = new ArrayList<>();
    journal.begin(line);
    Optional<Made> made = road.made(line);
    if (made.isPresent()) {
      return given(made.get());
    }
    java.get().takeWordsOf(line);
    if (PlainLine.is(line)) {
      return evaluated(PlainLine.statement(definitions.declared(line)));
    }
    String rest = line;
    while (!rest.isBlank()) {
      rest = definitions.declared(rest);
      CompletionInfo completion = java.get().analysis().analyzeCompletion(rest);
      String snippet = completion.source() == null ? rest : completion.source();
      rest = completion.source() == null ? "" : completion.remaining();
      answers.addAll(evaluated(snippet));
      if (!answers.isEmpty() && answers.get(answers.size() - 1).isError()) {
        return answers;
      }
    }
    return answers;
  }

  /** Takes what a line has made without the compiler, and carries along what is made from it. */
  private List<Answer> given(Made made) {
    Object object = made.value().object();
    if (made.name().isEmpty()) {
      return List.of(noted(Answer.of("", object), made.source()));
    }
    keep(made.name(), made.source(), false, made.value(), 0);
    toldAnew(made.name());
    List<Answer> answers = new ArrayList<>();
    answers.add(noted(Answer.of(made.name(), object), made.source()));
    for (Definition dependent : definitions.dependents(made.name())) {
      answers.add(carriedAlone(dependent.name()));
    }
    return answers;
  }

  /** Runs steps without keeping what they make; what each of them made. */
  private List<Object> apart(List<Step> steps) {
    Block block = Block.of(steps, values, name -> java.get().knows(name));
    List<Object> made = new ArrayList<>();
    heard = kept -> made.add(kept.value());
    java.get().takeWordsOf(block.code());
    SnippetEvent event = java.get().ran(block.code()).get(0);
    if (isFailed(event)) {
      Answer failed = failed(event);
      repair(event);
      throw new RefusedException(failed.text());
    }
    return made;
  }

  /** What a line of a block made. */
  Answer made(Step step, String line, Kept<?> kept, long nanos) {
    if (!step.isCarried()) {
      journal.begin(line);
    }
    if (step.name().isEmpty()) {
      return noted(Answer.of("", kept.value()), step.source());
    }
    String before = brief(step.name());
    keep(step.name(), step.source(), step.isCarried(), new Value(kept.value(), kept.type()), nanos);
    Answer answer = Answer.of(step.name(), kept.value());
    return step.isCarried() ? again(answer, before) : noted(answer, step.source());
  }

  /** A variable that a change does not carry along. */
  Answer stayed(String name, Stale why) {
    touch(name);
    values.mark(name, why);
    Object object = values.of(name).object();
    return new Answer(
        Answer.Kind.DEFINED,
        "  %s stays %s, stale: %s".formatted(name, Shows.brief(object), why.reason()));
  }

  /** Runs one variable's own line again. */
  Answer carriedAlone(String name) {
    Definition definition = definitions.of(name);
    Stale stays =
        isStopped.getAsBoolean()
            ? STOPPED
            : new Plan(definitions, values, isWaiting).carried(definition);
    return stays == null ? followed(definition) : stayed(name, stays);
  }

  /** Runs again what was waiting to be told, and what is made from it. */
  List<Answer> refreshed() {
    List<Answer> answers = new ArrayList<>();
    for (String name : definitions.variables()) {
      if (values.stale(name).filter(Stale::isWaiting).isPresent()) {
        answers.add(followed(definitions.of(name)));
        for (Definition dependent : definitions.dependents(name)) {
          answers.add(carriedAlone(dependent.name()));
        }
      }
    }
    return answers;
  }

  private Answer followed(Definition definition) {
    String name = definition.name();
    String before = brief(name);
    try {
      Optional<Made> made = road.made(definition.source());
      if (made.isPresent()) {
        keep(name, definition.source(), true, made.get().value(), 0);
        toldAnew(name);
        return again(Answer.of(name, made.get().value().object()), before);
      }
    } catch (RefusedException refused) {
      return stayed(name, Stale.failed(refused.getMessage()));
    }
    for (SnippetEvent event : ran(definition.source())) {
      if (event.causeSnippet() == null) {
        if (isFailed(event)) {
          Answer failed = failed(event);
          repair(event);
          return stayed(name, isStopped.getAsBoolean() ? STOPPED : why(definition, event, failed));
        }
        keep(name, definition.source(), true, heldBy(event), java.get().control().nanos());
        return again(Answer.of(name, values.of(name).object()), before);
      }
    }
    throw new IllegalStateException(definition.source());
  }

  /** Why a line no longer runs: mostly because something has lost its unit. */
  private Stale why(Definition definition, SnippetEvent event, Answer failed) {
    boolean isTaken = event.status() == Snippet.Status.VALID;
    return definition.reads().stream()
        .filter(read -> !isTaken && hasLostItsUnit(read))
        .findFirst()
        .map(read -> "%s is %s, a number without a unit".formatted(read, brief(read)))
        .map(reason -> new Stale(reason, false))
        .orElseGet(() -> Stale.failed(failed.text()));
  }

  private boolean hasLostItsUnit(String name) {
    return values.has(name)
        && values.of(name).object() instanceof Number
        && journal
            .before(name)
            .filter(state -> state.value() != null && state.value().object() instanceof Traced)
            .isPresent();
  }

  private List<Answer> evaluated(String snippet) {
    List<Answer> answers = new ArrayList<>();
    for (SnippetEvent event : ran(snippet)) {
      if (event.causeSnippet() == null) {
        answers.addAll(evaluated(event, snippet));
      }
    }
    return answers;
  }

  private List<Answer> evaluated(SnippetEvent event, String source) {
    if (isFailed(event)) {
      Answer failed = failed(event);
      repair(event);
      return List.of(failed);
    }
    List<Answer> answers = new ArrayList<>();
    String name = definedBy(event.snippet());
    if (event.snippet() instanceof MethodSnippet) {
      touch(name);
      definitions.put(name, source, false);
    } else if (!name.isEmpty()) {
      Value value = heldBy(event);
      keep(name, source, false, value, java.get().control().nanos());
      answers.add(noted(Answer.of(name, value.object()), source));
    } else if (event.snippet() instanceof VarSnippet || hasValue(event)) {
      Object value = event.snippet() instanceof VarSnippet ? heldBy(event).object() : named(event);
      answers.add(noted(Answer.of("", value), source));
    } else if (event.snippet().kind().isPersistent()) {
      journal.add(event.snippet());
    }
    if (!name.isEmpty()) {
      for (Definition dependent : definitions.dependents(name)) {
        answers.add(carriedAlone(dependent.name()));
      }
    }
    return answers;
  }

  private static boolean hasValue(SnippetEvent event) {
    return event.snippet().kind() == Snippet.Kind.EXPRESSION && event.value() != null;
  }

  /** What an expression that is only a name stands for. */
  private Object named(SnippetEvent event) {
    String name = ((ExpressionSnippet) event.snippet()).name();
    return values.has(name) ? values.of(name).object() : value(name);
  }

  private boolean isFailed(SnippetEvent event) {
    return event.exception() != null
        || event.status() != Snippet.Status.VALID
        || isStopped.getAsBoolean();
  }

  /** Why a snippet has not run to its end. */
  Answer failed(SnippetEvent event) {
    Complaints complaints = java.get().complaints();
    if (isStopped.getAsBoolean()) {
      return new Answer(Answer.Kind.FAILED, "(stopped)");
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
  private void repair(SnippetEvent event) {
    String name = definedBy(event.snippet());
    if (event.snippet() instanceof MethodSnippet || !event.snippet().kind().isPersistent()) {
      if (event.status() != Snippet.Status.VALID) {
        java.get().drop(event.snippet());
      }
      return;
    }
    if (event.status() != Snippet.Status.NONEXISTENT) {
      java.get().drop(event.snippet());
    }
    toldAnew(name);
  }

  /** The compiler is to read a variable anew from here, at once if a method may ask for it. */
  void toldAnew(String name) {
    if (!isAwake.getAsBoolean()) {
      return;
    }
    java.get().forget(name);
    if (values.has(name) && definitions.isReadByMethod(name)) {
      java.get().declare(name, values.of(name));
    }
  }

  /** The value that a snippet has given the variable that it declares or assigns. */
  private Value heldBy(SnippetEvent event) {
    if (event.snippet() instanceof VarSnippet variable) {
      java.get().add(variable);
    }
    String name =
        event.snippet() instanceof VarSnippet variable
            ? variable.name()
            : ((ExpressionSnippet) event.snippet()).name();
    return java.get().valueOf(name);
  }

  private void keep(String name, String source, boolean isCarried, Value value, long nanos) {
    touch(name);
    if (!isCarried) {
      definitions.put(name, source, true);
    }
    values.put(name, value);
    values.took(name, nanos);
    if (!isCarried) {
      staleReadBy(source, name).ifPresent(read -> values.mark(name, Stale.madeFrom(read)));
    }
  }

  private Optional<String> staleReadBy(String source, String name) {
    return Definitions.wordsIn(source).stream()
        .filter(word -> !word.equals(name) && values.stale(word).isPresent())
        .sorted()
        .findFirst();
  }

  /** What is said, with a word on what is stale in it. */
  private Answer noted(Answer answer, String source) {
    return staleReadBy(source, "")
        .map(read -> new Answer(answer.kind(), answer.text() + staleNote(read, source)))
        .orElse(answer);
  }

  private String staleNote(String read, String source) {
    boolean isItself = source.replace(";", "").strip().equals(read);
    String why =
        isItself ? values.stale(read).orElseThrow().reason() : Stale.madeFrom(read).reason();
    return "  (stale: " + why + ")";
  }

  private void touch(String name) {
    journal.touch(
        name,
        new Journal.State(definitions.of(name), values.of(name), values.stale(name).orElse(null)));
  }

  private static String definedBy(Snippet snippet) {
    if (snippet instanceof VarSnippet variable) {
      return variable.name().startsWith("$") ? "" : variable.name();
    }
    if (snippet instanceof MethodSnippet method) {
      return method.name();
    }
    boolean isAssigned = snippet.subKind() == Snippet.SubKind.ASSIGNMENT_SUBKIND;
    return isAssigned ? ((ExpressionSnippet) snippet).name() : "";
  }

  private String brief(String name) {
    return values.has(name) ? Shows.brief(values.of(name).object()) : "";
  }

  private static Answer again(Answer now, String before) {
    String was = before.isEmpty() ? "" : " (was " + before + ")";
    return new Answer(Answer.Kind.DEFINED, "  " + now.text() + was);
  }

  /** Runs one snippet; what it mentions, the compiler has to know from now on. */
  private List<SnippetEvent> ran(String source) {
    for (String word : Definitions.wordsIn(source)) {
      if (values.has(word) && !java.get().knows(word)) {
        java.get().declare(word, values.of(word));
      }
    }
    List<SnippetEvent> events = java.get().ran(source);
    String defined = "";
    for (SnippetEvent event : events) {
      defined = event.causeSnippet() == null ? definedBy(event.snippet()) : defined;
    }
    for (SnippetEvent event : events) {
      if (event.causeSnippet() != null
          && event.snippet() instanceof VarSnippet hanging
          && !hanging.name().equals(defined)) {
        toldAnew(hanging.name());
      }
    }
    readBack(defined);
    return events;
  }

  /** Takes over what a statement or a method has done to variables. */
  private void readBack(String defined) {
    for (String name : java.get().known()) {
      if (!name.equals(defined) && values.has(name)) {
        Value now = java.get().valueOf(name);
        Object before = values.of(name).object();
        boolean isSame =
            now.object() == before
                || before instanceof Number && Objects.equals(now.object(), before);
        if (!isSame) {
          touch(name);
          values.put(name, now);
        }
      }
    }
  }

  /** What an expression stands for. */
  Object value(String expression) {
    return apart(List.of(new Step(0, "", PlainLine.statement(expression), false, null))).get(0);
  }

  /** Sets a name back to how it stood. */
  void restore(String name, Journal.State state) {
    boolean wasMethod = state.definition() != null && !state.definition().isVariable();
    boolean isMethod = definitions.has(name) && !definitions.of(name).isVariable();
    forget(name);
    if (isMethod) {
      java.get().dropMethod(name);
    }
    if (state.definition() != null) {
      definitions.put(state.definition());
    }
    if (wasMethod) {
      java.get().ran(state.definition().source());
    } else if (state.value() != null) {
      values.put(name, state.value());
      if (state.stale() != null) {
        values.mark(name, state.stale());
      }
      toldAnew(name);
    }
  }

  /** Takes a name away. */
  void delete(String name) {
    touch(name);
    if (!definitions.of(name).isVariable()) {
      java.get().dropMethod(name);
    }
    forget(name);
  }

  private void forget(String name) {
    definitions.remove(name);
    values.remove(name);
    if (isAwake.getAsBoolean()) {
      java.get().forget(name);
    }
  }

  /** What the variables hold, in the order in which they were last given a value. */
  Map<String, Object> variables() {
    Map<String, Object> held = new LinkedHashMap<>();
    definitions.variables().forEach(name -> held.put(name, values.of(name).object()));
    return held;
  }
}
