package sheathwright.repl;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import sheathwright.repl.line.Mending;
import sheathwright.repl.memory.Values.Value;
import sheathwright.repl.shell.LineRunner;
import sheathwright.repl.shell.Lines;
import sheathwright.repl.shell.LiveControl;
import sheathwright.repl.shell.OwnClasses;

/**
 * The compiler behind a session: the JDK's shell with the trade's words in place. It knows only the
 * variables that its lines have mentioned, because it reads each of them again for every line.
 */
final class JavaShell implements AutoCloseable {

  private final CompletableFuture<Vocabulary> vocabulary =
      CompletableFuture.supplyAsync(Vocabulary::new);

  /** An import of neither Java nor ours. */
  private static final Pattern LIBRARY =
      Pattern.compile("^\\s*import\\s+(?:static\\s+)?(?!javax?\\.|sheathwright\\.)");

  private final Map<String, VarSnippet> known = new HashMap<>();
  private final LiveControl control;
  private final OwnClasses ownClasses = new OwnClasses();
  private final JShell shell;
  private final SourceCodeAnalysis analysis;
  private final Complaints complaints;
  private boolean seesLibraries;

  /**
   * A shell whose lines reach a session.
   *
   * @param names the session's variables
   * @param runner runs them
   */
  JavaShell(Lines lines, Supplier<Set<String>> names, LineRunner runner) {
    control = new LiveControl(lines, runner);
    shell =
        JShell.builder()
            .executionEngine(control.provider(), Map.of())
            .compilerOptions("-Xlint:none")
            .fileManager(ownClasses::alone)
            .build();
    analysis = shell.sourceCodeAnalysis();
    take(Vocabulary.AMOUNTS); // wakes the compiler while the vocabulary is gathered
    complaints = new Complaints(shell, this::takeAllWords, names);
  }

  /** Takes every word of the trade at once, so that all can be completed. */
  void takeAllWords() {
    vocabulary.join().rest().forEach(this::take);
  }

  /** Takes the words of the trade that a line uses. */
  void takeWordsOf(String line) {
    vocabulary.join().newlyNeededBy(line).forEach(this::take);
  }

  private void take(String imported) {
    shell.eval("import " + imported + ";");
  }

  SourceCodeAnalysis analysis() {
    return analysis;
  }

  Complaints complaints() {
    return complaints;
  }

  List<SnippetEvent> ran(String source) {
    if (!seesLibraries && LIBRARY.matcher(source).find()) {
      seesLibraries = true;
      shell.addToClasspath(System.getProperty("java.class.path"));
    }
    return shell.eval(source);
  }

  void drop(Snippet snippet) {
    shell.drop(snippet);
  }

  /** A snippet that was not taken, with what is wrong in it mended, if that can be. */
  Optional<String> mended(String source, Snippet rejected) {
    Optional<Diag> wrong = shell.diagnostics(rejected).filter(Diag::isError).findFirst();
    Optional<String> mended =
        wrong.flatMap(
            diag ->
                Mending.mended(
                    source,
                    new Mending.Fault(
                        diag.getMessage(Locale.ROOT),
                        (int) diag.getPosition(),
                        (int) diag.getStartPosition(),
                        (int) diag.getEndPosition())));
    if (mended.isPresent()) {
      shell.drop(rejected);
    }
    return mended;
  }

  /** Whether a line has declared a type of this name. */
  boolean declaresType(String name) {
    return shell.types().anyMatch(type -> type.name().equals(name));
  }

  JShell shell() {
    return shell;
  }

  boolean knows(String name) {
    return known.containsKey(name);
  }

  Set<String> known() {
    return Set.copyOf(known.keySet());
  }

  /** Tells the compiler of a variable and what it holds. */
  void declare(String name, Value value) {
    for (SnippetEvent event : shell.eval(value.declaration(name))) {
      if (event.causeSnippet() == null && event.snippet() instanceof VarSnippet variable) {
        known.put(name, variable);
      }
    }
  }

  /** What a line has declared. */
  void add(VarSnippet variable) {
    known.put(variable.name(), variable);
  }

  /** The compiler need not know a variable any more. */
  void forget(String name) {
    VarSnippet variable = known.remove(name);
    if (variable != null && shell.status(variable).isActive()) {
      shell.drop(variable);
    }
  }

  /** Takes a method of the user's away. */
  void dropMethod(String name) {
    shell.methods().filter(method -> method.name().equals(name)).forEach(shell::drop);
  }

  /** What a variable that the compiler knows holds now. */
  Value valueOf(String name) {
    VarSnippet variable = known.get(name);
    shell.varValue(variable);
    return new Value(control.valueOf(name), variable.typeName());
  }

  @Override
  public void close() {
    shell.close();
    ownClasses.close();
  }
}
