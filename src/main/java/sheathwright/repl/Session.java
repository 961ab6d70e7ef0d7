package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import sheathwright.figure.RefusedException;
import sheathwright.job.JobLines;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.Chunks.Chunk;
import sheathwright.repl.CommandWords.Command;
import sheathwright.repl.line.Holds;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reader.Around;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Journal;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Quoted;
import sheathwright.repl.memory.Values;
import sheathwright.repl.memory.Values.Stale;
import sheathwright.repl.shell.Kept;
import sheathwright.repl.shell.Lines;
import sheathwright.repl.show.Screen;

/**
 * One session of the language: Java lines, evaluated in order; a variable that is given a new value
 * carries along everything made from it. The compiler wakes when a line first needs it.
 */
public final class Session implements AutoCloseable {

  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

  private final Definitions definitions = new Definitions();
  private final Values values = new Values();
  private final Reader reader = new Reader(new Seen());
  private final Supplier<Screen> screen;
  private final Journal journal;
  private final Evaluation evaluation;
  private final Optional<Autosave> autosave;
  private List<String> saved = List.of();
  private volatile CompletableFuture<JavaShell> java;
  private volatile OptionalInt ended = OptionalInt.empty();
  private volatile boolean isStopped;

  /** A session with the trade's words in place. */
  public Session() {
    this(false, Optional.empty(), () -> Screen.PIPE);
  }

  /**
   * A session.
   *
   * @param isWaiting whether what takes long is carried along only when told to
   * @param autosave keeps the lines that made the session what it is
   * @param screen what answers are shown on
   */
  private Session(boolean isWaiting, Optional<Autosave> autosave, Supplier<Screen> screen) {
    this.autosave = autosave;
    this.screen = screen;
    journal = new Journal(lines -> autosave.ifPresent(keeper -> keeper.accept(lines)));
    evaluation =
        new Evaluation(
            this::java,
            this::isAwake,
            () -> isStopped,
            reader,
            definitions,
            values,
            journal,
            isWaiting);
  }

  /** A session for somebody who waits for each answer. */
  static Session atPrompt(Autosave autosave, Supplier<Screen> screen) {
    Session session = new Session(true, Optional.of(autosave), screen);
    session.wake(true);
    return session;
  }

  /** Wakes the compiler behind the user's back. */
  private void wake(boolean takesAllWords) {
    java =
        CompletableFuture.supplyAsync(
            () -> {
              JavaShell woken = new JavaShell(new OwnLines(), values::names);
              if (takesAllWords) {
                woken.takeAllWords();
              }
              return woken;
            });
  }

  private JavaShell java() {
    if (java == null) {
      wake(false);
    }
    return java.join();
  }

  /** Takes every word of the trade at once, so that all can be completed. */
  void takeAllWords() {
    java().takeAllWords();
  }

  /** Whether the text is whole lines, or needs more. */
  boolean isComplete(String text) {
    List<Chunk> chunks = Chunks.of(text.lines().toList(), this::isWhole);
    return chunks.isEmpty() || isWhole(chunks.get(chunks.size() - 1).text());
  }

  /** Whether the text is one whole line. */
  boolean isWhole(String text) {
    if (text.isBlank() || mustRunAlone(text) || PlainLine.is(text) || reader.isWhole(text)) {
      return true;
    }
    try {
      return switch (java().analysis().analyzeCompletion(reader.rewritten(text)).completeness()) {
        case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> false;
        case COMPLETE, COMPLETE_WITH_SEMI, EMPTY, UNKNOWN -> true;
      };
    } catch (StackOverflowError tooLong) {
      return true; // and is said to be when it is run
    }
  }

  /** Evaluates what was typed or pasted, line by line; stops at the first line that fails. */
  List<Answer> answers(String text) {
    isStopped = false;
    if (isAwake()) {
      java().control().goOn();
    }
    if (text.isBlank()) {
      return evaluation.refreshed();
    }
    List<Answer> answers = new ArrayList<>();
    List<String> lines =
        Chunks.of(text.lines().toList(), this::isWhole).stream().map(Chunk::text).toList();
    answers(
        lines,
        (line, answer) -> {
          answers.add(answer);
          return !answer.isError();
        });
    return answers;
  }

