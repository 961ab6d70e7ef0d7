package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.repl.line.Reader;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.memory.Quoted;
import sheathwright.repl.memory.VaryCall;

/**
 * Words that are followed by what they are about, without parentheses: {@code show order}. They are
 * answered by the session itself; no compiler is asked.
 */
final class CommandWords {

  private static final Pattern SHAPE =
      Pattern.compile("(?s)\\s*([A-Za-z]\\w*)(?:\\s+([A-Za-z_\"#\\d].*?)|)\\s*+;?\\s*+");
  private static final Pattern ASKED = Pattern.compile("^\\s*\\?");
  private static final Pattern CALL =
      Pattern.compile("\\s*([A-Za-z]\\w*)\\(\\s*(\\w*|\"[^\"\\\\]*\")\\s*\\)\\s*+;?\\s*+");
  private static final Pattern ASKED_OF_ANYTHING =
      Pattern.compile("(?s)\\s*(show|print)\\((.*)\\)()\\s*+;?\\s*+");
  private static final Pattern EXPLAINED =
      Pattern.compile(
          "(?s)\\s*(explain|explainAll) ?\\((.*)\\)(" + ExplainWords.HOW_SAID + ")\\s*+;?\\s*+");
  private static final String SHOW_JAVA = "show java"; // which the reader answers
  private static final String SEEK = "seek"; // whose argument looks like an assignment
  private static final Pattern NOT_ITS_ARGUMENT = Pattern.compile("\\w+\\s*=(?!=).*");

  private static final Map<String, BiFunction<Session, String, Answer>> BY_WORD =
      Map.ofEntries(
          Map.entry("help", CommandWords::help),
          Map.entry("show", (session, about) -> page(session.pages().show(thing(session, about)))),
          Map.entry("explain", CommandWords::explain),
          Map.entry("explainAll", (session, about) -> explain(session, "all " + about)),
          Map.entry("print", CommandWords::print),
          Map.entry("list", (session, about) -> wrapped(session, session.upkeep().list())),
          Map.entry("undo", (session, about) -> wrapped(session, session.upkeep().undone())),
          Map.entry("delete", (session, name) -> wrapped(session, session.upkeep().deleted(name))),
          Map.entry("save", (session, file) -> saved(session, file, false)),
          Map.entry("saveOver", (session, file) -> saved(session, file, true)),
          Map.entry("job", CommandWords::job),
          Map.entry("scenario", (session, about) -> session.upkeep().scenario(about)),
          Map.entry(SEEK, (session, about) -> page(session.seeking().said(about))),
          Map.entry("resume", CommandWords::resume));

  private CommandWords() {}

  /**
   * A word and what it is about.
   *
   * @param about may be empty
   */
  record Command(String word, String about) {

    Answer answer(Session session) {
      return BY_WORD.get(word).apply(session, about);
    }
  }

  /**
   * The command that a line is, if it is one.
   *
   * @param isDefined whether the user has given a name a meaning, which then wins for the bare word
   */
  static Optional<Command> in(String typed, Predicate<String> isDefined) {
    String line = ASKED.matcher(typed).replaceFirst("help ");
    Matcher matcher = SHAPE.matcher(line);
    String further = "";
    if (!matcher.matches()) {
      matcher = ofAnything(line).orElseGet(() -> CALL.matcher(line));
      if (!matcher.matches() || isDefined.test(matcher.group(1))) {
        return Optional.empty();
      }
      further = matcher.groupCount() > 2 ? matcher.group(3) : "";
    }
    String about = matcher.group(2) == null ? "" : (matcher.group(2) + further).strip();
    boolean isOne =
        BY_WORD.containsKey(matcher.group(1))
            && !(about.isEmpty() && isDefined.test(matcher.group(1)))
            && !(SHOW_JAVA.equals(matcher.group(1) + " " + about) && !isDefined.test("java"))
            && !isOpen(about)
            && (matcher.group(1).equals(SEEK) || !NOT_ITS_ARGUMENT.matcher(about).matches());
    return isOne ? Optional.of(new Command(matcher.group(1), about)) : Optional.empty();
  }

  /** A call with one thing in its brackets, whatever that is; of explain, and how. */
  private static Optional<Matcher> ofAnything(String line) {
    return Stream.of(EXPLAINED, ASKED_OF_ANYTHING)
        .map(pattern -> pattern.matcher(line))
        .filter(Matcher::matches)
        .filter(call -> PlainLine.closes(call.group(2)))
        .filter(call -> VaryCall.parts(ExplainWords.thing(call.group(2))).size() == 1)
        .findFirst();
  }

  /** Whether a bracket is still to be closed, on a line to come. */
  private static boolean isOpen(String about) {
    return about.chars().filter(c -> c == '(').count()
        > about.chars().filter(c -> c == ')').count();
  }

  private static Answer help(Session session, String about) {
    Pages pages = session.pages();
    return page(about.isEmpty() ? pages.help() : pages.help(Quoted.text(about)));
  }

  private static Answer explain(Session session, String words) {
    ExplainWords asked = ExplainWords.of(words);
    asked.check(session.variables()::containsKey);
    Object result = thing(session, asked.about());
    String typed = Reader.saidName(asked.about());
    return page(
        asked.isAll()
            ? session.pages().explainAll(result, typed, asked.manner())
            : session.pages().explain(result, typed, asked.depth(), asked.manner()));
  }

  private static Answer print(Session session, String about) {
    boolean isText = about.startsWith("\"") && about.endsWith("\"");
    return new Answer(
        Answer.Kind.SHOWN, isText ? Quoted.text(about) : Shows.text(thing(session, about)));
  }

  private static Answer saved(Session session, String file, boolean mayReplace) {
    Answer said = session.upkeep().saved(Quoted.text(file), mayReplace);
    return session.isWatched() ? wrapped(session, said) : said; // a program may read the path
  }

  private static Answer wrapped(Session session, Answer answer) {
    return answer.wrapped(session.pages().columns());
  }

  private static Answer job(Session session, String folder) {
    if (folder.isEmpty()) {
      throw new RefusedException("job takes the folder of a job's tables: job \"quince-hollow\"");
    }
    return session.upkeep().takenJob(folder);
  }

  private static Answer resume(Session session, String file) {
    try {
      return wrapped(session, session.upkeep().resumed(file));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Object thing(Session session, String about) {
    if (about.isEmpty()) {
      String names =
          session.variables().keySet().stream()
              .map(Reader::saidName)
              .limit(4)
              .collect(joining(", "));
      throw new RefusedException(
          "say what: " + (names.isEmpty() ? "there is no variable yet" : "one of " + names));
    }
    return session.value(Reader.variable(about));
  }

  private static Answer page(Object page) {
    return new Answer(Answer.Kind.SHOWN, String.valueOf(page));
  }

  /** The words themselves. */
  static List<String> all() {
    return BY_WORD.keySet().stream().sorted().toList();
  }
}
