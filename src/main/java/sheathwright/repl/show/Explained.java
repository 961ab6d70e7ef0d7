package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.List;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;

/**
 * Where a value comes from, in lines of a width: at first the last step, what went into it and its
 * source; a check as a small tree.
 */
public final class Explained {

  private static final String INDENT = "  ";

  private Explained() {}

  /** The last step of a figure or a check; of an answer with several parts one line each. */
  public static String briefly(Object result, int width) {
    List<Traced> traced = TracedParts.of(result);
    List<String> lines = new ArrayList<>();
    if (result instanceof Check check) {
      lines.addAll(tree(check, width));
    } else if (traced.size() == 1) {
      lines.addAll(lastStep(traced.get(0), width));
    } else if (result instanceof Record results) {
      lines.addAll(parts(results, width));
    } else {
      traced.forEach(each -> lines.addAll(oneLine(each, width)));
    }
    int steps = Working.count(traced);
    if (steps > traced.size()) {
      lines.add("all %d steps: explainAll(…)".formatted(steps));
    }
    return String.join("\n", lines);
  }

  private static List<String> lastStep(Traced value, int width) {
    List<String> lines = new ArrayList<>(Working.last(value, width));
    List<Traced> inputs = Working.inputs(value);
    if (!inputs.isEmpty()) {
      lines.add("made from");
      inputs.forEach(input -> lines.addAll(input(input, width)));
    }
    return lines;
  }

  private static List<String> input(Traced input, int width) {
    Traced origin = input.step() instanceof Step.Guarded guarded ? guarded.argument() : input;
    String how =
        !origin.step().isGiven()
            ? ", worked out" + (origin.isNamed() && origin != input ? ": " + origin.symbol() : "")
            : ", " + origin.source();
    return Shown.wrapped(
        input.symbol() + " = " + input + how, width, INDENT, INDENT + INDENT + INDENT);
  }

  private static List<String> parts(Record results, int width) {
    List<String> lines = new ArrayList<>();
    for (var component : results.getClass().getRecordComponents()) {
      Object part =
          component.isAnnotationPresent(Column.class) ? TracedParts.part(component, results) : null;
      if (part instanceof Check check) {
        lines.addAll(tree(check, width));
      } else if (part instanceof Traced traced) {
        lines.addAll(oneLine(traced, width));
      }
    }
    return lines;
  }

  private static List<String> oneLine(Traced value, int width) {
    String formula = value.step().isGiven() ? "" : Working.folded(value);
    String label = value.isNamed() ? value.symbol() + " = " : "";
    String made = formula.isEmpty() || formula.equals(value.toString()) ? "" : formula + " = ";
    return Shown.wrapped(label + made + value, width, "", INDENT + INDENT);
  }

  private static List<String> tree(Check check, int width) {
    List<String> lines = new ArrayList<>();
    lines.add("%s: %s".formatted(check.what(), verdict(check)));
    branch("├─ demand: ", "│  ", Working.last(check.demand(), width - 3), lines);
    branch("├─ capacity: ", "│  ", Working.last(check.capacity(), width - 3), lines);
    lines.add("└─ ratio: demand ÷ capacity = " + check.ratio() + ", at most 1 is allowed");
    return lines;
  }

  private static String verdict(Check check) {
    return check.ok().refusal().isPresent() ? "not known" : check.ok().holds() ? "ok" : "NOT ok";
  }

  private static void branch(String head, String further, List<String> step, List<String> lines) {
    lines.add(head.stripTrailing());
    step.forEach(line -> lines.add(further + line));
  }
}
