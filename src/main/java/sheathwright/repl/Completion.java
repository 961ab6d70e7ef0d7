package sheathwright.repl;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Pattern;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;

/** What could come next, with each function's parameters and first sentence. */
final class Completion implements Completer {

  /** What every object can do, and no estimator wants. */
  private static final Pattern EVERY_OBJECT =
      Pattern.compile("(?:hashCode|getClass|notify|notifyAll|wait|equals)\\(");

  private final CompletableFuture<Session> session;

  Completion(CompletableFuture<Session> session) {
    this.session = session;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    String text = line.line().substring(0, line.cursor());
    String before = line.word().substring(0, line.wordCursor());
    Card inside = callAround(text);
    boolean nothingTyped =
        text.isEmpty() || !Character.isJavaIdentifierPart(text.charAt(text.length() - 1));
    if (inside != null && nothingTyped) {
      tellParameter(reader, inside, argumentsBefore(text), before, candidates);
      return;
    }
    if (text.isBlank()) {
      offerFunctions(candidates);
      return;
    }
    int[] anchor = new int[1];
    session.join().analysis().completionSuggestions(text, text.length(), anchor).stream()
        .map(suggestion -> suggestion.continuation())
        .filter(continuation -> !EVERY_OBJECT.matcher(continuation).lookingAt())
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
  }

  private static void offerFunctions(List<Candidate> candidates) {
    for (Card card : Catalog.shipped().cards()) {
      String call = card.method().getName() + "(";
      candidates.add(new Candidate(call, call, null, card.text().summary(), null, null, false));
    }
    for (String word : List.of("help(", "explain(", "show(", "save(", "exit")) {
      candidates.add(new Candidate(word, word, null, null, null, null, false));
    }
  }

  /**
   * Says above the line which parameter is due, and offers its options and the session's own
   * variables.
   */
  private void tellParameter(
      LineReader reader, Card card, int index, String before, List<Candidate> candidates) {
    if (index >= card.arguments().size()) {
      return;
    }
    Argument due = card.arguments().get(index);
    reader.printAbove("  " + due.javaName() + ": " + due.text());
    List<String> offers = new ArrayList<>();
    if (due instanceof Argument.Plain word && word.parameter().options() != null) {
      for (Enum<?> option : word.parameter().options().getEnumConstants()) {
        offers.add(option.name());
      }
    }
    offers.addAll(session.join().variables().keySet());
    offers.forEach(
        offer ->
            candidates.add(new Candidate(before + offer, offer, null, null, null, null, false)));
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
