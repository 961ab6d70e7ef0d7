package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.EvalException;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.RefusedException;
import sheathwright.job.table.ProblemsException;
import sheathwright.repl.line.UnknownUnit;
import sheathwright.repl.shell.Exits;
import sheathwright.repl.show.Hints;

/**
 * What the prompt says when a line cannot be taken: what was given, what is allowed, and something
 * right to type.
 */
final class Complaints {

  /** What Java throws is never what an estimator meant. */
  private static final Pattern THROWN = Pattern.compile("\\w+(?:Exception|Error)");

  private static final Pattern SYMBOL =
      Pattern.compile("symbol:\\s+(?:variable|method|class) (\\w+)");
  private static final Pattern METHOD =
      Pattern.compile(
          "(?:method (\\w+) in class|suitable method found for (\\w+)\\((.*?)\\)(?:\\n|$))");
  private static final Pattern FOUND = Pattern.compile("found:\\s+(.*)");
  private static final Pattern QUALIFIED = Pattern.compile("\\b(?:[a-z]\\w*\\.)+([A-Z])");
  private static final Pattern FIGURE =
      Pattern.compile("(?:Figure|OneOf|Choice)<(?:Quantity\\.)?([^<>]*)>");

  /** A name that is missing in what stands before the dot, and not in the session. */
  private static final Pattern MEMBER =
      Pattern.compile("location:\\s+(?:class|interface|variable \\w+ of type) (?!REPL)[A-Za-z]");

  private static final List<String> UNITS =
      List.of(
          "in", "ft", "sqft", "psf", "psi", "pcf", "lb", "mph", "pct", "pitch", "number", "usd",
          "hours", "nails", "sheets", "pieces");

  private static final Pattern INSIDES = Pattern.compile("REPL\\.\\$JShell\\$\\w+\\.");

  private final JShell shell;
  private final Runnable takeAllWords;
  private final Supplier<Set<String>> held;

  /**
   * Complaints of a shell.
   *
   * @param takeAllWords brings in every word, so that the nearest can be named
   * @param held the variables that the shell does not know
   */
  Complaints(JShell shell, Runnable takeAllWords, Supplier<Set<String>> held) {
    this.shell = shell;
    this.held = held;
    this.takeAllWords = takeAllWords;
  }

  /** Of something that was raised while a line ran. */
  String about(JShellException raised) {
    if (raised instanceof EvalException thrown) {
      String type = thrown.getExceptionClassName();
      boolean isOurs =
          type.equals(RefusedException.class.getName())
              || type.equals(ProblemsException.class.getName())
              || Exits.isEnding(type);
      if (type.equals(OutOfMemoryError.class.getName())) {
        return "it needs more memory than the program has; take less at once";
      }
      if (type.equals(StackOverflowError.class.getName())) {
        return "it calls itself without end";
      }
      String name = type.substring(type.lastIndexOf('.') + 1);
      return isOurs
          ? thrown.getMessage()
          : Hints.raised(name, INSIDES.matcher(String.valueOf(thrown.getMessage())).replaceAll(""));
    }
    return "it uses something that is not defined";
  }

  /** Of a line that is not Java, or not ours. */
  String about(Snippet snippet, String source) {
    return shell
        .diagnostics(snippet)
        .filter(Diag::isError)
        .findFirst()
        .map(diag -> about(diag, source))
        .orElseGet(() -> unresolved(snippet, source));
  }

  /** On which line of the source it went wrong, counted from 0. */
  int line(Snippet snippet, String source) {
    long position =
        shell
            .diagnostics(snippet)
            .filter(Diag::isError)
            .mapToLong(Diag::getPosition)
            .findFirst()
            .orElse(0);
    int end = (int) Math.max(0, Math.min(position, source.length()));
    return (int) source.substring(0, end).chars().filter(c -> c == '\n').count();
  }

