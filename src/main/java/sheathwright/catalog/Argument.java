package sheathwright.catalog;

import java.lang.reflect.InvocationTargetException;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;
import sheathwright.figure.Traced;

/**
 * One argument of a library function's method: a number or word with a column of its own, or a
 * thing whose parts have columns.
 */
public sealed interface Argument {

  /** As the method calls it. */
  String javaName();

  /** What the doc comment says of it. */
  String text();

  /** The columns that it is made from, in order. */
  List<Parameter> parameters();

  /** The kinds of thing that it is made of, itself first. */
  List<Class<? extends Record>> things();

  /** The argument itself, made from the next of the given values. */
  Object from(Iterator<Traced> given);

  /** A number or a word. */
  record Plain(Parameter parameter) implements Argument {

    /** A function's parameter is made once: no two of them are alike. */
    @Override
    public boolean equals(Object other) {
      return other instanceof Plain same && parameter == same.parameter;
    }

    @Override
    public int hashCode() {
      return parameter.column().hashCode();
    }

    @Override
    public String javaName() {
      return parameter.javaName();
    }

    @Override
    public String text() {
      return parameter.text();
    }

    @Override
    public List<Parameter> parameters() {
      return List.of(parameter);
    }

    @Override
    public List<Class<? extends Record>> things() {
      return List.of();
    }

    @Override
    public Object from(Iterator<Traced> given) {
      return given.next();
    }
  }

  /**
   * A thing.
   *
   * @param javaName as the method calls it
   * @param text what the doc comment says of it
   * @param type its record
   * @param parts in the record's order
   */
  record Thing(String javaName, String text, Class<? extends Record> type, List<Argument> parts)
      implements Argument {

    @Override
    public List<Parameter> parameters() {
      return parts.stream().flatMap(part -> part.parameters().stream()).toList();
    }

    @Override
    public List<Class<? extends Record>> things() {
      return Stream.concat(
              Stream.<Class<? extends Record>>of(type),
              parts.stream().flatMap(part -> part.things().stream()))
          .toList();
    }

    @Override
    public Object from(Iterator<Traced> given) {
      Object[] made = parts.stream().map(part -> part.from(given)).toArray();
      try {
        return Columns.of(type).constructor().newInstance(made);
      } catch (InvocationTargetException thrown) {
        throw Card.unwrapped(thrown, type.getSimpleName());
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException(type + " is not public", impossible);
      }
    }
  }
}
