package sheathwright.repl.show;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheathwright.catalog.Nearest;

/**
 * What is typed as one would say it to a person: no Java, and nothing of the small language. What
 * could have been meant is said, with a line that can be typed.
 */
public final class Sentences {

  /** How a line of Java begins that has words side by side. */
  private static final Set<String> JAVA =
      Set.of(
          "abstract",
          "assert",
          "boolean",
          "break",
          "byte",
          "char",
          "class",
          "continue",
          "do",
          "double",
          "else",
          "enum",
          "final",
          "float",
          "for",
          "if",
          "import",
          "int",
          "interface",
          "long",
          "new",
          "package",
          "private",
          "protected",
          "public",
          "record",
          "return",
          "short",
          "static",
          "switch",
          "synchronized",
          "throw",
          "try",
          "var",
          "void",
          "while");

  /** One line of the table: how a line looks, and what is said of it. */
  private record Look(Pattern line, Function<MatchResult, String> said) {}

  private static final String NUMBER = "\\d[\\d./]*(?:[ -]\\d[\\d/]*)*";
  private static final List<Look> LOOKS =
      List.of(
          look(
              "([^(\"]*?)(\\d{1,3}(?:,\\d{3})+)(?!\\d)([^(\"]*)",
              found ->
                  "%s has a comma; write %s"
                      .formatted(
                          found.group(2),
                          (found.group(1) + found.group(2).replace(",", "") + found.group(3))
                              .strip())),
          look(
              "((?:[^\"]*[=(,])? *)(" + NUMBER + ") ?(ft|in)? [xX×] (" + NUMBER + ") ?(ft|in)\\s*",
              found ->
                  "times is written *: %s%s %s * %s %s"
                      .formatted(
                          found.group(1),
                          found.group(2),
                          found.group(3) == null ? found.group(5) : found.group(3),
                          found.group(4),
                          found.group(5))),
          look(
              "([^\"]*?)(\\d+) ?(?:ft|feet) (\\d[\\d/ -]*?) ?(?:in|inches)\\b([^\"]*)",
              found ->
                  "feet and inches go together as %s-%s ft: %s%s-%s ft%s"
                      .formatted(
                          found.group(2),
                          found.group(3),
                          found.group(1),
                          found.group(2),
                          found.group(3),
                          found.group(4))),
          look(
              "([^\"?]*?)(\\d[\\d./]*) ?: ?12\\b([^\"?]*)",
              found ->
                  "a pitch is said with in: %s%s in 12%s"
                      .formatted(found.group(1), found.group(2), found.group(3))),
          look(
              "\\s*([A-Za-z]\\w*) ((?:\\$ ?)?" + NUMBER + "(?: ?[a-z%/]+)?)\\s*",
              found ->
                  "a name is given a value with =: %s = %s"
                      .formatted(found.group(1), found.group(2))));

  private static final Pattern GIVEN_TO = Pattern.compile("^[A-Za-z_]\\w*\\s*=\\s*");
  private static final Pattern WORDS =
      Pattern.compile("\\s*[A-Za-z]\\w*(?:[ ,]+[\\w#][\\w#%/.'-]*)+\\s*\\??\\s*");
  private static final Pattern FILLER =
      Pattern.compile(
          "(?i)\\b(?:how|many|much|what|which|do|does|i|need|the|a|an|is|are|for|my|to|at|of|if|in|ft|on|and|with|it|this|that|\\S*\\d\\S*)(?=\\s|$)");

  private Sentences() {}

  /**
   * What is said of a line that is a sentence; nothing of any other line.
   *
   * @param commands the words that a line of commands begins with
   * @param isSpokenOf whether help knows some words
   */
  public static Optional<String> said(
      String typed, List<String> commands, Predicate<String> isSpokenOf) {
    String line = typed.strip();
    String first = line.split("\\W", 2)[0];
    if (JAVA.contains(first)
        || line.contains("\n")
        || line.endsWith(";")
        || line.contains(" instanceof ")) {
      return Optional.empty();
    }
    for (Look look : LOOKS) {
      Matcher matcher = look.line().matcher(line);
      if (matcher.matches()) {
        return Optional.of(look.said().apply(matcher.toMatchResult()));
      }
    }
    String asked = GIVEN_TO.matcher(line).replaceFirst("");
    if (JAVA.contains(asked.split("\\W", 2)[0])) {
      return Optional.empty();
    }
    boolean isDeclaration = first.matches("[A-Z]\\w*") && line.split("\\s+").length == 2;
    return WORDS.matcher(asked).matches() && !isDeclaration
        ? Optional.of(asked(asked, commands, isSpokenOf))
        : Optional.empty();
  }

  private static String asked(String line, List<String> commands, Predicate<String> isSpokenOf) {
    String words =
        FILLER.matcher(line.replaceAll("[?,]", " ")).replaceAll("").strip().replaceAll("\\s+", " ");
    if (!words.isEmpty() && isSpokenOf.test(words)) {
      return "this is no line that can be worked out; help %s tells what there is for it"
          .formatted(words);
    }
    String first = line.split("\\W", 2)[0];
    return Nearest.to(first, commands)
        .map(
            command ->
                "there is no \"%s\" to begin a line with; perhaps %s%s"
                    .formatted(first, command, line.substring(first.length())))
        .orElse("this is no line that can be worked out; help tells what there is");
  }

  private static Look look(String line, Function<MatchResult, String> said) {
    return new Look(Pattern.compile(line), said);
  }
}