  private String unresolved(Snippet snippet, String source) {
    if (snippet instanceof DeclarationSnippet declaration) {
      return shell
          .unresolvedDependencies(declaration)
          .map(name -> name.replaceAll("^\\w+ ", "").replaceAll("\\(.*", ""))
          .map(this::unknown)
          .collect(joining("; "));
    }
    return "this is not a line that can be run: " + source.strip();
  }

  private String unknown(String name) {
    boolean isFunction =
        Catalog.shipped().cards().stream()
            .anyMatch(card -> List.of(card.call(), card.name()).contains(name));
    return isFunction
        ? "%s is a function and needs brackets with what it takes; %s alone on a line asks for it"
            .formatted(name, name)
        : "there is no \"%s\"; %s".formatted(name, nearest(name));
  }

  /**
   * The function that nobody knows where an unknown name is that of its argument: the compiler
   * complains of the argument alone.
   */
  private static Optional<String> calledWith(String argument, String source) {
    Matcher call =
        Pattern.compile(
                "(?<![\\w.])(\\w+)\\((?:[^()]|\\([^()]*\\))*\\b%s\\s*=(?!=)".formatted(argument))
            .matcher(source);
    return call.find() && Catalog.shipped().called(call.group(1)).isEmpty()
        ? Optional.of(call.group(1))
        : Optional.empty();
  }

  private String about(Diag diag, String source) {
    String message = diag.getMessage(Locale.ROOT);
    Matcher symbol = SYMBOL.matcher(message);
    if (symbol.find()) {
      if (MEMBER.matcher(message).find()) {
        return "there is no \"%s\" behind this dot; Tab lists what there is"
            .formatted(symbol.group(1));
      }
      Optional<String> function = calledWith(symbol.group(1), source);
      if (function.isPresent()) {
        return unknown(function.get());
      }
      if (isNumberCall(symbol.group(1), source)) {
        return "there is no unit or function \"%s\"; the nearest is %s; numbers are said with %s"
            .formatted(symbol.group(1), nearestUnit(symbol.group(1)), String.join(", ", UNITS));
      }
      return unknown(symbol.group(1));
    }
    Matcher method = METHOD.matcher(message);
    if (method.find()) {
      return method.group(1) == null
          ? wrongCall(method.group(2), method.group(3), message)
          : wrongCall(method.group(1), found(message), message);
    }
    if (message.startsWith("illegal character: '\\u201")) {
      return "a quote stands alone; a text stands between two, as in \"roof\"";
    }
    Optional<String> unit = UnknownUnit.in(source);
    if (message.endsWith("expected") && unit.isPresent()) {
      return noUnit(unit.get());
    }
    if (message.startsWith("reached end of file")) {
      return "the line is not finished: an unmatched bracket or quote";
    }
    if (message.startsWith("incompatible types")) {
      return calledIn(source)
          .map(card -> plain(message) + ";\n" + usage(card))
          .or(
              () ->
                  DeckWords.calledIn(source)
                      .map(typed -> plain(message) + ";\nfor instance " + typed))
          .orElse(plain(message));
    }
    return plain(message);
  }

  private static String noUnit(String word) {
    if (UNITS.contains(word)) {
      return "%s stands before its number, which is in brackets: %s(10)".formatted(word, word);
    }
    return "there is no unit \"%s\"%s; numbers are said with %s"
        .formatted(
            word,
            UnknownUnit.nearest(word).map("; the nearest is "::concat).orElse(""),
            String.join(", ", UNITS));
  }

  /** Whether a name is called with nothing but a number, as a unit is. */
  private static boolean isNumberCall(String name, String source) {
    return Pattern.compile("\\b" + name + "\\(\\s*-?[\\d.]+\\s*\\)").matcher(source).find();
  }

  private static String nearestUnit(String wanted) {
    String folded = wanted.toLowerCase(Locale.ROOT);
    return UNITS.stream()
        .min(Comparator.comparingInt(unit -> Catalog.distance(folded, unit)))
        .orElseThrow();
  }

  private static Optional<Card> calledIn(String source) {
    return Catalog.shipped().cards().stream()
        .filter(card -> source.contains(card.method().getName() + "("))
        .findFirst();
  }

