package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import sheathwright.job.table.Printable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;

/** Runs lines of the language that come from a file or a pipe. */
public final class Script {

  private static final Pattern CONTINUED = Pattern.compile("\\s*(?:\\.|(?:else|catch|finally)\\b)");

  private static CompletableFuture<Session> awake;

  private final String name;
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean showsDefinitions;

  private Script(String name, PrintWriter out, PrintWriter err, boolean showsDefinitions) {
    this.name = name;
    this.out = out;
    this.err = err;
    this.showsDefinitions = showsDefinitions;
  }

  /** Wakes the compiler early, while the command line is still being read. */
  public static synchronized void wake() {
    awake = CompletableFuture.supplyAsync(Session::new);
  }

  private static synchronized Session session() {
    Session session = awake == null ? new Session() : awake.join();
    awake = null;
    return session;
  }

  /**
   * Runs a file. Answers of bare expressions are shown, definitions are not.
   *
   * @param arguments stand in the script as {@code args}
   * @return whether every line ran
   */
  public static boolean run(Path file, List<String> arguments, PrintWriter out, PrintWriter err)
      throws IOException {
    try (Session session = session()) {
      List<String> lines = linesOf(file);
      if (lines.stream().anyMatch(line -> line.contains("args"))) {
        session.answers(arrayOf(arguments));
      }
      Script script = new Script(String.valueOf(file.getFileName()), out, err, false);
      return script.ran(lines, session);
    }
  }

  /** Runs what comes from a pipe, every answer shown. */
  public static boolean pipe(BufferedReader in, PrintWriter out, PrintWriter err) {
    try (Session session = session()) {
      return new Script("standard input", out, err, true).ran(in.lines().toList(), session);
    }
  }

  private boolean ran(List<String> lines, Session session) {
    List<Chunk> chunks = chunks(lines, session);
    boolean ran =
        session.answers(
            chunks.stream().map(Chunk::text).toList(),
            (chunk, answer) -> says(answer, chunks.get(chunk).line()));
    out.flush();
    return ran;
  }

  private boolean says(Answer answer, int line) {
    if (answer.isError()) {
      out.flush();
      String place = name + ":" + (line + answer.line());
      err.println(Printable.lines(place + ": " + answer.text()));
      return false;
    }
    if (!answer.text().isEmpty() && (showsDefinitions || answer.kind() != Answer.Kind.DEFINED)) {
      out.println(answer.text());
    }
    return true;
  }

  /** A whole line, which may have been written on several; where it begins. */
  private record Chunk(int line, String text) {}

  private static List<Chunk> chunks(List<String> lines, Session session) {
    List<Chunk> chunks = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    int first = 1;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      boolean isBlank = line.isBlank() || line.startsWith("#");
      if (text.length() == 0) {
        if (isBlank) {
          continue;
        }
        first = i + 1;
      }
      text.append(line).append('\n');
      if (session.isComplete(text.toString()) && !goesOn(lines, i + 1)) {
        chunks.add(new Chunk(first, text.toString()));
        text.setLength(0);
      }
    }
    if (text.length() > 0) {
      chunks.add(new Chunk(first, text.toString()));
    }
    return chunks;
  }

  /**
   * Whether the next line that holds anything begins with a dot: then it belongs to the one before.
   */
  private static boolean goesOn(List<String> lines, int next) {
    for (int i = next; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        return CONTINUED.matcher(lines.get(i)).lookingAt();
      }
    }
    return false;
  }

  private static String arrayOf(List<String> arguments) {
    return arguments.stream()
        .map(argument -> '"' + escaped(argument) + '"')
        .collect(joining(", ", "String[] args = {", "};"));
  }

  private static List<String> linesOf(Path file) throws IOException {
    try {
      String text = Files.readString(file);
      return (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
    } catch (CharacterCodingException foreign) {
      Problem problem =
          new Problem(file.toString(), 0, "", "it is not UTF-8 text; save it as UTF-8");
      throw new ProblemsException(List.of(problem));
    }
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace("\"", "\\\"")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }
}
