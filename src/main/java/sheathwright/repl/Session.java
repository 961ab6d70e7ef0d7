package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiPredicate;
import jdk.jshell.Diag;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.VarSnippet;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.Block.Step;
import sheathwright.repl.Definitions.Definition;
import sheathwright.repl.line.Holds;
import sheathwright.repl.line.Mending;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reader.Around;
import sheathwright.repl.line.Reading;
import sheathwright.repl.line.Unreadable;

/**
 * One session of the language: Java lines, evaluated in order; a variable that is given a new value
 * carries along everything made from it.
 */
public final class Session implements AutoCloseable {

  private final CompletableFuture<Vocabulary> vocabulary =
      CompletableFuture.supplyAsync(Vocabulary::new);

  private final LiveControl control = new LiveControl();
  private final JShell shell;
  private final SourceCodeAnalysis analysis;
  private final Definitions definitions = new Definitions();
  private final Complaints complaints;
  private final Map<String, String> shown = new LinkedHashMap<>();
  private final Held held = new Held();
  private final Set<String> compiled = new HashSet<>();
  private final Reader reader = new Reader(new Seen());

  /** A session with the trade's words in place. */
  public Session() {
    shell =
        JShell.builder()
            .executionEngine(control.provider(), Map.of())
            .compilerOptions("-classpath", System.getProperty("java.class.path"), "-Xlint:none")
            .build();
    analysis = shell.sourceCodeAnalysis();
    take(Vocabulary.AMOUNTS); // wakes the compiler while the vocabulary is gathered
    complaints = new Complaints(shell, this::takeAllWords, held::names);
    Words.in(this);
  }

  /** Takes every word of the trade at once, so that all can be completed. */
  void takeAllWords() {
    vocabulary.join().rest().forEach(this::take);
  }

  private void take(String imported) {
    shell.eval("import " + imported + ";");
  }

  /** Whether the text is a whole line, or needs more. */
  boolean isComplete(String text) {
    if (text.isBlank() || PlainLine.is(text) || reader.isWhole(text)) {
      return true;
    }
    return switch (analysis.analyzeCompletion(reader.rewritten(text)).completeness()) {
      case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> false;
      case COMPLETE, COMPLETE_WITH_SEMI, EMPTY, UNKNOWN -> true;
    };
  }

  /** Evaluates a whole line, which may hold several snippets; stops at the first that fails. */
  List<Answer> answers(String line) {
    return answers(line, true).orElseThrow();
  }

  /** The same; nothing if the compiler would have to take the line and may not. */
  private Optional<List<Answer>> answers(String line, boolean mayCompile) {
    try {
      Reading reading = reader.read(line);
      if (reading instanceof Reading.Direct direct) {
        return Optional.of(made(direct));
      }
      return mayCompile ? Optional.of(answers((Reading.Compiled) reading, line)) : Optional.empty();
    } catch (Unreadable wrong) {
      return Optional.of(List.of(failed(wrong.getMessage(), line, wrong.at())));
    } catch (RefusedException | ProblemsException refused) {
      return Optional.of(List.of(new Answer(Answer.Kind.FAILED, refused.getMessage())));
    }
  }

  private List<Answer> answers(Reading.Compiled reading, String line) {
    try {
      return noted(compiledAnswers(reading.java()), reading.notes());
    } catch (Unreadable wrong) {
      return List.of(failed(wrong.getMessage(), line, reading.places().typed(wrong.at())));
    }
  }

  private static Answer failed(String why, String line, int at) {
    int before =
        (int) line.substring(0, Math.min(at, line.length())).chars().filter(c -> c == '\n').count();
    return new Answer(Answer.Kind.FAILED, why, before);
  }

