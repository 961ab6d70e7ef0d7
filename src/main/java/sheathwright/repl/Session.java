package sheathwright.repl;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.Chunks.Chunk;
import sheathwright.repl.CommandWords.Command;
import sheathwright.repl.line.Holds;
import sheathwright.repl.line.Questions;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reader.Around;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Journal;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Values;
import sheathwright.repl.shell.Kept;
import sheathwright.repl.shell.LineRunner;
import sheathwright.repl.shell.LineRunner.StoppedLine;
import sheathwright.repl.shell.Lines;
import sheathwright.repl.show.Screen;
import sheathwright.repl.show.Sentences;
import sheathwright.repl.show.ShellCommand;
import sheathwright.repl.tab.Form;
import sheathwright.repl.whatif.Scenarios;
import sheathwright.repl.whatif.Seeking;

/**
 * One session of the language: Java lines, evaluated in order; a variable that is given a new value
 * carries along everything made from it. The compiler wakes when a line first needs it.
 */
public final class Session implements AutoCloseable {

  private static final Pattern NAME = Pattern.compile("\\s*([A-Za-z]\\w*)\\s*+;?\\s*+");

  private final LineRunner runner = new LineRunner();
  private final Supplier<Screen> screen;
  private final Compiler compiler;
  private final Holdings holdings;
  private final Snippets snippets;
  private final Uncompiled uncompiled;
  private final Followers followers;
  private final Around seen = new Seen();
  private final Reader reader = new Reader(seen);
  private final Evaluation evaluation;
  private final Upkeep upkeep;
  private final Seeking seeking;
  private final Scenarios scenarios;
  private final Set<String> unfinished = new HashSet<>();
  private volatile OptionalInt ended = OptionalInt.empty();

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
    this.screen = screen;
    Values values = new Values();
    compiler = new Compiler(new OwnLines(), values::names, runner);
    holdings =
        new Holdings(
            new Definitions(),
            values,
            new Journal(lines -> autosave.ifPresent(keeper -> keeper.accept(lines))),
            compiler);
    snippets = new Snippets(holdings, runner);
    Apart apart = new Apart(holdings.definitions(), seen, snippets::apart);
    uncompiled = new Uncompiled(reader, holdings, snippets, apart);
    seeking = new Seeking(holdings.definitions(), holdings.values(), apart, this::value);
    followers = new Followers(holdings, snippets, uncompiled, runner, isWaiting);
    scenarios = new Scenarios(holdings.definitions(), holdings.values(), holdings.journal(), apart);
    evaluation = new Evaluation(reader, holdings, snippets, uncompiled, followers);
    upkeep = new Upkeep(this, holdings, autosave);
  }

  /** A session for somebody who waits for each answer. */
  static Session atPrompt(Autosave autosave, Supplier<Screen> screen) {
    Session session = new Session(true, Optional.of(autosave), screen);
    session.compiler.wake(true);
    return session;
  }

  /** Takes every word of the trade at once, so that all can be completed. */
  void takeAllWords() {
    compiler.awake().takeAllWords();
  }

  /** Whether the text is whole lines, or needs more. */
  boolean isComplete(String text) {
    List<Chunk> chunks = Chunks.of(text.lines().toList(), this::isKnownWhole);
    return chunks.isEmpty() || isKnownWhole(chunks.get(chunks.size() - 1).text());
  }

  /** A text that grows by a line at a time is read anew with each: what is unfinished is kept. */
  private boolean isKnownWhole(String text) {
    if (unfinished.contains(text)) {
      return false;
    }
    boolean isWhole = isWhole(text);
    if (!isWhole) {
      unfinished.add(text);
    }
    return isWhole;
  }

  /** Whether the text is one whole line. */
  boolean isWhole(String text) {
    try {
      if (text.isBlank()
          || mustRunAlone(text)
          || PlainLine.is(text)
          || reader.isWhole(text)
          || sentence(text).isPresent()) {
        return true;
      }
      return switch (compiler
          .awake()
          .analysis()
          .analyzeCompletion(reader.rewritten(text))
          .completeness()) {
        case DEFINITELY_INCOMPLETE, CONSIDERED_INCOMPLETE -> false;
        case COMPLETE, COMPLETE_WITH_SEMI, EMPTY, UNKNOWN -> true;
      };
    } catch (StackOverflowError | InternalError givenUp) {
      return true; // too long or past the compiler: said so when it is run
    }
  }

  /** Evaluates what was typed or pasted, line by line; stops at the first line that fails. */
  List<Answer> answers(String text) {
    runner.goOn();
    unfinished.clear();
    if (text.isBlank()) {
      return followers.refreshed();
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
    return Outsize.is(line) || command(line).isPresent() || named(line).isPresent();
  }

  /** The function whose name alone a line is, if it is one; a name of the user's own wins. */
  private Optional<Card> named(String line) {
    Matcher name = NAME.matcher(line);
    return name.matches() && !holdings.definitions().has(name.group(1))
        ? Catalog.shipped().called(name.group(1))
        : Optional.empty();
  }

  /** The form of the function whose name alone was typed; nothing for any other line. */
  Optional<Form> form(String line) {
    return named(line).map(card -> new Form(new Questions(card, seen), screen.get().columns()));
  }

  private Optional<Command> command(String line) {
    return CommandWords.in(line, holdings.definitions()::has);
  }

  /** What is said to one line; empty if the compiler would have to take it and may not. */
  private Optional<List<Answer>> alone(String line, boolean mayCompile) {
    try {
      if (Outsize.is(line)) {
        return failed(Outsize.complaint(line));
      }
      Optional<Command> command = command(line);
      if (command.isPresent()) {
        holdings.journal().begin(line);
        return Optional.of(List.of(command.get().answer(this)));
      }
      Optional<Card> named = named(line);
      if (named.isPresent()) {
        String said = pages().line(named.get()).text();
        return Optional.of(List.of(new Answer(Answer.Kind.SHOWN, said)));
      }
      Optional<String> sentence = mayCompile ? sentence(line) : Optional.empty();
      return sentence.isPresent() ? failed(sentence.get()) : evaluation.alone(line, mayCompile);
    } catch (RefusedException | ProblemsException refused) {
      return failed(refused.getMessage());
    } catch (Unreadable wrong) {
      return failed(wrong.getMessage());
    } catch (StoppedLine stopped) {
      return failed(Snippets.STOPPED);
    } catch (InternalError compiler) {
      return failed("Java's own compiler gives up over this line; type it otherwise");
    } catch (OutOfMemoryError full) {
      return failed("it needs more memory than the program has; take less at once");
    } catch (StackOverflowError tooLong) {
      return failed(
          "the line is too long to be read; give a part a name of its own, and use the name");
    }
  }

  /** What is said of a line that is typed as to a person, if it is one. */
  private static Optional<String> sentence(String line) {
    return ShellCommand.said(line, CommandWords.all())
        .or(() -> Sentences.said(line, CommandWords.all(), Help::knows));
  }

  private static Optional<List<Answer>> failed(String why) {
    return Optional.of(List.of(new Answer(Answer.Kind.FAILED, why)));
  }

  /** What is done with what it holds. */
  Upkeep upkeep() {
    return upkeep;
  }

  /** Finds the typed value that gives an answer. */
  Seeking seeking() {
    return seeking;
  }

  /** Named sets of changes. */
  Scenarios scenarios() {
    return scenarios;
  }

  /** Pages in the width of the screen as it is now. */
  Pages pages() {
    return new Pages(screen.get().columns());
  }

  /** Whether somebody sits in front of its answers. */
  boolean isWatched() {
    return screen.get().rows() > 0;
  }

  /** What the variables hold, by name, in the order in which they were last given a value. */
  Map<String, Object> variables() {
    return holdings.variables();
  }

  /** What an expression stands for; of a name, what it holds. */
  Object value(String expression) {
    return holdings.values().has(expression)
        ? holdings.values().of(expression).object()
        : uncompiled.value(expression);
  }

  /** The status with which a line wanted to end the program, if one did. */
  OptionalInt ended() {
    return ended;
  }

  /** The threads that lines have started and that still run, by name. */
  List<String> threadsLeft() {
    return runner.threadsLeft();
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
    runner.stop();
  }

  SourceCodeAnalysis analysis() {
    return compiler.awake().analysis();
  }

  @Override
  public void close() {
    compiler.close();
    runner.close();
  }

  /** What the reader sees of this session. */
  private final class Seen implements Around {

    @Override
    public boolean has(String name) {
      return holdings.values().has(name);
    }

    @Override
    public Object value(String name) {
      return holdings.values().of(name).object();
    }

    @Override
    public boolean isOwn(String name) {
      return holdings.definitions().has(name) && !holdings.definitions().isVariable(name)
          || compiler.isAwake() && compiler.awake().declaresType(name);
    }

    @Override
    public boolean isTyped(String name) {
      return holdings.definitions().isTyped(name);
    }

    @Override
    public List<Class<?>> words() {
      return List.of(FileWords.class, Holds.class);
    }

    @Override
    public <T> T ran(Supplier<T> reading) {
      return runner.plainly(reading);
    }
  }

  /** What lines reach while they run. */
  final class OwnLines implements Lines {

    @Override
    @SuppressWarnings("unchecked") // a line declares the type that the value was kept with
    public <T> T value(String name) {
      return (T) holdings.values().of(name).object();
    }

    @Override
    public void take(Kept<?> kept) {
      snippets.take(kept);
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
