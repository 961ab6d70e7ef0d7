package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
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
import sheathwright.repl.line.Mending;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reading;
import sheathwright.repl.line.Unreadable;
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
  private final Reader reader;
  private final Definitions definitions;
  private final Values values;
  private final Journal journal;
  private final boolean isWaiting;
  private final Varying varying;
  private final List<String> compiled = new ArrayList<>();
  private Consumer<Kept<?>> heard;

  /**
   * What came of a line that was evaluated without the compiler.
   *
   * @param name the variable that it gives a value; empty if none
   * @param source the line as a statement of Java
   * @param notes what the answer says beside
   */
  record Made(String name, String source, Value value, List<String> notes) {}

  /**
   * Evaluates for a session.
   *
   * @param java the compiler, which wakes when it is first asked for
   * @param isAwake whether it is awake
   * @param isStopped whether the user has stopped what is going on
   * @param reader reads what is typed
   * @param isWaiting whether what takes long is carried along only when told to
   */
  Evaluation(
      Supplier<JavaShell> java,
      BooleanSupplier isAwake,
      BooleanSupplier isStopped,
      Reader reader,
      Definitions definitions,
      Values values,
      Journal journal,
      boolean isWaiting) {
    this.java = java;
    this.isAwake = isAwake;
    this.isStopped = isStopped;
    this.reader = reader;
    this.definitions = definitions;
    this.values = values;
    this.journal = journal;
    this.isWaiting = isWaiting;
    this.varying = new Varying(definitions, this::apart, reader::java);
  }

  /**
   * Evaluates whole lines in order, plain ones together.
   *
   * @param mustRunAlone which lines are not to be compiled with others
   * @param alone evaluates one line, with the compiler only if it may
   * @param isToGoOn hears each answer with the number of its line, and says whether to go on
   * @return whether it went on to the end
   */
  boolean answers(
      List<String> lines,
      Predicate<String> mustRunAlone,
      BiFunction<String, Boolean, Optional<List<Answer>>> alone,
      BiPredicate<Integer, Answer> isToGoOn) {
    Set<Integer> single = new HashSet<>();
    int next = 0;
    while (next < lines.size()) {
      int line = next;
      Optional<List<Answer>> answers = alone.apply(lines.get(line), false);
      Block planned =
          answers.isPresent() ? Block.none() : planned(next, lines, mustRunAlone, single);
      if (planned.isEmpty()) {
        boolean goesOn =
            answers.or(() -> alone.apply(lines.get(line), true)).orElseThrow().stream()
                .allMatch(answer -> isToGoOn.test(line, answer));
        if (!goesOn) {
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

  private Block planned(
      int first, List<String> lines, Predicate<String> mustRunAlone, Set<Integer> single) {
    return Block.at(
        first,
        lines,
        new Plan(definitions.copy(), values, isWaiting),
        values,
        name -> java.get().knows(name),
        line -> isPlain(line) && !mustRunAlone.test(line),
        single::contains);
  }

  /** Whether a line can be compiled with others as it was typed. */
  private boolean isPlain(String line) {
    return PlainLine.is(line) && !Varying.is(line) && reader.isJavaAsTyped(line);
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

  /**
   * Evaluates one line by itself, which may hold several snippets; stops at one that fails. Nothing
   * if the compiler would have to take it and may not.
   */
  Optional<List<Answer>> alone(String line, boolean mayCompile) {
    try {
      Reading reading = reader.read(line);
      List<Made> made = made(reading);
      if (made.isEmpty() && !mayCompile) {
        return Optional.empty();
      }
      journal.begin(line);
      return Optional.of(made.isEmpty() ? answers((Reading.Compiled) reading, line) : given(made));
    } catch (Unreadable wrong) {
      return Optional.of(List.of(failed(wrong, line, wrong.at())));
    }
  }

  private List<Answer> answers(Reading.Compiled reading, String line) {
    compiled.clear();
    try {
      List<Answer> answers = compiled(reading.java());
      reader.compiled(String.join("\n", compiled));
      return beside(answers, reading.notes());
    } catch (Unreadable wrong) {
      return List.of(failed(wrong, line, reading.places().typed(wrong.at())));
    }
  }

  private static Answer failed(Unreadable wrong, String line, int at) {
    String before = line.substring(0, Math.min(at, line.length()));
    int lines = (int) before.chars().filter(c -> c == '\n').count();
    return new Answer(Answer.Kind.FAILED, wrong.getMessage(), lines);
  }

  /** What came of a reading without the compiler; empty if the compiler has to take it. */
  private List<Made> made(Reading reading) {
    if (reading instanceof Reading.Direct direct) {
      return direct.made().stream()
          .map(
              made ->
                  new Made(
                      made.name(), made.java(), new Value(made.value(), made.type()), made.notes()))
          .toList();
    }
    return varying.made(reading.java()).stream().toList();
  }

  /** The first answer with what is said beside it. */
  private static List<Answer> beside(List<Answer> answers, List<String> notes) {
    if (notes.isEmpty() || answers.isEmpty() || answers.get(0).isError()) {
      return answers;
    }
    List<Answer> noted = new ArrayList<>(answers);
    Answer first = answers.get(0);
    String lines = notes.stream().map(note -> "\n  " + note).collect(joining());
    noted.set(0, new Answer(first.kind(), first.text() + lines, first.line()));
    return noted;
  }

  private List<Answer> compiled(String line) {
    List<Answer> answers = new ArrayList<>();
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
  private List<Answer> given(List<Made> made) {
    return made.stream().flatMap(each -> beside(given(each), each.notes()).stream()).toList();
  }

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
      List<Made> made = made(reader.again(definition.source()));
      if (made.isEmpty()) {
        return compiledAgain(definition, before);
      }
      keep(name, definition.source(), true, made.get(0).value(), 0);
      toldAnew(name);
      return again(Answer.of(name, made.get(0).value().object()), before);
    } catch (RefusedException | Unreadable refused) {
      return stayed(name, why(definition, false, refused.getMessage()));
    }
  }

  private Answer compiledAgain(Definition definition, String before) {
    String name = definition.name();
    for (SnippetEvent event : ran(definition.source()).events()) {
      if (event.causeSnippet() == null) {
        if (isFailed(event)) {
          String failed = failed(event).text();
          boolean isTaken = event.status() == Snippet.Status.VALID;
          repair(event);
          return stayed(
              name, isStopped.getAsBoolean() ? STOPPED : why(definition, isTaken, failed));
        }
        keep(name, definition.source(), true, heldBy(event), java.get().control().nanos());
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
        .map(read -> "%s is %s, a number without a unit".formatted(read, brief(read)))
        .map(reason -> new Stale(reason, false))
        .orElseGet(() -> Stale.failed(failed));
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
    Ran ran = ran(snippet);
    compiled.add(ran.source().strip());
    for (SnippetEvent event : ran.events()) {
      if (event.causeSnippet() == null) {
        answers.addAll(evaluated(event, ran.source()));
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
    String text = now.text().replaceFirst("\n|$", Matcher.quoteReplacement(was) + "$0");
    return new Answer(Answer.Kind.DEFINED, text.replaceAll("(?m)^", "  "));
  }

  /** What came of a snippet, and the snippet as it was mended to be compiled. */
  private record Ran(String source, List<SnippetEvent> events) {}

  /** Runs one snippet; an operator that does not fit is mended, and it is compiled again. */
  private Ran ran(String snippet) {
    String source = snippet;
    List<SnippetEvent> events = run(source);
    Optional<String> mended = mended(source, events);
    for (int times = 0; times < Mending.MOST_TIMES && mended.isPresent(); times++) {
      source = mended.get();
      java.get().takeWordsOf(source);
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
      return java.get().mended(source, last.snippet());
    } catch (Unreadable wrong) {
      repair(last);
      throw wrong;
    }
  }

  /** Runs one snippet as it is; what it mentions, the compiler has to know from now on. */
  private List<SnippetEvent> run(String source) {
    for (String word : Definitions.wordsIn(source)) {
      if (values.has(word) && !java.get().knows(word)) {
        java.get().declare(word, values.of(word));
      }
    }
    return java.get().ran(source);
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
        toldAnew(hanging.name());
      }
    }
    readBack(defined);
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
    Reading reading = reader.again(expression);
    return reading instanceof Reading.Direct direct
        ? direct.made().get(0).value()
        : apart(List.of(new Step(0, "", PlainLine.statement(reading.java()), false, null))).get(0);
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
