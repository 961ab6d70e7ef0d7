package sheathwright.repl.memory;

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
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.Values.Stale;

/**
 * Plain lines that follow each other, and the lines that they carry along, compiled as one: each
 * line alone costs the compiler as much as a hundred together.
 */
public final class Block {

  /** Lines compiled at once; of a script of 3,000, one by one, each reads every variable again. */
  private static final int MOST_STEPS = 200;

  private static final Pattern ASSIGNMENT =
      Pattern.compile("(?s)\\s*(var\\s+)?([A-Za-z_]\\w*)\\s*=(?!=)\\s*(.*?)\\s*;\\s*");

  private final List<Step> steps;
  private final List<Step> running;
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
   * @param stays why it is not run again after all, or null
   */
  public record Step(int line, String name, String source, boolean isCarried, Stale stays) {

    public boolean isToRun() {
      return stays == null;
    }
  }

  private Block(List<Step> steps, Values values, Predicate<String> isKnown) {
    this.steps = steps;

    this.running = steps.stream().filter(Step::isToRun).toList();
    running.forEach(this::write);
    Set<String> declared = new LinkedHashSet<>();
    for (Step step : running) {
      Definitions.wordsIn(step.source()).stream()
          .filter(name -> values.has(name) && !isKnown.test(name))
          .forEach(declared::add);
    }
    StringBuilder head = new StringBuilder("{\n");
    declared.forEach(name -> head.append(values.of(name).declaration(name)).append('\n'));
    begins.replaceAll(begin -> begin + head.length());
    code.insert(0, head).append("}");
  }

  /**
   * The longest block that begins at a line; empty if that line has to be run alone.
   *
   * @param known what is defined before, planned ahead with
   * @param values what variables hold before
   * @param isKnown whether the compiler knows a variable, which a block then cannot give a value
   * @param isPlain whether a line can be compiled with others
   * @param isAlone whether one has to be run alone after all, by its number
   */
  public static Block at(
      int first,
      List<String> lines,
      Plan known,
      Values values,
      Predicate<String> isKnown,
      Predicate<String> isPlain,
      Predicate<Integer> isAlone) {
    List<Step> steps = new ArrayList<>();
    for (int line = first; line < lines.size() && steps.size() < MOST_STEPS; line++) {
      String text = lines.get(line);
      if (!isPlain.test(text) || isAlone.test(line)) {
        break;
      }
      String source = PlainLine.statement(known.definitions().declared(text));
      Matcher assigned = ASSIGNMENT.matcher(source);
      String name = assigned.matches() ? assigned.group(2) : "";
      List<Definition> carried = name.isEmpty() ? List.of() : known.definitions().dependents(name);
      boolean mayFollow =
          Stream.concat(Stream.of(name), carried.stream().map(Definition::name)).noneMatch(isKnown)
              && carried.stream().allMatch(each -> isPlain.test(each.source()));
      if (!mayFollow) {
        break;
      }
      steps.add(new Step(line, name, source, false, null));
      if (!name.isEmpty()) {
        known.define(name, source);
        for (Definition each : carried) {
          Stale stays = known.carried(each);
          steps.add(new Step(line, each.name(), each.source(), true, stays));
        }
      }
    }
    return new Block(steps, values, isKnown);
  }

  /** A block of these lines and no others. */
  public static Block of(List<Step> steps, Values values, Predicate<String> isKnown) {
    return new Block(steps, values, isKnown);
  }

  /** A block of no lines. */
  public static Block none() {
    return new Block(List.of(), new Values(), name -> false);
  }

  public boolean isEmpty() {
    return steps.isEmpty();
  }

  public List<Step> steps() {
    return steps;
  }

  /** The steps that are run, in order. */
  public List<Step> running() {
    return running;
  }

  /** All of it as one statement. */
  public String code() {
    return code.toString();
  }

  /** The line that stands at a place in the code; -1 if none does. */
  public int lineAt(long position) {
    int line = -1;
    for (int i = 0; i < begins.size() && begins.get(i) <= position; i++) {
      line = running.get(i).line();
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
    code.append("sheathwright.repl.shell.Lines.here().take(new sheathwright.repl.shell.Kept<>(")
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
