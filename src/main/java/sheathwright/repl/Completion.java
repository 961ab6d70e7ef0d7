package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import sheathwright.figure.Shown;
import sheathwright.repl.tab.Suggestions;

/**
 * Tab in the terminal. What could come next is listed only where it fits the window, so that nobody
 * is asked whether to see hundreds of lines.
 */
final class Completion implements Completer {

  /** What every object can do, and no estimator wants. */
  private static final Pattern EVERY_OBJECT =
      Pattern.compile("(?:hashCode|getClass|notify|notifyAll|wait|equals)\\(");

  /** Rows for the line that is typed, what is said of it, and the prompt below. */
  private static final int ROWS_KEPT = 6;

  /** Of a window that does not say how high it is. */
  private static final int USUAL_ROWS = 24;

  /** Of a window that does not say how wide it is. */
  private static final int USUAL_COLUMNS = 80;

  private final CompletableFuture<Session> session;

  Completion(CompletableFuture<Session> session) {
    this.session = session;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    String text = line.line().substring(0, line.cursor());
    String before = line.word().substring(0, line.wordCursor());
    Map<String, Object> variables = session.join().variables();
    Suggestions next =
        Suggestions.after(
            text, variables, typed -> ExplainWords.offers(typed, variables.keySet()), this::java);
    String head = before.substring(0, Math.max(0, before.length() - next.prefix().length()));
    if (!next.said().isEmpty()) {
      int columns = reader.getTerminal().getSize().getColumns();
      reader.printAbove(fitted(next.said(), columns <= 0 ? USUAL_COLUMNS : columns));
    }
    int rows = reader.getTerminal().getSize().getRows();
    int most = (rows <= 0 ? USUAL_ROWS : rows) - ROWS_KEPT;
    if (next.offers().size() > most) {
      reader.printAbove(
          "%s words begin so; type one more letter of the one you mean"
              .formatted(next.offers().size()));
      return;
    }
    for (Suggestions.Offer offer : next.offers()) {
      String about = offer.about().isEmpty() ? null : offer.about();
      candidates.add(
          new Candidate(head + offer.text(), offer.text(), null, about, null, null, false));
    }
  }

  private static String fitted(String said, int columns) {
    return said.lines()
        .flatMap(line -> Shown.wrapped(line, columns, "", "    ").stream())
        .collect(joining("\n"));
  }

  /** The last word as the Java shell would complete it, or as a command. */
  private List<String> java(String text) {
    int[] anchor = new int[1];
    return withCommands(
        text,
        session.join().analysis().completionSuggestions(text, text.length(), anchor).stream()
            .map(suggestion -> suggestion.continuation())
            .filter(continuation -> !EVERY_OBJECT.matcher(continuation).lookingAt())
            .toList());
  }

  /** The same with the commands that a line could begin with and that are no words of Java. */
  static List<String> withCommands(String text, List<String> java) {
    Stream<String> commands =
        CommandWords.all().stream()
            .filter(word -> word.startsWith(text.strip()))
            .filter(word -> java.stream().noneMatch(each -> each.startsWith(word + "(")));
    return Stream.concat(commands, java.stream()).toList();
  }
}
