package sheathwright.repl;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sheathwright.catalog.Card;
import sheathwright.catalog.Catalog;
import sheathwright.catalog.Parameter;
import sheathwright.figure.Amounts;

/** The words that stand ready at the prompt: amounts, functions, options, and the session's own. */
final class Vocabulary {

  private Vocabulary() {}

  /** What a session imports. */
  static List<String> imports() {
    Set<String> imports = new LinkedHashSet<>();
    imports.add("sheathwright.figure.*");
    imports.add("java.util.*");
    imports.add(members(Words.class));
    imports.add(members(Amounts.class));
    for (Card card : Catalog.shipped().cards()) {
      imports.add(members(card.method().getDeclaringClass()));
      for (Parameter parameter : card.parameters()) {
        if (parameter.options() != null) {
          imports.add(members(parameter.options()));
        }
      }
    }
    return List.copyOf(imports);
  }

  private static String members(Class<?> type) {
    return "static " + type.getCanonicalName() + ".*";
  }
}
