package sheathwright.catalog;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.Iterator;
import java.util.List;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Traced;

/**
 * One library function as the catalog knows it.
 *
 * @param name as tables and commands call it: {@code nails_per_sheet}
 * @param method the method itself
 * @param arguments in the method's order
 * @param results in the order of the answer
 * @param text what its doc comment says
 */
public record Card(
    String name, Method method, List<Argument> arguments, List<Result> results, Text text) {

  /** The columns that it is asked by, in order: a thing has several. */
  public List<Parameter> parameters() {
    return arguments.stream().flatMap(argument -> argument.parameters().stream()).toList();
  }

  /**
   * Calls the function.
   *
   * @param given one for each parameter, in order
   * @return its results, in order; a refusal stays inside them until their value is asked for
   * @throws RefusedException if the function refuses outright
   */
  public List<Traced> answer(List<Traced> given) {
    Iterator<Traced> next = given.iterator();
    Object[] made = arguments.stream().map(argument -> argument.from(next)).toArray();
    try {
      Object answer = method.invoke(null, made);
      return results.stream().map(result -> result.in().apply(answer)).toList();
    } catch (InvocationTargetException thrown) {
      throw unwrapped(thrown, name);
    } catch (IllegalAccessException impossible) {
      throw new IllegalStateException(name + " is not public", impossible);
    }
  }

  static RuntimeException unwrapped(InvocationTargetException thrown, String called) {
    return thrown.getCause() instanceof RuntimeException cause
        ? cause
        : new IllegalStateException(called + " failed", thrown.getCause());
  }

  /** As it is typed at the prompt: {@code nailsPerSheet}. */
  public String call() {
    return method.getName();
  }

  /** What the trade calls it beside its name. */
  public List<String> words() {
    return List.of(method.getAnnotation(LibraryFunction.class).words());
  }

  /** Room and corner that it stands in: {@code fastening.count}. */
  public String corner() {
    return method.getDeclaringClass().getPackageName().substring("sheathwright.".length());
  }

  /** The room that it stands in: {@code fastening}. */
  public String room() {
    return method.getDeclaringClass().getPackageName().split("\\.")[1];
  }

  /** The parameter of this column, or null. */
  public Parameter parameter(String column) {
    return parameters().stream()
        .filter(parameter -> parameter.column().equals(column))
        .findFirst()
        .orElse(null);
  }
}
