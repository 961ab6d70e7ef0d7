package sheathwright.workbook;

import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.Shown;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.workbook.Look.Part;

/** The page that shows every step between the inputs and the results. */
final class WorkingPage {

  private static final List<String> HEADINGS =
      List.of("Step", "Value", "Unit", "Least", "Most", "How it is worked out", "Source");

  private final Tab tab;

  WorkingPage(Tab tab) {
    this.tab = tab;
  }

  void write(Closure closure) {
    for (int column = 0; column < HEADINGS.size(); column++) {
      tab.text(tab.next(), column, HEADINGS.get(column), Part.COLUMN_HEAD);
    }
    tab.skip(1);
    for (Map.Entry<String, List<Traced>> group : closure.steps().entrySet()) {
      tab.heading("for " + group.getKey());
      for (Traced step : group.getValue()) {
        tab.step(label(step), step, group.getKey());
      }
    }
    if (!closure.constants().isEmpty()) {
      tab.heading(
          closure.argumentNames().isEmpty() ? "constants" : "typed in passing, and constants");
      for (Traced constant : closure.constants()) {
        tab.step(
            closure.argumentNames().getOrDefault(constant, label(constant)), constant, "typed");
      }
    }
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
