package sheathwright.repl;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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

  private static final Pattern WORD = Pattern.compile("[A-Za-z_]\\w*");
  private static final Pattern TYPE = Pattern.compile("\\b[A-Z]\\w*[a-z]\\w*");

  /** The words that every session uses. */
  static final String AMOUNTS = imported(Amounts.class);

  private final Map<String, Set<String>> wordsOf = new LinkedHashMap<>();
  private final Set<String> taken = new HashSet<>();

  /** Packages whose types are named at the prompt; those of functions and their things besides. */
  private final Set<String> types =
      new LinkedHashSet<>(
          List.of(
              "java.util.*",
              "sheathwright.figure.*",
              "sheathwright.roof.*",
              "sheathwright.sheathing.patch.*",
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
    for (Card card : Catalog.shipped().cards()) {
      add(card.method().getDeclaringClass());
      types.add(card.method().getDeclaringClass().getPackageName() + ".*");
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
    Set<String> used = new HashSet<>();
    Matcher words = WORD.matcher(line);
    while (words.find()) {
      used.add(words.group());
    }
    Set<String> needed = new LinkedHashSet<>();
    if (TYPE.matcher(line).find()) {
      needed.addAll(types);
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

  /** Every import that was not taken yet. */
  Set<String> rest() {
    Set<String> rest = new LinkedHashSet<>(wordsOf.keySet());
    rest.addAll(types);
    rest.removeIf(name -> !taken.add(name));
    return rest;
  }

  private static String imported(Class<?> type) {
    return "static " + type.getCanonicalName() + ".*";
  }

  /** A thing's type, and those of its kind that have a name. */
  private void addThing(Class<? extends Record> thing) {
    types.add(thing.getPackageName() + ".*");
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
