package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import sheathwright.job.table.Printable;
import sheathwright.job.table.Problem;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.Chunks.Chunk;

/** Runs lines of the language that come from a file or a pipe. */
public final class Script {

  /** The status of a script with a line that was refused. */
  public static final int REFUSED = 3;

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

  /**
   * Runs a file. Answers of bare expressions are shown, definitions are not.
   *
   * @param arguments stand in the script as {@code args}
   * @return 0 if every line ran, the status that a line ended the script with, or {@link #REFUSED}
   */
  public static int run(Path file, List<String> arguments, PrintWriter out, PrintWriter err)
      throws IOException {
    return run(String.valueOf(file.getFileName()), textOf(file), arguments, out, err);
  }

  /**
   * Runs a text as a file of this name.
   *
   * @param arguments stand in the script as {@code args}
   * @return 0 if every line ran, the status that a line ended the script with, or {@link #REFUSED}
   */
  public static int run(
      String name, String text, List<String> arguments, PrintWriter out, PrintWriter err) {
    try (Session session = new Session()) {
      List<String> lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).lines().toList();
      if (lines.stream().anyMatch(line -> line.contains("args"))) {
        session.answers(arrayOf(arguments));
      }
      Script script = new Script(name, out, err, false);
      return script.ran(lines, session);
    }
  }

  /** Runs what comes from a pipe, every answer shown; the status as that of a file. */
  public static int pipe(BufferedReader in, PrintWriter out, PrintWriter err) {
    try (Session session = new Session()) {
      return new Script("standard input", out, err, true).ran(in.lines().toList(), session);
    }
  }

  private int ran(List<String> lines, Session session) {
    List<Chunk> chunks = Chunks.of(lines, session::isWhole);
    boolean ran =
        session.answers(
            chunks.stream().map(Chunk::text).toList(),
            (chunk, answer) -> session.ended().isEmpty() && says(answer, chunks.get(chunk).line()));
    out.flush();
    List<String> left = session.threadsLeft();
    if (!left.isEmpty()) {
      err.println(
          Printable.lines(
              "%s: what it started was still running and is ended: %s"
                  .formatted(name, String.join(", ", left))));
    }
    return session.ended().orElse(ran ? 0 : REFUSED);
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

  private static String arrayOf(List<String> arguments) {
    return arguments.stream()
        .map(argument -> '"' + escaped(argument) + '"')
        .collect(joining(", ", "String[] args = {", "};"));
  }

  private static String textOf(Path file) throws IOException {
    try {
      return Files.readString(file);
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
