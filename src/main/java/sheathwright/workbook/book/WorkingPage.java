package sheathwright.workbook.book;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.workbook.book.Look.Part;

/** The page that shows every step between the inputs and the results. */
final class WorkingPage {

  private static final List<String> HEADINGS =
      List.of("Step", "Value", "Unit", "Least", "Most", "How it is worked out", "Source");

  /** So many steps are followed by the eye, and need no headings between them. */
  private static final int FEW = 24;

  private final Book book;
  private final Tab tab;

  WorkingPage(Book book, Tab tab) {
    this.book = book;
    this.tab = tab;
  }

  void write(Closure closure) {
    if (closure.steps().isEmpty() && closure.constants().isEmpty()) {
      return;
    }
    book.audience().keyToMarks().ifPresent(tab::note);
    for (int column = 0; column < HEADINGS.size(); column++) {
      tab.text(tab.next(), column, HEADINGS.get(column), Part.COLUMN_HEAD);
    }
    tab.skip(1);
    tab.repeatsLineAbove();
    boolean isShort = closure.steps().values().stream().mapToInt(List::size).sum() <= FEW;
    for (Map.Entry<String, List<Traced>> group : closure.steps().entrySet()) {
      if (!isShort) {
        tab.heading("for " + group.getKey());
      }
      for (Traced step : group.getValue()) {
        step(label(step), step, group.getKey());
      }
    }
    if (!closure.constants().isEmpty()) {
      tab.heading(
          closure.argumentNames().isEmpty() ? "constants" : "typed in passing, and constants");
      for (Traced constant : closure.constants()) {
        step(closure.argumentNames().getOrDefault(constant, label(constant)), constant, "typed");
      }
    }
  }

  /** A step of the working: its value, its formula in words, and its source. */
  private void step(String label, Traced value, String owner) {
    int line = tab.line();
    boolean isElsewhere = book.hasPlace(value);
    if (isElsewhere) {
      book.copied(value, tab, line, 1);
    } else {
      book.stepped(value, tab, line, 1, owner);
    }
    tab.text(line, 0, label, Part.LABEL);
    TabCell cell = tab.cell(line, 1);
    tab.style(cell, value, Part.RESULT);
    tab.text(line, 2, Tab.unitBeside(value), Part.UNIT);
    Optional<Step.Guarded> guard = value.step().guard();
    if (guard.isPresent()) {
      Limits limits = guard.get().limits();
      tab.number(line, 3, limits.least());
      tab.number(line, 4, limits.most());
      if (!isElsewhere) {
        book.guarded(guard.get(), tab, line);
      }
      tab.text(line, 5, "as given, within its limits: " + limits.rule(), Part.NOTE);
    } else {
      tab.text(line, 3, "", Part.LABEL);
      tab.text(line, 4, "", Part.LABEL);
      tab.text(line, 5, Working.symbols(value), Part.NOTE);
    }
    String source = book.audience().cited(value.source());
    tab.text(line, 6, source, Part.NOTE);
    int lines =
        Math.max(
            tab.linesOf(tab.cell(line, 5).text(), 5, 5, Part.NOTE),
            tab.linesOf(source, 6, 6, Part.NOTE));
    tab.row(line).height(Tab.LINE_HEIGHT * lines + 2);
    book.later(
        notation -> {
          if (isElsewhere) {
            book.writeLink(cell, value, notation);
          } else {
            book.write(cell, value, notation.on(tab.name()));
          }
        });
  }

  private static String label(Traced step) {
    if (step.isNamed()) {
      String words = Shown.inWords(step.name());
      boolean hasLetter =
          !step.symbol().equals(words) && Character.isLetter(step.symbol().charAt(0));
      return hasLetter && step instanceof Figure<?> ? words + ", " + step.symbol() : words;
    }
    String symbols = Working.symbols(step);
    return symbols.isEmpty() ? step.symbol() : symbols;
  }
}
