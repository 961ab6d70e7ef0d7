package sheathwright.repl.memory;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the session has defined, and what was made from what. */
public final class Definitions {

  /** A name that stands for itself, not a member that follows a dot, or a text in quotes. */
  static final Pattern WORD =
      Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"|(?<![\\w$])(?<!\\.\\s{0,80})[A-Za-z_$][\\w$]*");

  private static final Pattern BARE_ASSIGNMENT =
      Pattern.compile("(?s)\\s*([A-Za-z_]\\w*)\\s*=(?!=)(.*)");

  /**
   * One variable or method.
   *
   * @param name its name
   * @param source the line that defines it
   * @param reads every name that the line mentions
   * @param isVariable whether it holds a value
   */
  public record Definition(String name, String source, Set<String> reads, boolean isVariable) {}

  private final Set<String> typed = new HashSet<>();
  private final Map<String, Definition> byName = new LinkedHashMap<>();
  private final Map<String, Set<String>> readers = new HashMap<>();

  /** The same, to plan ahead with. */
  public Definitions copy() {
    Definitions copy = new Definitions();
    copy.typed.addAll(typed);
    byName.values().forEach(copy::put);
    return copy;
  }

  public void put(String name, String source, boolean isVariable) {
    Set<String> reads = wordsIn(source);
    boolean readsItself = isVariable && mentionsTwice(source, name);
    if (VaryCall.is(source)) {
      Set.copyOf(reads).forEach(text -> reads.add(Quoted.text(text)));
    }
    reads.remove(name);
    if (source.matches("(?s)\\s*(?!var\\b)[A-Za-z_][\\w<>\\[\\], .?]*\\s+" + name + "\\s*=.*")) {
      typed.add(name);
    } else if (source.strip().startsWith("var ")) {
      typed.remove(name);
    }
    put(new Definition(name, source, readsItself ? Set.of() : reads, isVariable));
  }

  /** Takes a definition back that stood here before. */
  public void put(Definition definition) {
    remove(definition.name());
    byName.put(definition.name(), definition);
    definition
        .reads()
        .forEach(
            read ->
                readers
                    .computeIfAbsent(read, each -> new LinkedHashSet<>())
                    .add(definition.name()));
  }

  public void remove(String name) {
    Definition before = byName.remove(name);
    if (before != null) {
      before.reads().forEach(read -> readers.get(read).remove(name));
    }
  }

  /** What a name was made by, or null. */
  public Definition of(String name) {
    return byName.get(name);
  }

  /** Whether a method of the user's mentions a name. */
  public boolean isReadByMethod(String name) {
    return readers.getOrDefault(name, Set.of()).stream()
        .anyMatch(reader -> !byName.get(reader).isVariable());
  }

  /**
   * A bare {@code name = value} declares the name, or declares it anew: its kind may change. Only a
   * name made from itself is assigned, and then stands as it is.
   */
  public String declared(String snippet) {
    Matcher bare = BARE_ASSIGNMENT.matcher(snippet);
    boolean isDeclared =
        bare.matches()
            && !isTyped(bare.group(1))
            && !(has(bare.group(1)) && wordsIn(bare.group(2)).contains(bare.group(1)));
    return isDeclared ? "var " + snippet.strip() : snippet;
  }

  /** Whether the name was declared with a type of its own, which it then keeps. */
  public boolean isTyped(String name) {
    return typed.contains(name);
  }

  public boolean has(String name) {
    return byName.containsKey(name);
  }

  public boolean isVariable(String name) {
    return has(name) && byName.get(name).isVariable();
  }

  public List<String> variables() {
    return byName.values().stream().filter(Definition::isVariable).map(Definition::name).toList();
  }

  /** Every variable made from this name, each after those that it is made from. */
  public List<Definition> dependents(String changed) {
    return following(Set.of(changed)).stream().filter(Definition::isVariable).toList();
  }

  /** Everything made from these, methods too, each after those that it is made from. */
  public List<Definition> following(Set<String> changed) {
    Set<String> affected = new LinkedHashSet<>();
    changed.forEach(name -> affect(name, affected));
    affected.removeAll(changed);
    List<Definition> ordered = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (String name : affected) {
      order(name, affected, done, ordered);
    }
    return ordered;
  }

  private void affect(String changed, Set<String> affected) {
    for (String reader : readers.getOrDefault(changed, Set.of())) {
      if (affected.add(reader)) {
        affect(reader, affected);
      }
    }
  }

  private void order(
      String name, Set<String> affected, Set<String> done, List<Definition> ordered) {
    if (!done.add(name)) {
      return;
    }
    for (String read : byName.get(name).reads()) {
      if (affected.contains(read)) {
        order(read, affected, done, ordered);
      }
    }
    ordered.add(byName.get(name));
  }

  /** Every name, and every text in quotes, that a source mentions. */
  public static Set<String> wordsIn(String source) {
    Set<String> words = new HashSet<>();
    Matcher matcher = WORD.matcher(source);
    while (matcher.find()) {
      words.add(matcher.group());
    }
    return words;
  }

  private static boolean mentionsTwice(String source, String name) {
    int times = 0;
    Matcher matcher = WORD.matcher(source);
    while (matcher.find()) {
      times += matcher.group().equals(name) ? 1 : 0;
    }
    return times > 1;
  }
}
