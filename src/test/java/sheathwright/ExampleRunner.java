package sheathwright;

import static java.util.stream.Collectors.joining;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.execution.LocalExecutionControlProvider;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;

/**
 * Runs examples as a reader would type them, {@code expression // answer}, and compares what is
 * printed with the answer that stands there. What one example defines, the next one knows.
 */
public final class ExampleRunner implements AutoCloseable {

  private static final String ANSWER = " // ";

  private final JShell shell;

  /** A runner in which amounts, every function and every word can be named at once. */
  public ExampleRunner() {
    shell = JShell.builder().executionEngine(new LocalExecutionControlProvider(), Map.of()).build();
    shell.addToClasspath(System.getProperty("java.class.path"));
    vocabulary().forEach(line -> run(line + ";"));
  }

  /** Whether a line states an answer. */
  public static boolean statesAnAnswer(String line) {
    return line.contains(ANSWER) && !line.strip().startsWith("//");
  }

  /**
   * Runs lines in their order.
   *
   * @param lines with an answer or without one; a statement may run over several lines
   * @return one complaint for each line that fails or prints something else
   */
  public List<String> complaints(List<String> lines) {
    List<String> complaints = new ArrayList<>();
    StringBuilder statement = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      statement.append(code(line)).append('\n');
      boolean goesOn = i + 1 < lines.size() && lines.get(i + 1).strip().startsWith(".");
      if (goesOn || !statesAnAnswer(line) && isUnfinished(statement.toString())) {
        continue;
      }
      String printed = run(statement.toString().strip());
      if (printed.startsWith("failed: ") || statesAnAnswer(line) && !printed.equals(answer(line))) {
        complaints.add("%s%n  printed: %s".formatted(line.strip(), printed));
      }
      statement.setLength(0);
    }
    if (!statement.toString().isBlank()) {
      complaints.add("unfinished: " + statement.toString().strip());
    }
    return complaints;
  }

  @Override
  public void close() {
    shell.close();
  }

  private static String code(String line) {
    if (line.strip().startsWith("//")) {
      return "";
    }
    return statesAnAnswer(line) ? line.substring(0, line.indexOf(ANSWER)) : line;
  }

  private static String answer(String line) {
    return line.substring(line.indexOf(ANSWER) + ANSWER.length()).strip();
  }

  private boolean isUnfinished(String statement) {
    Completeness completeness =
        shell.sourceCodeAnalysis().analyzeCompletion(statement).completeness();
    return completeness == Completeness.DEFINITELY_INCOMPLETE
        || completeness == Completeness.CONSIDERED_INCOMPLETE
        || completeness == Completeness.EMPTY;
  }

  private String run(String statement) {
    String printed = "";
    for (SnippetEvent event : shell.eval(statement)) {
      if (event.exception() != null) {
        return "failed: " + told(event.exception());
      }
      if (event.status() == Snippet.Status.REJECTED) {
        return "failed: "
            + shell
                .diagnostics(event.snippet())
                .map(diagnostic -> diagnostic.getMessage(Locale.ROOT))
                .collect(joining("; "));
      }
      if (event.causeSnippet() == null && event.value() != null) {
        printed = event.value();
      }
    }
    return printed;
  }

  private static String told(JShellException exception) {
    return exception instanceof EvalException thrown
        ? thrown.getExceptionClassName() + ": " + thrown.getMessage()
        : exception.toString();
  }

  private static Set<String> vocabulary() {
    Set<String> imports = new TreeSet<>();
    imports.add("import sheathwright.figure.*");
    imports.add("import static sheathwright.figure.Amounts.*");
    for (Card card : Catalog.shipped().cards()) {
      Class<?> room = card.method().getDeclaringClass();
      imports.add("import " + room.getPackageName() + ".*");
      imports.add("import static " + room.getCanonicalName() + ".*");
      for (Argument argument : card.arguments()) {
        for (Class<? extends Record> thing : argument.things()) {
          imports.add("import " + thing.getPackageName() + ".*");
          for (Field constant : thing.getFields()) {
            imports.add("import static " + thing.getCanonicalName() + "." + constant.getName());
          }
        }
      }
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null) {
          imports.add("import " + parameter.options().getPackageName() + ".*");
          imports.add("import static " + parameter.options().getCanonicalName() + ".*");
        }
      }
    }
    return imports;
  }
}