  /** The answers of a line that was evaluated from its tree. */
  private List<Answer> made(Reading.Direct direct) {
    List<Answer> answers = new ArrayList<>();
    for (Reading.Made made : direct.made()) {
      if (made.name().isEmpty()) {
        answers.addAll(noted(List.of(answer("", made.value())), made.notes()));
      } else {
        keep(made);
        answers.addAll(noted(List.of(answer(made.name(), made.value())), made.notes()));
        answers.addAll(carriedAlong(made.name(), made.java(), true));
      }
    }
    return answers;
  }

  /** A variable that was made without the compiler, which hears of it only if it has to. */
  private void keep(Reading.Made made) {
    held.put(made.name(), Kept.of(made.value(), made.type()));
    shown.put(made.name(), Shows.brief(made.value()));
    if (compiled.contains(made.name())) {
      declare(made.name());
    }
  }

  private void declare(String name) {
    held.open();
    shell.eval(held.declaration(name));
    held.release(name);
  }

  private static List<Answer> noted(List<Answer> answers, List<String> notes) {
    if (notes.isEmpty() || answers.isEmpty() || answers.get(0).isError()) {
      return answers;
    }
    List<Answer> noted = new ArrayList<>(answers);
    Answer first = answers.get(0);
    String lines = notes.stream().map(note -> "\n  " + note).collect(joining());
    noted.set(0, new Answer(first.kind(), first.text() + lines, first.line()));
    return noted;
  }

  private List<Answer> compiledAnswers(String line) {
    List<Answer> answers = new ArrayList<>();
    String rest = Exits.caught(line);
    vocabulary.join().newlyNeededBy(rest).forEach(this::take);
    if (PlainLine.is(rest)) {
      return evaluated(PlainLine.statement(definitions.declared(rest)));
    }
    while (!rest.isBlank()) {
      rest = definitions.declared(rest);
      CompletionInfo completion = analysis.analyzeCompletion(rest);
      String snippet = completion.source() == null ? rest : completion.source();
      rest = completion.source() == null ? "" : completion.remaining();
      answers.addAll(evaluated(snippet));
      if (!answers.isEmpty() && answers.get(answers.size() - 1).isError()) {
        return answers;
      }
    }
    return answers;
  }

  /** What a line of a block made. */
  Answer made(Step step, Kept<?> kept) {
    String before = shown.get(step.name());
    if (!step.name().isEmpty()) {
      held.put(step.name(), kept);
      shown.put(step.name(), Shows.brief(kept.value()));
    }
    Answer answer = answer(step.name(), kept.value());
    if (step.isCarried()) {
      return again(answer, step.name(), before);
    }
    if (!step.name().isEmpty()) {
      definitions.put(step.name(), step.source(), true);
    }
    return answer;
  }

  /** What is said of a line that is carried along and cannot be run. */
  Answer recomputed(Step step) {
    return recomputed(step.name(), step.source(), shown.get(step.name()));
  }

  Answer raised(JShellException raised) {
    return new Answer(Answer.Kind.FAILED, complaints.about(raised));
  }

  /**
   * Evaluates whole lines in order, plain ones together.
   *
   * @param isToGoOn hears each answer with the number of its line, and says whether to go on
   * @return whether it went on to the end
   */
  boolean answers(List<String> lines, BiPredicate<Integer, Answer> isToGoOn) {
    Set<Integer> alone = new HashSet<>();
    int next = 0;
    while (next < lines.size()) {
      Optional<List<Answer>> direct = answers(lines.get(next), false);
      Block block =
          direct.isPresent()
              ? Block.none(held)
              : Block.at(
                  next,
                  lines,
                  definitions,
                  held,
                  name -> held.has(name) || !compiled.contains(name),
                  line -> alone.contains(line) || !reader.isJavaAsTyped(lines.get(line)));
      if (!block.isEmpty()) {
        vocabulary.join().newlyNeededBy(block.code()).forEach(this::take);
        next = new BlockRun(this, shell, held, isToGoOn).next(block, alone);
      } else {
        String line = lines.get(next);
        for (Answer answer : direct.orElseGet(() -> answers(line))) {
          if (!isToGoOn.test(next, answer)) {
            return false;
          }
        }
        next++;
      }
    }
    return next == lines.size();
  }

