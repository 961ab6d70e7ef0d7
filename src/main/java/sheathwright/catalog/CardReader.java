package sheathwright.catalog;

import static java.util.stream.Collectors.toMap;

import java.lang.reflect.AnnotatedElement;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.function.Function;
import sheathwright.figure.Check;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Traced;

/** Makes cards of the methods that the index of doc comments lists. */
final class CardReader {

  private final Properties index;

  CardReader(Properties index) {
    this.index = index;
  }

  /** Where each function stands: its class, a number sign, the method. */
  List<String> places() {
    return List.of(index.getProperty("functions").split(","));
  }

  /** The method that stands at a place. */
  static String name(String place) {
    return place.substring(place.indexOf('#') + 1);
  }

  Card card(String qualified) {
    String type = qualified.substring(0, qualified.indexOf('#'));
    String name = name(qualified);
    Method method =
        Arrays.stream(load(type).getMethods())
            .filter(candidate -> candidate.getName().equals(name))
            .filter(candidate -> candidate.isAnnotationPresent(LibraryFunction.class))
            .findFirst()
            .orElseThrow();
    return new Card(
        snakeCase(name), method, arguments(qualified, method), results(method), text(qualified));
  }

  private List<Argument> arguments(String qualified, Method method) {
    return Arrays.stream(method.getParameters())
        .map(
            parameter ->
                argument(
                    qualified,
                    "",
                    new Part(parameter.getName(), parameter.getParameterizedType(), parameter),
                    narrowed(parameter)))
        .toList();
  }

  /** What a parameter allows less than its thing, by column. */
  private static Map<String, Limits> narrowed(java.lang.reflect.Parameter parameter) {
    return Arrays.stream(parameter.getAnnotationsByType(Narrowed.class))
        .collect(
            toMap(
                Narrowed::column,
                less -> new Limits(less.least(), less.most(), less.allowed(), less.rule())));
  }

  /** A parameter of a method, or a component of a record. */
  private record Part(String javaName, Type type, AnnotatedElement element) {

    static Part of(RecordComponent component) {
      return new Part(component.getName(), component.getGenericType(), component);
    }

    Column column() {
      return element.getAnnotation(Column.class);
    }

    List<Assumed> assumed() {
      return List.of(element.getAnnotationsByType(Assumed.class));
    }

    String saysWhich() {
      SaysWhich which = element.getAnnotation(SaysWhich.class);
      return which == null ? "" : which.value();
    }
  }

  private Argument argument(String owner, String prefix, Part part, Map<String, Limits> narrowed) {
    String text = index.getProperty(owner + ".param." + part.javaName());
    if (part.type() instanceof Class<?> type && type.isRecord()) {
      Class<? extends Record> thing = type.asSubclass(Record.class);
      String further = part.column() == null ? prefix : prefix + part.column().prefix();
      return new Argument.Thing(
          part.javaName(),
          text,
          thing,
          Arrays.stream(thing.getRecordComponents())
              .map(component -> argument(thing.getName(), further, Part.of(component), narrowed))
              .toList());
    }
    Column column = part.column();
    boolean isWord =
        part.type() instanceof ParameterizedType kind && kind.getRawType() == OneOf.class;
    String name = prefix + column.value();
    Limits limits = narrowed.getOrDefault(name, Columns.limits(column));
    return new Argument.Plain(
        new Parameter(
            part.javaName(),
            name,
            isWord ? null : Columns.unit(column),
            isWord ? Columns.options(part.type()) : null,
            column.preset(),
            limits,
            text + (limits.exist() ? ", " + limits.ends(Columns.unit(column)) : ""),
            part.assumed(),
            part.saysWhich()));
  }

  private static List<Result> results(Method method) {
    if (!method.getReturnType().isRecord() || method.getReturnType() == Check.class) {
      return List.of(result(method, method.getReturnType(), Function.identity()));
    }
    return Arrays.stream(method.getReturnType().getRecordComponents())
        .filter(component -> component.isAnnotationPresent(Column.class))
        .map(component -> result(component, component.getType(), answer -> part(component, answer)))
        .toList();
  }

  private static Result result(
      AnnotatedElement element, Class<?> type, Function<Object, Object> part) {
    Column column = element.getAnnotation(Column.class);
    boolean isWord = OneOf.class.isAssignableFrom(type);
    return new Result(
        column.value(),
        isWord ? null : Columns.unit(column),
        column.marked(),
        answer -> traced(part.apply(answer)));
  }

  private static Traced traced(Object part) {
    return part instanceof Check check ? check.ratio() : (Traced) part;
  }

  private static Object part(RecordComponent component, Object answer) {
    try {
      return component.getAccessor().invoke(answer);
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private Text text(String qualified) {
    return new Text(
        part(qualified, "summary"),
        part(qualified, "formula"),
        part(qualified, "limits"),
        part(qualified, "notes"),
        List.of(part(qualified, "example").split("\n")),
        part(qualified, "return"),
        part(qualified, "throws"),
        part(qualified, "source"));
  }

  private String part(String qualified, String part) {
    return index.getProperty(qualified + "." + part, "");
  }

  private static Class<?> load(String type) {
    try {
      return Class.forName(type);
    } catch (ClassNotFoundException stale) {
      throw new IllegalStateException("the index of functions is older than the classes", stale);
    }
  }

  private static String snakeCase(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