  private static String found(String message) {
    Matcher found = FOUND.matcher(message);
    return found.find() ? found.group(1) : "";
  }

  private static String wrongCall(String name, String given, String message) {
    return Catalog.shipped().cards().stream()
        .filter(card -> card.method().getName().equals(name))
        .findFirst()
        .map(card -> wrongCall(card, plain(given)))
        .or(
            () ->
                DeckWords.calledIn(name + "(")
                    .map(
                        typed ->
                            "%s was given (%s);\nfor instance %s"
                                .formatted(
                                    name, Hints.kinds(plain(given).replace(",", ", ")), typed)))
        .or(() -> UNITS.contains(name) ? Optional.of(wrongUnit(name, given)) : Optional.empty())
        .orElse(plain(message));
  }

  private static String wrongUnit(String name, String given) {
    return "%s was given (%s);\nit takes one number, for instance %s(2)"
        .formatted(name, Hints.kinds(plain(given).replace(",", ", ")), name);
  }

  private static String wrongCall(Card card, String given) {
    return "%s was given (%s);\n%s"
        .formatted(
            card.method().getName(),
            given.equals("no arguments") ? "" : Hints.kinds(given.replace(",", ", ")),
            usage(card));
  }

  private static String usage(Card card) {
    return "%s takes %s;\nfor instance %s"
        .formatted(
            card.method().getName(),
            card.arguments().stream().map(Complaints::said).collect(joining(", ", "(", ")")),
            card.text().examples().get(0).replaceAll(" // .*", ""));
  }

  private static String said(Argument argument) {
    if (argument instanceof Argument.Thing thing) {
      return thing.type().getSimpleName()
          + thing.parameters().stream()
              .map(Parameter::column)
              .collect(joining(", ", " " + thing.javaName() + " (", ")"));
    }
    Parameter parameter = argument.parameters().get(0);
    return parameter.javaName()
        + (parameter.options() == null
            ? parameter.unit().symbol().isEmpty() ? "" : " (" + parameter.unit() + ")"
            : " " + String.join("|", parameter.spoken()));
  }

  private String nearest(String wanted) {
    takeAllWords.run();
    Stream<String> suggested =
        shell.sourceCodeAnalysis().completionSuggestions("", 0, new int[1]).stream()
            .map(Suggestion::continuation)
            .map(word -> word.replaceAll("\\(.*", "").strip());
    Stream<String> known =
        Stream.concat(
            suggested.filter(word -> !THROWN.matcher(word).matches()), held.get().stream());
    List<String> words = known.filter(word -> word.length() > 1).distinct().toList();
    String folded = wanted.toLowerCase(Locale.ROOT);
    ToIntFunction<String> distance =
        word -> Catalog.distance(folded, word.toLowerCase(Locale.ROOT));
    List<String> best =
        words.stream()
            .filter(word -> distance.applyAsInt(word) <= wanted.length() / 2) // else by chance
            .sorted(Comparator.comparingInt(distance))
            .limit(3)
            .toList();
    List<String> close =
        best.stream().filter(word -> distance.applyAsInt(word) <= 1 + wanted.length() / 4).toList();
    if (best.isEmpty()) {
      return Help.knows(wanted)
          ? "help %s finds what speaks of it".formatted(wanted)
          : "help tells what can be typed";
    }
    List<String> told = close.isEmpty() ? best : close;
    return (told.size() == 1 ? "the nearest is " : "the nearest are ") + String.join(", ", told);
  }

  private static String plain(String message) {
    String bare = QUALIFIED.matcher(message).replaceAll("$1");
    String before;
    do {
      before = bare;
      bare = FIGURE.matcher(bare).replaceAll("$1");
    } while (!bare.equals(before));
    return Hints.compiled(
        bare.replaceAll(" +", " ")
            .lines()
            .map(String::strip)
            .filter(line -> !line.isEmpty())
            .collect(joining("; ")));
  }
}
