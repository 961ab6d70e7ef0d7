package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.VarSnippet;
import sheathwright.repl.Snippets.Ran;
import sheathwright.repl.Uncompiled.Made;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reading;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Block;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.memory.VaryCall;

/** Evaluates lines, each as it is read or by way of the compiler, and says what came of them. */
final class Evaluation {

  private final Reader reader;
  private final Holdings holdings;
  private final Snippets snippets;
  private final Uncompiled uncompiled;
  private final Followers followers;
  private final List<String> compiled = new ArrayList<>();

  Evaluation(
      Reader reader,
      Holdings holdings,
      Snippets snippets,
      Uncompiled uncompiled,
      Followers followers) {
    this.reader = reader;
    this.holdings = holdings;
    this.snippets = snippets;
    this.uncompiled = uncompiled;
    this.followers = followers;
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
        ended();
        if (!goesOn) {
          return false;
        }
        next++;
      } else {
        snippets.java().takeWordsOf(planned.code());
        BlockRun block = new BlockRun(holdings, snippets, followers, planned, lines, isToGoOn);
        snippets.tell(block::take);
        next = ran(block, single);
        ended();
      }
    }
    return next == lines.size();
  }

  /** The line that ran last has ended, unless it was stopped. */
  private void ended() {
    if (!snippets.runner().isStopped()) {
      holdings.journal().end();
    }
  }

  private Block planned(
      int first, List<String> lines, Predicate<String> mustRunAlone, Set<Integer> single) {
    return Block.at(
        first,
        lines,
        followers.ahead(),
        holdings.values(),
        name -> snippets.java().knows(name),
        line -> isPlain(line) && !mustRunAlone.test(line),
        single::contains);
  }

  /** Whether a line can be compiled with others as it was typed. */
  private boolean isPlain(String line) {
    return PlainLine.is(line) && !VaryCall.is(line) && reader.isJavaAsTyped(line);
  }

  private static int ran(BlockRun block, Set<Integer> single) {
    try {
      return block.next(single);
    } catch (StackOverflowError tooLong) {
      return block.allAlone(single);
    }
  }

  /**
   * Evaluates one line by itself, which may hold several snippets; stops at one that fails. Nothing
   * if the compiler would have to take it and may not.
   */
  Optional<List<Answer>> alone(String line, boolean mayCompile) {
    try {
      Reading reading = reader.read(line);
      List<Made> made = uncompiled.made(reading);
      if (made.isEmpty() && !mayCompile) {
        return Optional.empty();
      }
      holdings.journal().begin(line);
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
    snippets.java().takeWordsOf(line);
    if (PlainLine.is(line)) {
      return evaluated(PlainLine.statement(holdings.definitions().declared(line)));
    }
    String rest = line;
    while (!rest.isBlank()) {
      rest = holdings.definitions().declared(rest);
      CompletionInfo completion = snippets.java().analysis().analyzeCompletion(rest);
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
      return List.of(holdings.noted(Answer.of("", object), made.source()));
    }
    holdings.keep(made.name(), made.source(), false, made.value(), snippets.runner().nanos());
    holdings.toldAnew(made.name());
    List<Answer> answers = new ArrayList<>();
    answers.add(holdings.noted(Answer.of(made.name(), object), made.source()));
    answers.addAll(followers.of(made.name()));
    return answers;
  }

  private List<Answer> evaluated(String snippet) {
    List<Answer> answers = new ArrayList<>();
    Ran ran = snippets.ran(snippet);
    compiled.add(ran.source().strip());
    for (SnippetEvent event : ran.events()) {
      if (event.causeSnippet() == null) {
        answers.addAll(evaluated(event, ran.source()));
      }
    }
    return answers;
  }

  private List<Answer> evaluated(SnippetEvent event, String source) {
    if (snippets.isFailed(event)) {
      Answer failed = snippets.failed(event);
      snippets.repair(event);
      return List.of(failed);
    }
    List<Answer> answers = new ArrayList<>();
    String name = Snippets.definedBy(event.snippet());
    if (event.snippet() instanceof MethodSnippet) {
      holdings.define(name, source);
    } else if (!name.isEmpty()) {
      Value value = snippets.heldBy(event);
      holdings.keep(name, source, false, value, snippets.runner().nanos());
      answers.add(holdings.noted(Answer.of(name, value.object()), source));
    } else if (event.snippet() instanceof VarSnippet || hasValue(event)) {
      Object value =
          event.snippet() instanceof VarSnippet ? snippets.heldBy(event).object() : named(event);
      answers.add(holdings.noted(Answer.of("", value), source));
    } else if (event.snippet().kind().isPersistent()) {
      holdings.journal().add(event.snippet());
    }
    if (!name.isEmpty()) {
      answers.addAll(followers.of(name));
    }
    return answers;
  }

  private static boolean hasValue(SnippetEvent event) {
    return event.snippet().kind() == Snippet.Kind.EXPRESSION && event.value() != null;
  }

  /** What an expression that is only a name stands for. */
  private Object named(SnippetEvent event) {
    String name = ((ExpressionSnippet) event.snippet()).name();
    Values values = holdings.values();
    return values.has(name) ? values.of(name).object() : uncompiled.value(name);
  }
}
