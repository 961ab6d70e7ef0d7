package sheathwright.repl;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import sheathwright.figure.RefusedException;
import sheathwright.repl.line.Reader;
import sheathwright.repl.line.Reader.Around;
import sheathwright.repl.line.Reading;
import sheathwright.repl.line.Unreadable;
import sheathwright.repl.memory.Block.Step;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Definitions.Definition;
import sheathwright.repl.memory.PlainLine;
import sheathwright.repl.whatif.Runs;

/**
 * Runs the lines between what is changed and what is asked for anew, apart from the session, which
 * stays as it is: from their trees where they can be read, else all together by the compiler.
 */
final class Apart implements Runs {

  private static final Pattern LINE =
      Pattern.compile("(?s)\\s*(?:var\\s+)?[A-Za-z_]\\w*\\s*=(?!=).*");

  private final Definitions definitions;
  private final Around seen;
  private final Function<List<Step>, List<Object>> compiled;

  /**
   * Runs what is defined.
   *
   * @param seen what a line sees of the session
   * @param compiled runs lines by the compiler without keeping what they make, and tells it
   */
  Apart(Definitions definitions, Around seen, Function<List<Step>, List<Object>> compiled) {
    this.definitions = definitions;
    this.seen = seen;
    this.compiled = compiled;
  }

  @Override
  public List<Map<String, Object>> of(List<Map<String, String>> changes, Set<String> asked) {
    List<List<Definition>> between =
        changes.stream().map(run -> between(run.keySet(), asked)).toList();
    List<Map<String, Object>> made = new ArrayList<>();
    for (int run = 0; run < changes.size(); run++) {
      Optional<Map<String, Object>> read = read(changes.get(run), between.get(run));
      if (read.isEmpty()) {
        return compiled(changes, between);
      }
      made.add(read.get());
    }
    return made;
  }

  /** The lines that lead from what is changed to what is asked for, in order. */
  private List<Definition> between(Set<String> changed, Set<String> asked) {
    for (String name : changed) {
      if (definitions.of(name) == null) {
        throw new RefusedException(
            "there is no variable \"%s\" to vary; there are %s"
                .formatted(name, String.join(", ", definitions.variables())));
      }
    }
    List<Definition> between =
        definitions.following(changed).stream()
            .filter(
                each ->
                    asked.contains(each.name())
                        || definitions.following(Set.of(each.name())).stream()
                            .anyMatch(later -> asked.contains(later.name())))
            .toList();
    for (Definition each : between) {
      if (!each.isVariable() || !LINE.matcher(each.source()).matches()) {
        throw new RefusedException(
            "%s is made by way of %s, which is Java that cannot be run anew; make it a line: %s = …"
                .formatted(String.join(", ", asked), each.name(), each.name()));
      }
    }
    return between;
  }

  /** What comes of a run whose lines need no compiler; nothing if one does. */
  private Optional<Map<String, Object>> read(Map<String, String> run, List<Definition> between) {
    Map<String, Object> made = new LinkedHashMap<>();
    Reader reader = new Reader(new Changed(made));
    try {
      for (Map.Entry<String, String> change : run.entrySet()) {
        if (!isRead(reader.again(change.getKey() + " = " + change.getValue()), change, made)) {
          return Optional.empty();
        }
      }
      for (Definition each : between) {
        if (!isRead(reader.again(each.source()), Map.entry(each.name(), ""), made)) {
          return Optional.empty();
        }
      }
      return Optional.of(made);
    } catch (Unreadable wrong) {
      throw new RefusedException(wrong.getMessage());
    }
  }

  private static boolean isRead(
      Reading reading, Map.Entry<String, String> change, Map<String, Object> made) {
    if (reading instanceof Reading.Direct direct) {
      made.put(change.getKey(), direct.made().get(0).value());
      return true;
    }
    return false;
  }

  private List<Map<String, Object>> compiled(
      List<Map<String, String>> changes, List<List<Definition>> between) {
    Reader reader = new Reader(seen);
    List<Step> steps = new ArrayList<>();
    List<Map<String, Object>> made = new ArrayList<>();
    List<Map<String, Object>> stepMade = new ArrayList<>();
    for (int run = 0; run < changes.size(); run++) {
      changes
          .get(run)
          .forEach((name, value) -> steps.add(step(name, reader.java(name + " = " + value))));
      between.get(run).forEach(each -> steps.add(step(each.name(), each.source())));
      made.add(new LinkedHashMap<>());
      while (stepMade.size() < steps.size()) {
        stepMade.add(made.get(run));
      }
    }
    List<Object> results = compiled.apply(steps);
    for (int i = 0; i < steps.size(); i++) {
      stepMade.get(i).put(steps.get(i).name(), results.get(i));
    }
    return made;
  }

  private static Step step(String name, String source) {
    String line = PlainLine.statement(source);
    return new Step(0, name, line.startsWith("var ") ? line : "var " + line, false, null);
  }

  /** The session as a run sees it: what it has made stands before what the session holds. */
  private final class Changed implements Around {

    private final Map<String, Object> made;

    Changed(Map<String, Object> made) {
      this.made = made;
    }

    @Override
    public boolean has(String name) {
      return made.containsKey(name) || seen.has(name);
    }

    @Override
    public Object value(String name) {
      return made.containsKey(name) ? made.get(name) : seen.value(name);
    }

    @Override
    public boolean isOwn(String name) {
      return seen.isOwn(name);
    }

    @Override
    public boolean isTyped(String name) {
      return seen.isTyped(name);
    }

    @Override
    public List<Class<?>> words() {
      return seen.words();
    }

    @Override
    public <T> T ran(Supplier<T> reading) {
      return seen.ran(reading);
    }
  }
}
