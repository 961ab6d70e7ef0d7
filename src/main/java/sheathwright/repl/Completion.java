package sheathwright.repl;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;

/** What could come next, with each function's parameters and first sentence. */
final class Completion implements Completer {

  private final CompletableFuture<Session> session;

  Completion(CompletableFuture<Session> session) {
    this.session = session;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    String text = line.line().substring(0, line.cursor());
    Card inside = callAround(text);
    int[] anchor = new int[1];
    String before = line.word().substring(0, line.wordCursor());
    session.join().analysis().completionSuggestions(text, text.length(), anchor).stream()
        .map(suggestion -> suggestion.continuation())
        .distinct()
        .forEach(
            continuation -> {
              String typed = text.substring(anchor[0]);
              String head = before.substring(0, Math.max(0, before.length() - typed.length()));
              Card card = cardOf(continuation);
              String about = card == null ? null : card.text().summary();
              candidates.add(
                  new Candidate(head + continuation, continuation, null, about, null, null, false));
            });
    if (inside != null) {
      parameters(inside, argumentsBefore(text)).forEach(candidates::add);
    }
  }

  /** The parameter that is due: its options if it has any, else a reminder of its name and unit. */
  private static List<Candidate> parameters(Card card, int index) {
    if (index >= card.parameters().size()) {
      return List.of();
    }
    Parameter parameter = card.parameters().get(index);
    return List.of(
        new Candidate(
            "", parameter.javaName() + ": " + parameter.text(), null, null, null, null, false));
  }

  private static Card cardOf(String continuation) {
    String name = continuation.replaceAll("\\(.*", "");
    return Catalog.shipped().cards().stream()
        .filter(card -> card.method().getName().equals(name))
        .findFirst()
        .orElse(null);
  }

  /** The function whose brackets the cursor stands in. */
  private static Card callAround(String text) {
    int depth = 0;
    for (int i = text.length() - 1; i >= 0; i--) {
      char c = text.charAt(i);
      if (c == ')') {
        depth++;
      } else if (c == '(' && depth-- == 0) {
        return cardOf(text.substring(0, i).replaceAll(".*\\W", ""));
      }
    }
    return null;
  }

  private static int argumentsBefore(String text) {
    int depth = 0;
    int commas = 0;
    for (int i = text.length() - 1; i >= 0; i--) {
      char c = text.charAt(i);
      if (c == ')') {
        depth++;
      } else if (c == '(' && depth-- == 0) {
        return commas;
      } else if (c == ',' && depth == 0) {
        commas++;
      }
    }
    return commas;
  }
}
