package sheathwright.repl;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sheathwright.repl.Definitions.Definition;

/**
 * Plain lines that follow each other, and the lines that they carry along, compiled as one: each
 * line alone costs the compiler as much as a hundred together.
 */
final class Block {

  private static final int MOST_STEPS = 200;
  private static final Pattern ASSIGNMENT =
      Pattern.compile("(?s)\\s*(var\\s+)?([A-Za-z_]\\w*)\\s*=(?!=)\\s*(.*?)\\s*;\\s*");

  private final List<Step> steps;
  private final Held held;
  private final StringBuilder code = new StringBuilder();
  private final List<Integer> begins = new ArrayList<>();
  private final Map<String, String> called = new HashMap<>();

  /**
   * One line, run.
   *
   * @param line which line of the script it belongs to
   * @param name the variable that it gives a value, or empty
   * @param source the line as a statement
   * @param isCarried whether it is run again because something that it is made from changed
   */
  record Step(int line, String name, String source, boolean isCarried) {}

  private Block(List<Step> steps, Held held) {
    this.steps = steps;
    this.held = held;
    steps.forEach(this::write);
    Set<String> declared = new LinkedHashSet<>();
    for (Step step : steps) {
      Definitions.wordsIn(step.source()).stream().filter(held::has).forEach(declared::add);
    }
    StringBuilder head = new StringBuilder("{\n");
    declared.forEach(name -> head.append(held.declaration(name)).append('\n'));
    begins.replaceAll(begin -> begin + head.length());
    code.insert(0, head).append("}");
  }

  /**
   * The longest block that begins at a line; empty if that line has to be run alone.
   *
   * @param known what is defined before; taken along with what the block defines
   * @param mayHold whether a variable may be held, because the compiler need not know it
   * @param isAlone whether a line has to be run alone, by its number
   */
  static Block at(
      int first,
      List<String> lines,
      Definitions known,
      Held held,
      Predicate<String> mayHold,
      Predicate<Integer> isAlone) {
    Definitions planned = known.copy();
    List<Step> steps = new ArrayList<>();
    for (int line = first; line < lines.size() && steps.size() < MOST_STEPS; line++) {
      String text = Exits.caught(lines.get(line));
      if (!PlainLine.is(text) || isAlone.test(line)) {
        break;
      }
      String source = PlainLine.statement(planned.declared(text));
      Matcher assigned = ASSIGNMENT.matcher(source);
      String name = assigned.matches() ? assigned.group(2) : "";
      List<Definition> carried = name.isEmpty() ? List.of() : planned.dependents(name);
      boolean mayFollow =
          Stream.concat(Stream.of(name), carried.stream().map(Definition::name)).allMatch(mayHold)
              && carried.stream().allMatch(each -> PlainLine.is(each.source()));
      if (!mayFollow) {
        break;
      }
      steps.add(new Step(line, name, source, false));
      if (!name.isEmpty()) {
        planned.put(name, source, true);
        for (Definition each : carried) {
          steps.add(new Step(line, each.name(), each.source(), true));
        }
      }
    }
    return new Block(steps, held);
  }

  /** A block of no lines. */
  static Block none(Held held) {
    return new Block(List.of(), held);
  }

  boolean isEmpty() {
    return steps.isEmpty();
  }

  List<Step> steps() {
    return steps;
  }

  /** All of it as one statement. */
  String code() {
    return code.toString();
  }

  /** The line that stands at a place in the code; -1 if none does. */
  int lineAt(long position) {
    int line = -1;
    for (int i = 0; i < begins.size() && begins.get(i) <= position; i++) {
      line = steps.get(i).line();
    }
    return line;
  }

  /** A variable is given anew under another name, so that its type may change. */
  private void write(Step step) {
    begins.add(code.length());
    Matcher assigned = ASSIGNMENT.matcher(step.source());
    if (!assigned.matches()) {
      String bare = step.source().strip();
      take(renamed(bare.substring(0, bare.length() - 1)));
      return;
    }
    String before = renamed(step.name());
    String value = renamed(assigned.group(3));
    String local = step.name() + "$" + begins.size();
    boolean keepsItsType = assigned.group(1) == null;
    code.append("var ").append(local).append(" = ").append(keepsItsType ? before : value);
    code.append(";\n");
    if (keepsItsType) {
      code.append(local).append(" = ").append(value).append(";\n");
    }
    take(local);
    called.put(step.name(), local);
  }

  private void take(String value) {
    code.append("sheathwright.repl.Held.take(new sheathwright.repl.Kept<>(")
        .append(value)
        .append(") {});\n");
  }

  private String renamed(String source) {
    Matcher words = Definitions.WORD.matcher(source);
    return words.replaceAll(
        word -> {
          boolean isCalled = source.substring(word.end()).stripLeading().startsWith("(");
          String now = isCalled ? word.group() : called.getOrDefault(word.group(), word.group());
          return Matcher.quoteReplacement(now);
        });
  }
}