  /** What the variables hold, by name, in the order in which they were last given a value. */
  Map<String, Object> variables() {
    Map<String, Object> values = new LinkedHashMap<>();
    for (String name : definitions.variables()) {
      values.put(name, value(name));
    }
    return values;
  }

  /** Stops what is being computed. */
  void stop() {
    shell.stop();
  }

  SourceCodeAnalysis analysis() {
    return analysis;
  }

  @Override
  public void close() {
    shell.close();
  }

  private List<Answer> evaluated(String snippet) {
    List<Answer> answers = new ArrayList<>();
    Ran ran = ran(snippet);
    for (SnippetEvent event : ran.events()) {
      if (event.causeSnippet() != null) {
        continue;
      }
      Answer answer = answer(event, ran.source());
      if (answer != null) {
        answers.add(answer);
      }
      if (answer == null || answer.kind() != Answer.Kind.FAILED) {
        answers.addAll(carriedAlong(event.snippet(), ran.source()));
      }
    }
    return answers;
  }

  private Answer answer(SnippetEvent event, String source) {
    if (event.exception() != null) {
      return raised(event.exception());
    }
    if (event.status() != Snippet.Status.VALID) {
      String why = complaints.about(event.snippet(), source);
      int line = complaints.line(event.snippet(), source);
      shell.drop(event.snippet());
      return new Answer(Answer.Kind.FAILED, why, line);
    }
    if (event.snippet() instanceof VarSnippet variable) {
      String name = variable.name();
      return answer(name.startsWith("$") ? "" : name, value(name));
    }
    if (event.snippet().kind() == Snippet.Kind.EXPRESSION && event.value() != null) {
      String name = ((ExpressionSnippet) event.snippet()).name();
      boolean isAssigned = event.snippet().subKind() == Snippet.SubKind.ASSIGNMENT_SUBKIND;
      return answer(isAssigned ? name : "", name == null ? event.value() : value(name));
    }
    return null;
  }

  /** What is said of a value; the name is empty if no variable holds it. */
  private static Answer answer(String name, Object value) {
    if (value instanceof Traced traced && Shows.isRefused(traced)) {
      String reason = traced.refusal().get().reason();
      return new Answer(
          Answer.Kind.REFUSED, name.isEmpty() ? reason : name + " has no value: " + reason);
    }
    return name.isEmpty()
        ? new Answer(Answer.Kind.SHOWN, Shows.expression(value))
        : new Answer(Answer.Kind.DEFINED, Shows.variable(name, value));
  }

  private List<Answer> carriedAlong(Snippet snippet, String source) {
    String name = definedBy(snippet);
    if (name.isEmpty() || name.startsWith("$")) {
      return List.of();
    }
    return carriedAlong(name, source, !(snippet instanceof MethodSnippet));
  }

  private List<Answer> carriedAlong(String name, String source, boolean isVariable) {
    Map<String, String> before = texts(definitions.dependents(name));
    definitions.put(name, source, isVariable);
    List<Answer> answers = new ArrayList<>();
    for (Definition dependent : definitions.dependents(name)) {
      answers.add(recomputed(dependent.name(), dependent.source(), before.get(dependent.name())));
    }
    return answers;
  }

  private static String definedBy(Snippet snippet) {
    if (snippet instanceof VarSnippet variable) {
      return variable.name();
    }
    if (snippet instanceof MethodSnippet method) {
      return method.name();
    }
    boolean isAssigned = snippet.subKind() == Snippet.SubKind.ASSIGNMENT_SUBKIND;
    return isAssigned ? ((ExpressionSnippet) snippet).name() : "";
  }

  private Map<String, String> texts(List<Definition> dependents) {
    Map<String, String> texts = new LinkedHashMap<>();
    dependents.forEach(each -> texts.put(each.name(), shown.get(each.name())));
    return texts;
  }

