package sheathwright.repl.whatif;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sheathwright.figure.Check;
import sheathwright.figure.Choice;
import sheathwright.figure.Refusal;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;
import sheathwright.repl.memory.Definitions;
import sheathwright.repl.memory.Journal;
import sheathwright.repl.memory.Values;
import sheathwright.repl.show.TracedParts;

/** Named sets of changes, and what each would come to; the variables stay as they are. */
public final class Scenarios {

  private static final String HEAD = "scenario";

  private final Definitions definitions;
  private final Values values;
  private final Journal journal;
  private final Runs runs;
  private final Map<String, Map<String, String>> changes = new LinkedHashMap<>();

  /**
   * None yet.
   *
   * @param journal is told how to take back what is kept or deleted here
   * @param runs runs lines without keeping what they make
   */
  public Scenarios(Definitions definitions, Values values, Journal journal, Runs runs) {
    this.definitions = definitions;
    this.values = values;
    this.journal = journal;
    this.runs = runs;
  }

  public boolean has(String name) {
    return changes.containsKey(name);
  }

  public boolean areNone() {
    return changes.isEmpty();
  }

  /** How they are typed. */
  public static String usage() {
    return ScenarioCall.USAGE;
  }

  /** Whether what follows the word names a set of changes, and not the answers to be shown. */
  public static boolean isNamed(String about) {
    return ScenarioCall.is(about);
  }

  /** Keeps a set of changes, once it was tried; what is said of it. */
  public String kept(String about) {
    ScenarioCall call = ScenarioCall.of(about);
    Set<String> answers = Set.copyOf(lastAnswers());
    run(call.name(), call.changes(), answers).forEach((name, made) -> checkValue(call, name, made));
    put(call.name(), call.changes());
    return "scenario \"%s\" is kept; scenario alone shows all side by side".formatted(call.name());
  }

  private static void checkValue(ScenarioCall call, String name, Object made) {
    TracedParts.of(made).stream()
        .flatMap(part -> part.refusal().stream())
        .filter(refusal -> !refusal.isAnswer())
        .findFirst()
        .map(Refusal::reason)
        .ifPresent(
            reason -> {
              throw refused(call.name(), name + " has no value: " + reason);
            });
  }

  private static RefusedException refused(String scenario, String why) {
    return new RefusedException("scenario \"%s\": %s".formatted(scenario, why));
  }

  /** Takes a set of changes away. */
  public void delete(String name) {
    put(name, null);
  }

  /** Puts changes under a name, or with null none. */
  private void put(String name, Map<String, String> now) {
    Map<String, Map<String, String>> before = new LinkedHashMap<>(changes);
    journal.touch(
        () -> {
          changes.clear();
          changes.putAll(before);
        });
    if (now == null) {
      changes.remove(name);
    } else {
      changes.put(name, now);
    }
  }

  /**
   * How things stand, and what each set of changes comes to: what is changed in any, then the
   * answers.
   *
   * @param asked the answers; if there are none, all that nothing further is made from
   */
  public List<Map<String, Object>> rows(List<String> asked) {
    List<String> answers = asked.isEmpty() ? lastAnswers() : asked;
    Set<String> columns = new LinkedHashSet<>();
    changes.values().forEach(each -> columns.addAll(each.keySet()));
    for (String answer : answers) {
      if (!values.has(answer)) {
        throw new RefusedException(
            "there is no variable \"%s\" to show; there are %s"
                .formatted(answer, String.join(", ", definitions.variables())));
      }
      columns.add(answer);
    }
    List<Map<String, Object>> rows = new ArrayList<>(List.of(row("now", Map.of(), columns)));
    changes.forEach(
        (name, changed) -> rows.add(row(name, run(name, changed, Set.copyOf(answers)), columns)));
    Set<String> common = new LinkedHashSet<>(rows.get(0).keySet());
    rows.forEach(row -> common.retainAll(row.keySet()));
    rows.forEach(row -> row.keySet().retainAll(common));
    return rows;
  }

  private Map<String, Object> row(String name, Map<String, Object> made, Set<String> columns) {
    Map<String, Object> all = new LinkedHashMap<>(Map.of(HEAD, Choice.literal(name)));
    for (String column : columns) {
      Object held = made.containsKey(column) ? made.get(column) : held(column).orElse("");
      all.putAll(TracedParts.named(Map.of(column, held)));
    }
    return all;
  }

  private Optional<Object> held(String name) {
    return values.has(name) ? Optional.ofNullable(values.of(name).object()) : Optional.empty();
  }

  private Map<String, Object> run(String name, Map<String, String> changed, Set<String> answers) {
    try {
      return runs.of(List.of(changed), answers).get(0);
    } catch (RefusedException wrong) {
      throw refused(name, wrong.getMessage());
    }
  }

  /**
   * What is worked out, holds a number, a word or a check, and is the end of what is made of it.
   */
  private List<String> lastAnswers() {
    return definitions.variables().stream()
        .filter(name -> definitions.of(name).reads().stream().anyMatch(definitions::has))
        .filter(name -> definitions.dependents(name).isEmpty())
        .filter(name -> isTold(values.of(name).object()))
        .toList();
  }

  private static boolean isTold(Object held) {
    boolean isOne = held instanceof Traced || held instanceof Check || held instanceof Record;
    return isOne && !TracedParts.of(held).isEmpty();
  }
}