  /**
   * Evaluates whole lines in order, plain ones together.
   *
   * @param isToGoOn hears each answer with the number of its line, and says whether to go on
   * @return whether it went on to the end
   */
  boolean answers(List<String> lines, BiPredicate<Integer, Answer> isToGoOn) {
    return evaluation.answers(lines, this::mustRunAlone, this::alone, isToGoOn);
  }

  private boolean mustRunAlone(String line) {
    return Nesting.isTooDeep(line) || command(line).isPresent();
  }

  private Optional<Command> command(String line) {
    return CommandWords.in(line, definitions::has);
  }

  /** What is said to one line; empty if the compiler would have to take it and may not. */
  private Optional<List<Answer>> alone(String line, boolean mayCompile) {
    try {
      if (Nesting.isTooDeep(line)) {
        return failed(Nesting.complaint(line));
      }
      Optional<Command> command = command(line);
      if (command.isPresent()) {
        journal.begin(line);
        return Optional.of(List.of(command.get().answer(this)));
      }
      return evaluation.alone(line, mayCompile);
    } catch (RefusedException | ProblemsException refused) {
      return failed(refused.getMessage());
    } catch (OutOfMemoryError full) {
      return failed("it needs more memory than the program has; take less at once");
    } catch (StackOverflowError tooLong) {
      return failed(
          "the line is too long to be read; give a part a name of its own, and use the name");
    }
  }

  private static Optional<List<Answer>> failed(String why) {
    return Optional.of(List.of(new Answer(Answer.Kind.FAILED, why)));
  }

  /** Pages in the width of the screen as it is now. */
  Pages pages() {
    return new Pages(screen.get().columns());
  }

  /** What the variables hold, by name, in the order in which they were last given a value. */
  Map<String, Object> variables() {
    return evaluation.variables();
  }

  /** What an expression stands for; of a name, what it holds. */
  Object value(String expression) {
    return values.has(expression) ? values.of(expression).object() : evaluation.value(expression);
  }

  /** Every variable: its value, what it is made from, and why it is stale if it is. */
  Answer list() {
    List<String> rows = new ArrayList<>();
    for (String name : definitions.variables()) {
      String from =
          definitions.of(name).reads().stream()
              .filter(definitions::has)
              .sorted()
              .collect(joining(", "));
      rows.add(
          "%s = %s%s"
              .formatted(
                  name,
                  Shows.brief(values.of(name).object()),
                  from.isEmpty() ? "" : "   from " + from));
      values.stale(name).ifPresent(why -> rows.add("    stale: " + why.reason()));
    }
    return new Answer(
        Answer.Kind.SHOWN, rows.isEmpty() ? "there is no variable yet" : String.join("\n", rows));
  }

  /** Takes back what the last line did that changed anything. */
  Answer undone() {
    Journal.Entry last =
        journal.last().orElseThrow(() -> new RefusedException("there is nothing to undo"));
    last.before().forEach(evaluation::restore);
    last.made().forEach(made -> java().drop(made));
    List<String> rows = new ArrayList<>(List.of("undone: " + last.typed()));
    for (String name : last.before().keySet()) {
      rows.add(
          values.has(name)
              ? "  %s = %s".formatted(name, Shows.brief(values.of(name).object()))
              : "  %s is gone".formatted(name));
    }
    return new Answer(Answer.Kind.SHOWN, String.join("\n", rows));
  }

  /** Deletes a variable; what is made from it keeps its value. */
  Answer deleted(String name) {
    if (!NAME.matcher(name).matches() || !definitions.has(name)) {
      String known = String.join(", ", definitions.variables());
      throw new RefusedException(
          "there is no \"%s\" to delete; there %s"
              .formatted(name, known.isEmpty() ? "is no variable yet" : "are " + known));
    }
    List<String> dependents = definitions.dependents(name).stream().map(Definition::name).toList();
    evaluation.delete(name);
    Stale why = new Stale("made from %s, which is deleted".formatted(name), false);
    dependents.forEach(dependent -> evaluation.stayed(dependent, why));
    return new Answer(
        Answer.Kind.SHOWN,
        name
            + " is deleted"
            + (dependents.isEmpty()
                ? ""
                : "; made from it, and kept with the value it has: "
                    + String.join(", ", dependents)));
  }