  private Answer recomputed(String name, String source, String before) {
    try {
      if (reader.again(source) instanceof Reading.Direct direct) {
        direct.made().forEach(this::keep);
        return again(answer(name, direct.made().get(0).value()), name, before);
      }
    } catch (Unreadable | RefusedException refused) {
      shown.put(name, "no value");
      return again(new Answer(Answer.Kind.FAILED, refused.getMessage()), name, before);
    }
    Ran ran = ran(source);
    for (SnippetEvent event : ran.events()) {
      if (event.causeSnippet() == null) {
        Answer now = answer(event, ran.source());
        if (now != null && now.kind() == Answer.Kind.FAILED) {
          shown.put(name, "no value");
        }
        return again(now, name, before);
      }
    }
    return new Answer(Answer.Kind.DEFINED, "");
  }

  private static Answer again(Answer now, String name, String before) {
    String text = now == null ? "" : now.text();
    boolean failed = now != null && now.kind() == Answer.Kind.FAILED;
    String was = before == null ? "" : " (was " + before + ")";
    return new Answer(
        Answer.Kind.DEFINED, "  " + (failed ? name + " has no value: " + text : text) + was);
  }

  /** What came of a snippet, and the snippet as it was mended to be compiled. */
  private record Ran(String source, List<SnippetEvent> events) {}

  /** Evaluates one snippet; an operator that does not fit is mended, and it is compiled again. */
  private Ran ran(String snippet) {
    String source = snippet;
    List<SnippetEvent> events = compiled(source);
    for (int times = 0; times < Mending.MOST_TIMES && !events.isEmpty(); times++) {
      SnippetEvent event = events.get(events.size() - 1);
      if (event.status() != Snippet.Status.REJECTED) {
        break;
      }
      Optional<String> mended = mended(source, event.snippet());
      if (mended.isEmpty()) {
        break;
      }
      shell.drop(event.snippet());
      source = mended.get();
      vocabulary.join().newlyNeededBy(source).forEach(this::take);
      events = compiled(source);
    }
    return new Ran(source, events);
  }

  private Optional<String> mended(String source, Snippet snippet) {
    return shell
        .diagnostics(snippet)
        .filter(Diag::isError)
        .findFirst()
        .flatMap(
            diag ->
                Mending.mended(
                    source,
                    new Mending.Fault(
                        diag.getMessage(Locale.ROOT),
                        (int) diag.getPosition(),
                        (int) diag.getStartPosition(),
                        (int) diag.getEndPosition())));
  }

  /** Evaluates one snippet; what it mentions, the compiler has to know from now on. */
  private List<SnippetEvent> compiled(String snippet) {
    for (String word : Definitions.wordsIn(snippet)) {
      compiled.add(word);
      if (held.has(word)) {
        declare(word);
      }
    }
    return shell.eval(snippet);
  }

  private Object value(String name) {
    Object value = held.has(name) ? held.valueOf(name) : compiledValue(name);
    shown.put(name, Shows.brief(value));
    return value;
  }

  private Object compiledValue(String name) {
    return shell
        .variables()
        .filter(variable -> variable.name().equals(name))
        .reduce((older, newer) -> newer)
        .map(
            variable -> {
              shell.varValue(variable);
              return control.last(name);
            })
        .orElse(null);
  }

  /** What the reader sees of this session. */
  private final class Seen implements Around {

    @Override
    public boolean has(String name) {
      return definitions.isVariable(name);
    }

    @Override
    public Object value(String name) {
      return Session.this.value(name);
    }

    @Override
    public boolean isOwn(String name) {
      return definitions.has(name) && !definitions.isVariable(name)
          || shell.types().anyMatch(type -> type.name().equals(name));
    }

    @Override
    public boolean isTyped(String name) {
      return definitions.isTyped(name);
    }

    @Override
    public List<Class<?>> words() {
      return List.of(Words.class, Holds.class);
    }
  }
}
