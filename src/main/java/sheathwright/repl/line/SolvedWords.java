package sheathwright.repl.line;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheathwright.job.Estimate;
import sheathwright.job.StickCuts;
import sheathwright.leveling.plan.Straightening;
import sheathwright.sheathing.Layouts;

/**
 * Words of the prompt that are solved, not computed by a formula, which may take long: they run
 * behind the compiler, where they can be stopped. Arguments are said as everywhere.
 */
public final class SolvedWords {

  private static final List<Class<?>> CLASSES =
      List.of(Layouts.class, Straightening.class, StickCuts.class, Estimate.class);

  private SolvedWords() {}

  /** The classes whose static methods they are. */
  public static List<Class<?>> classes() {
    return CLASSES;
  }

  /** The class whose word this is, if it is one. */
  static Optional<Class<?>> of(String name) {
    return CLASSES.stream()
        .filter(
            type ->
                Arrays.stream(type.getDeclaredMethods())
                    .anyMatch(method -> isWord(method) && method.getName().equals(name)))
        .findFirst();
  }

  /** The kinds of things that they take and answer. */
  static Set<Class<?>> things() {
    Set<Class<?>> things = new LinkedHashSet<>();
    for (Class<?> type : CLASSES) {
      for (Method method : type.getDeclaredMethods()) {
        if (isWord(method)) {
          things.add(method.getReturnType());
          for (Class<?> taken : method.getParameterTypes()) {
            things.add(taken.isArray() ? taken.getComponentType() : taken);
          }
        }
      }
    }
    things.removeIf(thing -> !thing.getName().startsWith("sheathwright."));
    return things;
  }

  private static boolean isWord(Method method) {
    return Modifier.isStatic(method.getModifiers()) && Modifier.isPublic(method.getModifiers());
  }
}
