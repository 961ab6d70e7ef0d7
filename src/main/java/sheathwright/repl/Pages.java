package sheathwright.repl;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.Card;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.figure.Working.Manner;
import sheathwright.proof.CheckedLines;
import sheathwright.repl.Words.Page;
import sheathwright.repl.show.Bars;
import sheathwright.repl.show.Explained;
import sheathwright.repl.show.TracedParts;

/**
 * What is shown of a session, in lines of a width.
 *
 * @param columns the width
 */
record Pages(int columns) {

  /** What can be typed here, in the order of the work. */
  Page help() {
    return new Page(Help.page(columns));
  }

  /** All of a task, the function of this name, or whatever speaks of these words. */
  Page help(String words) {
    return new Page(Help.about(words, columns));
  }

  /** What a function is for, in a line, and one that can be typed. */
  Page line(Card card) {
    return new Page(Help.line(card, columns));
  }

  /**
   * Where a value comes from: the last steps, what went into them, and their sources.
   *
   * @param typed what was typed for it, a variable or an expression; empty if nothing was
   * @param depth how many steps, one after the other
   */
  Page explain(Object result, String typed, int depth, Manner manner) {
    parts(result);
    return new Page(Explained.briefly(result, typed, depth, manner, columns));
  }

  /** The working of the same, every step with its source, and how its functions were checked. */
  Page explainAll(Object result, String typed, Manner manner) {
    List<Traced> parts = parts(result);
    List<String> lines = new ArrayList<>();
    lines.add(Working.of(parts, Explained.name(typed), manner, columns));
    CheckedLines.behind(parts)
        .forEach(each -> lines.addAll(Shown.wrapped("checked: " + each, columns, "", "  ")));
    return new Page(String.join("\n", lines));
  }

  /** A picture, where one can be drawn. */
  Page show(Object result) {
    return new Page(Bars.of(result, columns));
  }

  private static List<Traced> parts(Object result) {
    List<Traced> traced = result == null ? List.of() : TracedParts.of(result);
    if (traced.isEmpty()) {
      throw new RefusedException(
          "explain takes a figure, a choice, a check or a function's answer; this has no working");
    }
    return traced;
  }
}
