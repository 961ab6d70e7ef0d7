package sheathwright.repl;

import static java.util.stream.Collectors.joining;

import java.util.stream.Stream;
import sheathwright.figure.Working;
import sheathwright.repl.Session.OwnLines;
import sheathwright.repl.shell.Lines;

/** What can be asked of a session at its own prompt. Meant to be imported statically. */
public final class Words {

  private Words() {}

  /** Text that is shown as it stands. */
  public record Page(String text) {

    @Override
    public String toString() {
      return text;
    }
  }

  /** What can be typed here, in the order of the work. */
  public static Page help() {
    return session().pages().help();
  }

  /**
   * All of a task, the function of this name, or whatever speaks of these words, with an example
   * each.
   *
   * @throws sheathwright.figure.RefusedException if nothing does
   */
  public static Page help(String words) {
    return session().pages().help(words);
  }

  /**
   * Where a figure, a choice, a check or a function's answer comes from: the last step, what went
   * into it, and its source.
   */
  public static Page explain(Object result) {
    return session().pages().explain(result, "", 1, Working.USUAL);
  }

  /** The working of the same, every step with its source. */
  public static Page explainAll(Object result) {
    return session().pages().explainAll(result, "", Working.USUAL);
  }

  /** Says things in a line, as a loop or a script does. */
  public static void print(Object... things) {
    System.out.println(
        Stream.of(things)
            .map(thing -> thing instanceof String text ? text : Shows.text(thing))
            .collect(joining("  ")));
  }

  /** A picture in the terminal, where one can be drawn. */
  public static Page show(Object result) {
    return session().pages().show(result);
  }

  /**
   * The session as a live workbook, or as lines that make it again, by the file's ending.
   *
   * @throws sheathwright.figure.RefusedException if there is nothing to save yet, or the ending is
   *     that of neither
   */
  public static Page save(String file) {
    return new Page(session().upkeep().saved(file, false).text());
  }

  /** The same, in place of a file that exists. */
  public static Page saveOver(String file) {
    return new Page(session().upkeep().saved(file, true).text());
  }

  private static Session session() {
    return ((OwnLines) Lines.here()).session();
  }
}