  /** Writes the session, as a live workbook or as the lines that make it again. */
  Answer saved(String name, boolean mayReplace) {
    SavedFile file = SavedFile.named(name, mayReplace);
    Map<String, String> stale = new LinkedHashMap<>();
    definitions
        .variables()
        .forEach(each -> values.stale(each).ifPresent(why -> stale.put(each, why.reason())));
    String text =
        file.isSession()
            ? file.written(journal.lines())
            : file.written(new SavedThings(variables()), stale);
    saved = journal.lines();
    return new Answer(Answer.Kind.SHOWN, text);
  }

  /** Runs a file that makes a session again; without a name, the last session at this prompt. */
  Answer resumed(String name) throws IOException {
    Optional<Path> file =
        name.isEmpty() && autosave.isPresent()
            ? autosave.get().last()
            : Optional.of(Path.of(Quoted.text(name))).filter(Files::isRegularFile);
    List<String> lines =
        Files.readAllLines(
            file.orElseThrow(
                () ->
                    new RefusedException(
                        name.isEmpty()
                            ? "there is no session to bring back yet"
                            : "there is no file %s to bring a session back from".formatted(name))));
    List<Answer> answers = answers(String.join("\n", lines));
    Optional<Answer> failed = answers.stream().filter(Answer::isError).findFirst();
    return failed.orElseGet(this::list);
  }

  /** Takes what the tables of a job say as variables; undone as one line. */
  Answer takenJob(String folder) {
    List<String> lines = JobLines.of(Path.of(Quoted.text(folder)));
    List<Answer> failed = new ArrayList<>();
    journal.hold(
        () ->
            answers(
                lines,
                (line, answer) -> {
                  if (answer.isError()) {
                    failed.add(answer);
                  }
                  return failed.isEmpty();
                }));
    return failed.isEmpty()
        ? new Answer(
            Answer.Kind.DEFINED,
            "%d variables from %s; list tells them".formatted(lines.size(), folder))
        : failed.get(0);
  }

  /** Whether there is anything that would be lost without the file that is kept on the side. */
  boolean isUnsaved() {
    return !journal.lines().equals(saved);
  }

  /** The status with which a line wanted to end the program, if one did. */
  OptionalInt ended() {
    return ended;
  }

  /** The threads that lines have started and that still run, by name. */
  List<String> threadsLeft() {
    return isAwake() ? java().control().threadsLeft() : List.of();
  }

  /** What is said of threads that lines have started and that still run; empty if none does. */
  String threadsSaid() {
    List<String> left = threadsLeft();
    return left.isEmpty()
        ? ""
        : "(still running: %s; Ctrl-C ends it)".formatted(String.join(", ", left));
  }

  /** Stops what is being computed. */
  void stop() {
    isStopped = true;
    if (isAwake()) {
      java().control().stop();
    }
  }

  private boolean isAwake() {
    CompletableFuture<JavaShell> waking = java;
    return waking != null && waking.isDone();
  }

  SourceCodeAnalysis analysis() {
    return java().analysis();
  }

  @Override
  public void close() {
    if (java != null) {
      java().close();
    }
  }

  /** What the reader sees of this session. */
  private final class Seen implements Around {

    @Override
    public boolean has(String name) {
      return values.has(name);
    }

    @Override
    public Object value(String name) {
      return values.of(name).object();
    }

    @Override
    public boolean isOwn(String name) {
      return definitions.has(name) && !definitions.isVariable(name)
          || isAwake() && java().declaresType(name);
    }

    @Override
    public boolean isTyped(String name) {
      return definitions.isTyped(name);
    }

    @Override
    public List<Class<?>> words() {
      return List.of(FileWords.class, Holds.class);
    }
  }

  /** What lines reach while they run. */
  final class OwnLines implements Lines {

    @Override
    @SuppressWarnings("unchecked") // a line declares the type that the value was kept with
    public <T> T value(String name) {
      return (T) values.of(name).object();
    }

    @Override
    public void take(Kept<?> kept) {
      evaluation.take(kept);
    }

    @Override
    public void ended(int status) {
      ended = OptionalInt.of(status);
    }

    Session session() {
      return Session.this;
    }
  }
}
