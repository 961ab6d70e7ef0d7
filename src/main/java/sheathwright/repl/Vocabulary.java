package sheathwright.repl;

import static java.util.stream.Collectors.toCollection;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;
import sheathwright.catalog.Argument;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Amounts;
import sheathwright.figure.Units;
import sheathwright.repl.line.Holds;
import sheathwright.repl.line.SolvedWords;
import sheathwright.roof.HouseSide;
import sheathwright.sheathing.patch.Finding;

/**
 * The words that stand ready at the prompt: amounts, functions, options, and the session's own.
 * Each import costs the compiler a moment, so a script takes only those whose words it uses; the
 * prompt takes all, behind the user's back.
 */
final class Vocabulary {

  /** A word that nothing is asked of, and whether it is called. */
  private static final Pattern WORD = Pattern.compile("(?<![\\w.])([A-Za-z_]\\w*)(\\s*\\()?");

  private static final Pattern TYPE = Pattern.compile("[A-Z]\\w*[a-z]\\w*");
  private static final Pattern VARIABLE = Pattern.compile("[a-z]\\w*");

  /** The words that every session uses. */
  static final String AMOUNTS = imported(Amounts.class);

  private final Map<String, Set<String>> wordsOf = new LinkedHashMap<>();
  private final Set<String> taken = new HashSet<>();
  private boolean isGathered;

  /** Packages whose types are named at the prompt; those of functions and their things besides. */
  private final Set<String> types =
      new LinkedHashSet<>(
          List.of(
              "java.util.*",
              "sheathwright.figure.*",
              "sheathwright.roof.*",
              "sheathwright.sheathing.patch.*",
              "sheathwright.sheathing.place.*",
              "sheathwright.leveling.target.*"));

  Vocabulary() {
    taken.add(AMOUNTS);
    add(Words.class);
    add(FileWords.class);
    add(Holds.class);
    SolvedWords.classes().forEach(this::add);
    add(Finding.class);
    add(HouseSide.class);
    add(Units.class);
    add(Amounts.class);
    types.addAll(Catalog.shipped().packages().stream().map(each -> each + ".*").toList());
  }

  /** Adds the words of every function, which a line seldom needs. */
  private void gather() {
    if (isGathered) {
      return;
    }
    isGathered = true;
    for (Card card : Catalog.shipped().cards()) {
      add(card.method().getDeclaringClass());
      for (Argument argument : card.arguments()) {
        argument.things().forEach(this::addThing);
      }
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null) {
          add(parameter.options());
        }
      }
    }
  }

  /** The imports that a line needs and that were not taken yet. */
  Set<String> newlyNeededBy(String line) {
    Set<String> used = new LinkedHashSet<>();
    Set<String> needed = new LinkedHashSet<>();
    Matcher words = WORD.matcher(line);
    while (words.find()) {
      String word = words.group(1);
      boolean isCalled = words.group(2) != null;
      if (TYPE.matcher(word).matches()) {
        needed.addAll(packagesOf(word));
      } else if (isCalled || !VARIABLE.matcher(word).matches()) {
        used.add(word);
      }
    }
    used.removeIf(SourceVersion::isKeyword);
    for (String word : used) {
      Optional<Card> function =
          Catalog.shipped().find(word).filter(card -> card.call().equals(word));
      function.map(card -> card.method().getDeclaringClass()).ifPresent(this::add);
      if (function.isEmpty() && wordsOf.values().stream().noneMatch(each -> each.contains(word))) {
        gather();
      }
    }
    wordsOf.forEach(
        (name, names) -> {
          if (!Collections.disjoint(names, used)) {
            needed.add(name);
          }
        });
    needed.removeIf(name -> !taken.add(name));
    return needed;
  }

  /** The packages in which a type of this name stands; none, if every program has it. */
  private Set<String> packagesOf(String type) {
    return isIn("java.lang", type)
        ? Set.of()
        : types.stream()
            .filter(all -> isIn(all.substring(0, all.length() - ".*".length()), type))
            .collect(toCollection(LinkedHashSet::new));
  }

  private static boolean isIn(String holder, String type) {
    try {
      Class.forName(holder + "." + type, false, Vocabulary.class.getClassLoader());
      return true;
    } catch (ClassNotFoundException elsewhere) {
      return false;
    }
  }

  /** Every import that was not taken yet. */
  Set<String> rest() {
    gather();
    Set<String> rest = new LinkedHashSet<>(wordsOf.keySet());
    rest.addAll(types);
    rest.removeIf(name -> !taken.add(name));
    return rest;
  }

  private static String imported(Class<?> type) {
    return "static " + type.getCanonicalName() + ".*";
  }

  /** Those of a thing's kind that have a name. */
  private void addThing(Class<? extends Record> thing) {
    for (Field field : thing.getFields()) {
      wordsOf.put(
          "static " + thing.getCanonicalName() + "." + field.getName(), Set.of(field.getName()));
    }
  }

  private void add(Class<?> type) {
    Set<String> names = new HashSet<>();
    for (Method method : type.getMethods()) {
      names.add(method.getName());
    }
    for (Field field : type.getFields()) {
      names.add(field.getName());
    }
    wordsOf.put(imported(type), names);
  }
}
