package sheathwright.catalog;

import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity;
import sheathwright.figure.Step;
import sheathwright.figure.Traced;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;

/**
 * The columns of one kind of thing: a record whose parts stand in tables. What a part is called,
 * its unit, its range and its preset are written at the part, once; the record's constructor lets
 * its parts through here, so that no thing exists with a wrong one and no function checks again.
 */
public final class Columns {

  private static final ClassValue<Columns> READ =
      new ClassValue<>() {
        @Override
        protected Columns computeValue(Class<?> thing) {
          return new Columns(thing.asSubclass(Record.class));
        }
      };

  private final Class<? extends Record> thing;
  private final Map<String, RecordComponent> components;
  private final Map<String, Numbered> numbered;
  private final String whose;

  /** What a part's column says of its numbers, read once. */
  private record Numbered(Column column, Limits limits, Unit<?> unit) {

    Numbered(Column column) {
      this(column, Columns.limits(column), Columns.unit(column));
    }
  }

  private Columns(Class<? extends Record> thing) {
    this.thing = thing;
    this.whose = "";
    this.numbered = new ConcurrentHashMap<>();
    this.components = new LinkedHashMap<>();
    for (RecordComponent component : thing.getRecordComponents()) {
      components.put(component.getName(), component);
    }
  }

  private Columns(Columns same, String whose) {
    this.thing = same.thing;
    this.components = same.components;
    this.numbered = same.numbered;
    this.whose = whose;
  }

  /** The columns of a thing. */
  public static Columns of(Class<? extends Record> thing) {
    return READ.get(thing);
  }

  /**
   * The same columns where a function tells things apart by whose they are: each name is begun by
   * that word, and each letter of an equation ended by it. A part that the thing has let through
   * already only changes its name.
   */
  public Columns of(String owner) {
    return new Columns(this, owner);
  }

  /** What a part is called in tables. */
  public String name(String part) {
    return column(part).value();
  }

  /** The unit of a part's numbers; nothing for a word. */
  public Optional<Unit<?>> unit(String part) {
    return options(part).isPresent() ? Optional.empty() : Optional.of(unit(column(part)));
  }

  /** The enum of a part's words; nothing for a number. */
  public Optional<Class<? extends Enum<?>>> options(String part) {
    Type type = components.get(part).getGenericType();
    boolean isWord = type instanceof ParameterizedType kind && kind.getRawType() == OneOf.class;
    return isWord ? Optional.of(options(type)) : Optional.empty();
  }

  /** The numbers that a part may have. */
  public Limits limits(String part) {
    return limits(column(part));
  }

  /**
   * A number for a part of the thing, let through because it lies within the part's limits.
   *
   * @param part the part, as the record calls it
   * @param given the number; null is the part's preset, and where it has none, a figure that
   *     refuses because it is missing
   */
  public <Q extends Quantity> Figure<Q> let(String part, Figure<Q> given) {
    Numbered its = numbered.computeIfAbsent(part, each -> new Numbered(column(each)));
    Column column = its.column();
    Limits limits = its.limits();
    @SuppressWarnings("unchecked") // a part's column is in a unit of the part's own quantity
    Unit<Q> unit = (Unit<Q>) its.unit();
    if (given == null && column.preset().isEmpty()) {
      return Figure.missing(named(column), unit, limits);
    }
    Figure<?> argument = given == null ? preset(column, unit) : given;
    Optional<Step.Guarded> same =
        argument.step().guard().filter(guard -> guard.limits().equals(limits));
    if (same.isPresent()) {
      if (whose.isEmpty()) {
        return given;
      }
      argument = same.get().argument();
    }
    return argument.within(nameOf(argument, column), unit, limits).symbol(symbol(column));
  }

  private static Figure<?> preset(Column column, Unit<?> unit) {
    return column.allowed() == Limits.Kind.IF_MEASURED
        ? Figure.none(column.preset(), unit)
        : Figure.of(Numbers.read(column.preset(), unit), unit);
  }

  /**
   * A word for a part of the thing.
   *
   * @param part the part, as the record calls it
   * @param given the word; null is the part's preset, and where it has none, a word that refuses
   *     because it is missing
   */
  public <E> Choice<E> let(String part, OneOf<E> given) {
    Column column = column(part);
    if (given != null) {
      Choice<E> word = given.choice().argument(named(column));
      return isLetThrough(word, column) ? word.as(named(column)) : word;
    }
    Class<? extends Enum<?>> words = options(components.get(part).getGenericType());
    if (column.preset().isEmpty()) {
      return Choice.missing(named(column), words);
    }
    @SuppressWarnings("unchecked") // the part's words are those of its type
    E preset = (E) Parameter.option(column.preset(), words).orElseThrow();
    return Choice.literal(preset).argument(named(column));
  }

  Constructor<?> constructor() throws NoSuchMethodException {
    return thing.getDeclaredConstructor(
        Arrays.stream(thing.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new));
  }

  private Column column(String part) {
    return Optional.ofNullable(components.get(part))
        .map(component -> component.getAnnotation(Column.class))
        .orElseThrow(() -> new IllegalArgumentException(thing + " has no column for " + part));
  }

  /** An input keeps its own name where that says more than the column: whose size it is. */
  private String nameOf(Traced argument, Column column) {
    boolean saysMore = argument.step().isGiven() && argument.name().endsWith("_" + column.value());
    return saysMore ? argument.name() : named(column);
  }

  private String named(Column column) {
    return whose.isEmpty() ? column.value() : whose + "_" + column.value();
  }

  private String symbol(Column column) {
    return whose.isEmpty() || column.symbol().isEmpty()
        ? column.symbol()
        : column.symbol() + "_" + whose;
  }

  /** Whether a word said in passing has been given the column's name, and no owner's yet. */
  private static boolean isLetThrough(Choice<?> word, Column column) {
    return word.step().isLiteral() && word.name().equals(column.value());
  }

  static Limits limits(Column column) {
    return new Limits(column.least(), column.most(), column.allowed(), column.rule());
  }

  static Unit<?> unit(Column column) {
    return column.unit().isEmpty()
        ? Units.endingOf(column.value())
        : Units.written(column.unit()).orElseThrow();
  }

  @SuppressWarnings("unchecked") // a OneOf is always of an enum where it has a column
  static Class<? extends Enum<?>> options(Type type) {
    return (Class<? extends Enum<?>>) ((ParameterizedType) type).getActualTypeArguments()[0];
  }
}
