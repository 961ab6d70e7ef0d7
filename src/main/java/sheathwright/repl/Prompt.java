package sheathwright.repl;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jline.reader.EOFError;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.DefaultParser;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** The prompt in a terminal. It is drawn at once; the compiler wakes behind it. */
public final class Prompt {

  private static final String PROMPT = "> ";
  private static final String CONTINUED = ". ";

  private final CompletableFuture<Session> session = CompletableFuture.supplyAsync(Prompt::awake);

  private Prompt() {}

  private static Session awake() {
    return Session.atPrompt(lines -> {});
  }

  /** Holds a session in the terminal until the user leaves it. */
  public static void open(Path history) throws IOException {
    try (Terminal terminal = TerminalBuilder.builder().system(true).dumb(true).build()) {
      new Prompt().held(terminal, history);
    }
  }

  private void held(Terminal terminal, Path history) {
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser(new WholeLines())
            .completer(new Completion(session))
            .variable(LineReader.HISTORY_FILE, history)
            .variable(LineReader.SECONDARY_PROMPT_PATTERN, CONTINUED)
            .variable(LineReader.INDENTATION, 2)
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .build();
    PrintWriter out = terminal.writer();
    out.println(
        "Sheathwright. help() tells what can be typed, exit leaves. Planning help: local code decides.");
    terminal.handle(
        Terminal.Signal.INT,
        signal -> {
          session.join().stop();
          out.println("(stopped)");
        });
    while (true) {
      try {
        String line = reader.readLine(PROMPT);
        if (List.of("exit", "quit").contains(line.strip())) {
          break;
        }
        for (Answer answer : session.join().answers(line)) {
          if (!answer.text().isEmpty()) {
            out.println(answer.text());
          }
        }
        out.flush();
      } catch (UserInterruptException interrupted) {
        out.println("(exit leaves)");
      } catch (EndOfFileException end) {
        break;
      }
    }
    session.join().close();
  }

  /** Reads on while a line is not a whole one. */
  private final class WholeLines implements Parser {

    private final DefaultParser words = new DefaultParser();

    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
      boolean isAccepted = context == ParseContext.ACCEPT_LINE;
      if (isAccepted && !line.strip().equals("exit") && !session.join().isComplete(line)) {
        throw new EOFError(-1, cursor, "the line goes on");
      }
      return words.parse(line, cursor, isAccepted ? ParseContext.UNSPECIFIED : context);
    }
  }
}
