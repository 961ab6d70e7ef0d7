package sheathwright.repl;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
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
import sheathwright.repl.show.Keyboard;
import sheathwright.repl.show.Pager;
import sheathwright.repl.show.Screen;
import sheathwright.repl.tab.Form;

/** The prompt in a terminal. It is drawn at once; the compiler wakes behind it. */
public final class Prompt {

  private static final String PROMPT = "> ";
  private static final String CONTINUED = ". ";

  private final Session session;

  private final Autosave autosave;

  private Prompt(Session session, Autosave autosave) {
    this.session = session;
    this.autosave = autosave;
  }

  /** Holds a session in the terminal until the user leaves it. */
  public static void open(Path home) throws IOException {
    Path sessions = Autosave.folder(System.getenv(), home);
    Autosave autosave = new Autosave(sessions);
    try (Terminal terminal = quiet().build();
        Session session = Session.atPrompt(autosave, () -> screen(terminal))) {
      new Prompt(session, autosave).held(terminal, Autosave.history(sessions, home));
    }
  }

  /** A terminal that is asked nothing: its answer would swallow what was typed meanwhile. */
  private static TerminalBuilder quiet() {
    return TerminalBuilder.builder().system(true).dumb(true).graphemeCluster(false);
  }

  private void held(Terminal terminal, Path history) {
    LineReader reader =
        plain(terminal)
            .parser(new WholeLines())
            .completer(new Completion(CompletableFuture.completedFuture(session)))
            .variable(LineReader.HISTORY_FILE, history)
            .variable(LineReader.SECONDARY_PROMPT_PATTERN, CONTINUED)
            .variable(LineReader.INDENTATION, 2)
            .build();
    LineReader asking = plain(terminal).build();
    PrintWriter out = terminal.writer();
    Pager pager = new Pager(() -> screen(terminal), out, () -> new Keyboard(terminal));
    out.println(
        """
        Sheathwright. help tells what can be typed, exit leaves.
        Planning help: local code decides.""");
    terminal.handle(Terminal.Signal.INT, signal -> session.stop());
    PrintStream before = System.out;
    Ceiling ceiling = new Ceiling(before);
    System.setOut(new PrintStream(ceiling, true, StandardCharsets.UTF_8));
    boolean isLeaving = false;
    while (!isLeaving) {
      try {
        String line = reader.readLine(PROMPT);
        Optional<Form> form = session.form(line);
        if (List.of("exit", "quit").contains(line.strip())) {
          isLeaving = mayLeave(asking);
        } else if (form.isPresent()) {
          Optional<String> call = form.get().filled(each -> answer(asking, each), pager::print);
          call.ifPresent(
              typed -> {
                pager.print(PROMPT + typed);
                reader.getHistory().add(typed);
                answer(typed, ceiling, pager);
              });
          pager.print(call.isEmpty() ? "(left)" : "");
        } else {
          answer(line, ceiling, pager);
        }
      } catch (UserInterruptException interrupted) {
        out.println("(exit leaves)");
      } catch (EndOfFileException end) {
        isLeaving = true;
      }
    }
    System.setOut(before);
  }

  /** A reader of lines as they are typed, in which no key but those of its own means anything. */
  private static LineReaderBuilder plain(Terminal terminal) {
    return LineReaderBuilder.builder()
        .terminal(terminal)
        .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true);
  }

  /** What is typed behind a question of a form; nothing where it is left. */
  private static Optional<String> answer(LineReader asking, String question) {
    try {
      return Optional.of(asking.readLine(question));
    } catch (UserInterruptException | EndOfFileException left) {
      return Optional.empty();
    }
  }

  private static Screen screen(Terminal terminal) {
    return Screen.of(
        terminal.getSize().getColumns(),
        terminal.getSize().getRows(),
        terminal.getType(),
        System.getenv());
  }

  private void answer(String line, Ceiling ceiling, Pager pager) {
    List<Answer> answers = session.answers(line);
    int width = session.pages().columns();
    String[] said =
        Stream.of(
                Stream.of(ceiling.cut()),
                answers.stream()
                    .map(
                        answer ->
                            answer.kind() == Answer.Kind.SHOWN ? answer : answer.wrapped(width))
                    .map(Answer::text),
                Stream.of(session.threadsSaid(), autosave.trouble()))
            .flatMap(each -> each)
            .toArray(String[]::new);
    pager.print(said);
  }

  private boolean mayLeave(LineReader asking) {
    if (!session.upkeep().isUnsaved()) {
      return true;
    }
    String said =
        asking.readLine(
            "Not saved; save \"name.xlsx\" keeps it, resume brings it back. Leave? y/n ");
    return said.strip().toLowerCase(Locale.ROOT).startsWith("y");
  }

  /** Reads on while a line is not a whole one. */
  private final class WholeLines implements Parser {

    private final DefaultParser words = new DefaultParser();

    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
      boolean isAccepted = context == ParseContext.ACCEPT_LINE;
      if (isAccepted && !session.isComplete(line)) {
        throw new EOFError(-1, cursor, "the line goes on");
      }
      return words.parse(line, cursor, isAccepted ? ParseContext.UNSPECIFIED : context);
    }
  }
}
