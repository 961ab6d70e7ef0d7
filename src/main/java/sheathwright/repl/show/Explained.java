package sheathwright.repl.show;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import sheathwright.catalog.Column;
import sheathwright.figure.Check;
import sheathwright.figure.Shown;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Working;
import sheathwright.figure.Working.Manner;

/**
 * Where a value comes from, in lines of a width: at first the last step, what went into it and its
 * source, and as many steps before as are asked for; a check as a small tree.
 */
public final class Explained {

  private static final String INDENT = "  ";
  private static final String BESIDE = "│  ";

  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*(?: \\w+)?");

  private final Manner manner;
  private final int width;
  private final Set<Traced> told = Collections.newSetFromMap(new IdentityHashMap<>());

  private Explained(Manner manner, int width) {
    this.manner = manner;
    this.width = width;
  }

  /**
   * The last steps of a figure or a check; of an answer with several parts one line each.
   *
   * @param typed what was typed for it, a variable or an expression; empty if nothing was
   * @param depth how many steps, one after the other
   */
  public static String briefly(Object result, String typed, int depth, Manner manner, int width) {
    List<Traced> traced = TracedParts.of(result);
    Explained explained = new Explained(manner, width);
    List<String> lines = new ArrayList<>();
    if (result instanceof Check check) {
      lines.addAll(explained.tree(check, depth));
    } else if (traced.size() == 1) {
      lines.addAll(explained.steps(traced.get(0), name(typed), depth, 0));
    } else if (result instanceof Record results) {
      lines.addAll(explained.parts(results, depth));
    } else {
      traced.forEach(each -> lines.addAll(explained.part(each, depth)));
    }
    if (manner.isUntaken() && explained.told.stream().noneMatch(Working::isDecided)) {
      lines.add("nothing was chosen in what is told here");
    }
    int steps = Working.count(traced);
    if (steps > traced.size()) {
      lines.add("all %s steps: explain all %s".formatted(steps, typed.isEmpty() ? "…" : typed));
    }
    return String.join("\n", lines);
  }

  /** What an answer without a name of its own is called: the variable that holds it. */
  public static String name(String typed) {
    return NAME.matcher(typed).matches() ? typed : "";
  }

  /** The last step, what it is made from, and as many steps before it as are left. */
  private List<String> steps(Traced value, String name, int depth, int indented) {
    told.add(value);
    String indent = INDENT.repeat(indented);
    int room = width - indent.length();
    List<String> lines = new ArrayList<>(Working.last(value, name, manner, room));
    List<Traced> inputs = Working.inputs(value);
    if (!inputs.isEmpty()) {
      lines.add("made from");
    }
    lines.replaceAll(line -> indent + line);
    for (Traced input : inputs) {
      Traced origin = origin(input);
      if (depth > 1 && !origin.step().isGiven() && !told.contains(origin)) {
        lines.addAll(steps(origin, "", depth - 1, indented + 1));
      } else {
        lines.addAll(input(input, indent + INDENT));
      }
    }
    return lines;
  }

  private static Traced origin(Traced input) {
    return input.step() instanceof Step.Guarded guarded ? guarded.argument() : input;
  }

  private List<String> input(Traced input, String indent) {
    Traced origin = origin(input);
    String how =
        !origin.step().isGiven()
            ? ", worked out" + (origin.isNamed() && origin != input ? ": " + origin.symbol() : "")
            : ", " + origin.source();
    return Shown.wrapped(
        input.symbol() + " = " + input + how, width, indent, indent + INDENT + INDENT);
  }

  private List<String> parts(Record results, int depth) {
    List<String> lines = new ArrayList<>();
    for (var component : results.getClass().getRecordComponents()) {
      Object part =
          component.isAnnotationPresent(Column.class) ? TracedParts.part(component, results) : null;
      if (part instanceof Check check) {
        lines.addAll(tree(check, depth));
      } else if (part instanceof Traced traced) {
        lines.addAll(part(traced, depth));
      }
    }
    return lines;
  }

  /** One of several: a line, or its last steps where more than one is asked for. */
  private List<String> part(Traced value, int depth) {
    if (depth > 1 || manner.isPlain() || manner.isUntaken()) {
      return steps(value, "", Math.max(1, depth - 1), 0);
    }
    String formula = value.step().isGiven() ? "" : Working.folded(value);
    String label = value.isNamed() ? value.symbol() + " = " : "";
    String made = formula.isEmpty() || formula.equals(value.toString()) ? "" : formula + " = ";
    return Shown.wrapped(label + made + value, width, "", INDENT + INDENT);
  }

  private List<String> tree(Check check, int depth) {
    List<String> lines = new ArrayList<>();
    lines.addAll(
        Shown.wrapped(check.outcome().words() + ": " + check.what(), width, "", INDENT + INDENT));
    branch("demand", check.demand(), depth, lines);
    branch("capacity", check.capacity(), depth, lines);
    lines.addAll(
        Shown.wrapped(
            "ratio: demand ÷ capacity = %s, at most 1 is allowed".formatted(check.ratio()),
            width,
            "└─ ",
            "     "));
    return lines;
  }

  private void branch(String name, Traced side, int depth, List<String> lines) {
    lines.add("├─ " + name + ":");
    Explained inside = new Explained(manner, width - BESIDE.length());
    told.add(side);
    List<String> steps =
        depth > 1
            ? inside.steps(side, name, depth - 1, 0)
            : Working.last(side, name, manner, inside.width);
    told.addAll(inside.told);
    steps.forEach(line -> lines.add(BESIDE + line));
  }
}
