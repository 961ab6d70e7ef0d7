package sheathwright.repl;

import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Working.Manner;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.tab.Suggestions.Offer;

/**
 * What stands behind {@code explain}: what is to be explained, and after it how: {@code explain all
 * order plain}.
 *
 * @param about the thing itself, as it is typed
 * @param isAll whether every step is told
 * @param depth how many steps are told, one after the other
 * @param manner how they are written
 */
record ExplainWords(String about, boolean isAll, int depth, Manner manner) {

  private static final String ALL = "all";
  private static final String DEPTH = "depth";
  private static final String PLAIN = "plain";
  private static final String UNTAKEN = "untaken";
  private static final String TAKEN = "depth 2, plain, untaken";

  private static final Pattern FIRST = Pattern.compile("(?s)all\\s+(\\S.*)");

  /** The words that say how, behind what is explained. */
  static final String HOW_SAID = "(?:[\\s,]+(?:plain|untaken|depth(?:\\s+-?[\\d.]\\w*)?))*";

  private static final Pattern LAST =
      Pattern.compile("(?s)(.*[^\\s,])[\\s,]+(?:(plain|untaken)|depth(?:\\s+(-?[\\d.]\\w*))?)");
  private static final Pattern WITH_MORE = Pattern.compile("([A-Za-z_]\\w*)\\s+(\\w.*)");
  private static final Pattern BEGUN =
      Pattern.compile("\\s*explain(?:[\\s(]+(all\\s+)?|(?:All)[\\s(]+)");
  private static final Pattern NAMED =
      Pattern.compile("\\s*explain(?:All)?[\\s(]+(?:all\\s+)?[A-Za-z_][^\\s,]*[\\s,]+(.*)");

  private static final List<Offer> HOW =
      List.of(
          new Offer(DEPTH, "as many steps: depth 2"),
          new Offer(PLAIN, "the numbers put in, without units"),
          new Offer(UNTAKEN, "what a choice did not take, too"));

  /**
   * What is asked.
   *
   * @param typed without the word {@code explain}
   */
  static ExplainWords of(String typed) {
    Matcher first = FIRST.matcher(typed);
    boolean isAll = first.matches();
    String rest = isAll ? first.group(1) : typed;
    int depth = 1;
    boolean isPlain = false;
    boolean isUntaken = false;
    Matcher last = LAST.matcher(rest);
    while (last.matches()) {
      if (last.group(2) == null) {
        depth = depth(last.group(3), last.group(1));
      }
      isPlain |= PLAIN.equals(last.group(2));
      isUntaken |= UNTAKEN.equals(last.group(2));
      rest = last.group(1);
      last = LAST.matcher(rest);
    }
    return new ExplainWords(bare(rest), isAll, depth, new Manner(isPlain, isUntaken));
  }

  /** What is explained, without the words that say how. */
  static String thing(String typed) {
    return typed.replaceFirst(HOW_SAID + "$", "");
  }

  /** Without the brackets round the whole of it. */
  private static String bare(String about) {
    String stripped = about.strip();
    boolean isBracketed =
        stripped.startsWith("(")
            && stripped.endsWith(")")
            && PlainLine.closes(stripped.substring(1, stripped.length() - 1));
    return isBracketed ? stripped.substring(1, stripped.length() - 1).strip() : stripped;
  }

  private static int depth(String said, String about) {
    if (said == null || !said.matches("[1-9]\\d{0,3}")) {
      throw new RefusedException(
          "depth is %s; it must be a whole number from 1: explain %s depth 2"
              .formatted(said == null ? "given no number" : said, about));
    }
    return Integer.parseInt(said);
  }

  /**
   * Checks that nothing else stands behind a variable.
   *
   * @throws RefusedException with what may stand there
   */
  void check(Predicate<String> isVariable) {
    Matcher more = WITH_MORE.matcher(about);
    if (more.matches() && isVariable.test(more.group(1))) {
      throw new RefusedException(
          "\"%s\" is nothing that can stand behind explain %s; what can: %s"
              .formatted(more.group(2), more.group(1), TAKEN));
    }
  }

  /**
   * What could be typed next on a line of this command; nothing on any other line.
   *
   * @param before the line up to the word that is begun
   * @param variables what can be explained
   */
  static List<Offer> offers(String before, Collection<String> variables) {
    Matcher begun = BEGUN.matcher(before);
    if (begun.matches()) {
      boolean isAll = begun.group(1) != null;
      return Stream.concat(
              isAll ? Stream.of() : Stream.of(new Offer(ALL, "every step: explain all order")),
              variables.stream().map(name -> new Offer(name, "")))
          .toList();
    }
    Matcher named = NAMED.matcher(before);
    return named.matches()
        ? HOW.stream().filter(word -> !named.group(1).contains(word.text())).toList()
        : List.of();
  }
}
