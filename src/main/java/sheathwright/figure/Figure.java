package sheathwright.figure;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Step.Given.Role;

/**
 * A number that remembers: its unit, its name, how it was computed, and where it comes from. Each
 * operation computes the value and records itself in one step, so that the value, the printed
 * working and the spreadsheet formula cannot disagree.
 *
 * <p>A figure holds a value or a {@link Refusal}. A refused figure goes on remembering, and so does
 * everything computed from it; the refusal is raised when somebody asks for the value. That is what
 * lets both branches of a {@link #choose} be kept. Only a sum of unlike quantities, which could
 * never become a formula, is refused on the spot.
 */
public final class Figure<Q extends Quantity> implements Traced {

  /** What stands in the place of a number that nobody measured. */
  public static final String NOT_MEASURED = "not measured";

  private static final Figure<Quantity.Ratio> TWO = of(2, Units.RATIO);
  private static final Figure<Quantity.Ratio> THREE =
      constant("exponent_3", 3, Units.RATIO, Source.derived("cube")).symbol("3");

  private final String name;
  private final String symbol;
  private final double number;
  private final Refusal refusal;
  private final Unit<Q> unit;
  private final Step step;
  private final Source source;

  private Figure(
      String name,
      String symbol,
      double number,
      Refusal refusal,
      Unit<Q> unit,
      Step step,
      Source source) {
    this.name = name;
    this.symbol = symbol;
    this.number = number;
    this.unit = unit;
    this.step = step;
    this.source = source;
    this.refusal = Refusal.of(this, refusal);
  }

  // Where figures begin.

  /** A number said in passing. */
  public static <Q extends Quantity> Figure<Q> of(double number, Unit<Q> unit) {
    return given("", number, unit, new Step.Given(Role.LITERAL, Limits.NONE), Source.GIVEN);
  }

  /** A number that belongs to an equation or a table. */
  public static <Q extends Quantity> Figure<Q> constant(
      String name, double number, Unit<Q> unit, Source source) {
    return given(name, number, unit, new Step.Given(Role.CONSTANT, Limits.NONE), source);
  }

  /** A number that whoever holds the workbook may change, within limits. */
  public static <Q extends Quantity> Figure<Q> input(
      String name, double number, Unit<Q> unit, Limits limits, Source source) {
    return given(name, number, unit, new Step.Given(Role.INPUT, limits), source);
  }

  private static <Q extends Quantity> Figure<Q> given(
      String name, double number, Unit<Q> unit, Step.Given step, Source source) {
    Refusal refusal =
        !Double.isFinite(number)
            ? new Refusal("\"" + number + "\" is not a number that can be used")
            : step.limits().allow(number) ? null : step.limits().refusal(name, number, unit);
    return new Figure<>(name, "", number, refusal, unit, step, source);
  }

  static <Q extends Quantity> Figure<Q> lookedUp(
      double number, Refusal refusal, Unit<Q> unit, Step.LookedUp step, Source source) {
    return new Figure<>("", "", number, refusal, unit, step, source);
  }

  static <Q extends Quantity> Figure<Q> solved(
      String name, double number, Unit<Q> unit, Step.Solved step, Source source) {
    return new Figure<>(name, "", number, null, unit, step, source);
  }

  /**
   * No number, because there is none to give: {@code no limit}. It stands as these words in a cell
   * and leaves a blank in a table; nothing can be computed from it.
   */
  public static <Q extends Quantity> Figure<Q> none(String words, Unit<Q> unit) {
    Step given = new Step.Given(Role.LITERAL, Limits.NONE);
    return new Figure<>("", words, 0, Refusal.absence(words), unit, given, Source.ARITHMETIC);
  }

  /** A number that may be given and was not: nobody measured it. */
  public static <Q extends Quantity> Figure<Q> notMeasured(
      String name, Unit<Q> unit, Source source) {
    Step given = new Step.Given(Role.INPUT, Limits.NONE);
    return new Figure<>(name, "", 0, Refusal.absence(NOT_MEASURED), unit, given, source);
  }

  /** A number that has to be given and was not: it refuses by saying what would be right. */
  public static <Q extends Quantity> Figure<Q> missing(String name, Unit<Q> unit, Limits limits) {
    Step given = new Step.Given(Role.LITERAL, Limits.NONE);
    return new Figure<>(name, "", 0, limits.missing(name, unit), unit, given, Source.GIVEN);
  }

  static <Q extends Quantity> Figure<Q> gathered(
      double number, Refusal refusal, Unit<Q> unit, Step.Gathered step) {
    Refusal undefined =
        Double.isFinite(number)
            ? refusal
            : new Refusal(step.words(Working::symbol).text() + " has no value");
    return new Figure<>(
        "", "", undefined == null ? number : 0, undefined, unit, step, Source.ARITHMETIC);
  }

  // What figures can do.

  /** This and the other, in this unit. */
  public Figure<Q> plus(Figure<?> other) {
    return applied(Operator.PLUS, unit, this, like(other, "added to"));
  }

  /** This less the other, in this unit. */
  public Figure<Q> minus(Figure<?> other) {
    return applied(Operator.MINUS, unit, this, like(other, "taken from"));
  }

  /** The product, in the product of the units. */
  public Figure<?> times(Figure<?> other) {
    return applied(Operator.TIMES, unit.times(other.unit), this, other);
  }

  /** The quotient, in the quotient of the units; a zero below is refused. */
  public Figure<?> dividedBy(Figure<?> other) {
    if (other.refusal == null && other.number == 0) {
      Refusal zero =
          new Refusal(
              "%s cannot be divided by %s, which is zero"
                  .formatted(described(), other.described()));
      return made(Operator.DIVIDED_BY, unit.dividedBy(other.unit), 0, zero, List.of(this, other));
    }
    return applied(Operator.DIVIDED_BY, unit.dividedBy(other.unit), this, other);
  }

  /** This pure number raised to any power. */
  public Figure<Quantity.Ratio> power(Figure<Quantity.Ratio> exponent) {
    return applied(
        Operator.POWER, Units.RATIO, pure("raised to a power"), exponent.in(Units.RATIO));
  }

  /** This multiplied by itself. */
  public Figure<?> squared() {
    return applied(Operator.POWER, unit.raisedTo(2), this, TWO);
  }

  /** This cubed. */
  public Figure<?> cubed() {
    return applied(Operator.POWER, unit.raisedTo(3), this, THREE);
  }

  /** The square root; a negative number is refused. */
  public Figure<?> squareRoot() {
    Unit<?> root = rootUnit(2);
    return applied(Operator.SQUARE_ROOT, root, in(root.raisedTo(2)));
  }

  /** The cube root; a negative number is refused. */
  public Figure<?> cubeRoot() {
    Unit<?> root = rootUnit(3);
    return applied(Operator.ROOT, root, in(root.raisedTo(3)), THREE);
  }

  /** The common logarithm of this pure number; zero and less are refused. */
  public Figure<Quantity.Ratio> logarithm() {
    return applied(Operator.LOGARITHM, Units.RATIO, pure("given a logarithm"));
  }

  /** The angle whose tangent this pure number is, in radians. */
  public Figure<Quantity.Ratio> arctangent() {
    return applied(Operator.ARCTANGENT, Units.RATIO, pure("taken for a tangent"));
  }

  /** Whichever is less, in this unit. */
  public Figure<Q> min(Figure<Q> other) {
    return applied(Operator.LESSER, unit, this, like(other, "compared with"));
  }

  /** Whichever is more, in this unit. */
  public Figure<Q> max(Figure<Q> other) {
    return applied(Operator.GREATER, unit, this, like(other, "compared with"));
  }

  /** Up to the next whole one. */
  public Figure<Q> roundedUp() {
    return applied(Operator.ROUND_UP, unit, this);
  }

  /** Down to a whole one. */
  public Figure<Q> roundedDown() {
    return applied(Operator.ROUND_DOWN, unit, this);
  }

  /** Up to the next multiple of a step. */
  public Figure<Q> roundedUpTo(Figure<Q> step) {
    return dividedBy(step).typed(Units.RATIO).roundedUp().times(step).typed(unit);
  }

  /** To the nearest whole one, halves up. */
  public Figure<Q> rounded() {
    return applied(Operator.TO_WHOLE, unit, this);
  }

  /** Dollars to the nearest cent, halves up. */
  public Figure<Q> toCents() {
    return applied(Operator.TO_CENTS, unit, this);
  }

  /**
   * The one figure if the condition holds, else the other; both are kept, only the taken one can
   * refuse.
   */
  public static <Q extends Quantity> Figure<Q> choose(
      Condition when, Figure<Q> then, Figure<Q> otherwise) {
    Figure<Q> other = otherwise.in(then.unit);
    Step step = new Step.Chosen(when, then, other);
    Refusal undecided = when.refusal().orElse(null);
    Figure<Q> taken = undecided != null || when.holds() ? then : other;
    return new Figure<>(
        "",
        "",
        taken.number,
        undecided != null ? undecided : taken.refusal,
        then.unit,
        step,
        Source.ARITHMETIC);
  }

  /** Whether somebody measured it, where that may be left open. */
  public Condition isMeasured() {
    Figure<?> given = step.guard().<Figure<?>>map(Step.Guarded::argument).orElse(this);
    return Condition.measured(given);
  }

  /** Whether this is the other or less. */
  public Condition isAtMost(Figure<?> other) {
    return Condition.compared(Condition.Comparison.AT_MOST, this, like(other, "compared with"));
  }

  /** Whether this is less than the other. */
  public Condition isLessThan(Figure<?> other) {
    return Condition.compared(Condition.Comparison.LESS_THAN, this, like(other, "compared with"));
  }

  /** Whether this is the other or more. */
  public Condition isAtLeast(Figure<?> other) {
    return Condition.compared(Condition.Comparison.AT_LEAST, this, like(other, "compared with"));
  }

  /** Whether this is more than the other. */
  public Condition isMoreThan(Figure<?> other) {
    return Condition.compared(Condition.Comparison.MORE_THAN, this, like(other, "compared with"));
  }

  /** Whether the two are the same to 15 digits. */
  public Condition isTheSameAs(Figure<?> other) {
    return Condition.compared(Condition.Comparison.EQUAL_TO, this, like(other, "compared with"));
  }

  // What figures are called.

  /** The same quantity in another unit of its kind. */
  public <R extends Quantity> Figure<R> in(Unit<R> wanted) {
    return typed(wanted);
  }

  /** The result of this step, named, in its unit. */
  public <R extends Quantity> Figure<R> as(String newName, Unit<R> wanted) {
    return as(newName, wanted, source);
  }

  /** The result of this step, named, in its unit, with the rule that made it. */
  public <R extends Quantity> Figure<R> as(String newName, Unit<R> wanted, Source newSource) {
    Figure<R> result = typed(wanted);
    Step made = result.isNamed() ? new Step.Applied(Operator.SAME, List.of(result)) : result.step;
    return new Figure<>(newName, "", result.number, result.refusal, wanted, made, newSource);
  }

  /** The same figure, written by the equation's own letter in print. */
  public Figure<Q> symbol(String letter) {
    return new Figure<>(name, letter, number, refusal, unit, step, source);
  }

  /**
   * This argument under its parameter's name and unit, refused unless it lies within the limits. A
   * wider guard under the same name, or one that says more of whose it is, gives way, so that a
   * refusal tells the range that holds here.
   */
  public <R extends Quantity> Figure<R> within(String parameter, Unit<R> wanted, Limits limits) {
    if (step instanceof Step.Guarded wider
        && (name.equals(parameter) || name.endsWith("_" + parameter))
        && limits.lieWithin(wider.limits())
        && unit.equals(wanted)) {
      return wider.argument().within(name, wanted, limits).symbol(symbol);
    }
    Figure<R> argument = typed(wanted);
    Refusal outside =
        argument.refusal != null || limits.allow(argument.number)
            ? argument.refusal
            : limits.refusal(parameter, argument.number, wanted);
    return new Figure<>(
        parameter,
        "",
        argument.number,
        outside,
        wanted,
        new Step.Guarded(argument, limits),
        argument.source);
  }

  /** This pure number, taken as a count of things. */
  public <R extends Quantity> Figure<R> counting(Unit<R> things) {
    Figure<?> pure = pure("counted");
    Step made = new Step.Converted(pure, Factor.ONE);
    return new Figure<>("", "", pure.number, refusal, things, made, source);
  }

  /** This figure, refused where a condition does not hold. */
  public Figure<Q> onlyIf(Condition condition, String reason) {
    Refusal broken = refusal().or(condition::refusal).orElse(null);
    if (broken == null && !condition.holds()) {
      broken = new Refusal(reason);
    }
    Step made = new Step.Provided(this, condition);
    return new Figure<>("", "", number, broken, unit, made, source);
  }

  /** This figure once more, in a cell of its own. */
  Figure<Q> same() {
    return applied(Operator.SAME, unit, this);
  }

  /**
   * The same value as a fresh input: whoever reads on learns the number, not how it came about. One
   * beyond the limits is refused because of this figure; one that this figure refuses is raised.
   */
  public Figure<Q> restated(String newName, Limits limits, Source newSource) {
    Refusal outside =
        limits.allow(value()) ? null : Refusal.of(this, limits.refusal(newName, number, unit));
    Step given = new Step.Given(Role.INPUT, limits);
    return new Figure<>(newName, "", number, outside, unit, given, newSource);
  }

  // What figures tell.

  /** The number in this figure's unit; raises its refusal if there is none. */
  public double value() {
    if (refusal != null) {
      throw refusal.raised();
    }
    return number;
  }

  /** The unit that the number is in. */
  public Unit<Q> unit() {
    return unit;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public String symbol() {
    return !symbol.isEmpty()
        ? symbol
        : isNamed() ? Shown.inWords(name, unit) : Shown.with(unit, number);
  }

  @Override
  public Step step() {
    return step;
  }

  @Override
  public Source source() {
    return source;
  }

  @Override
  public Optional<Refusal> refusal() {
    return Optional.ofNullable(refusal);
  }

  @Override
  public String shown() {
    return isAbsent() ? refusal.reason() : Shown.with(unit, value());
  }

  @Override
  public String plain() {
    return isAbsent() ? "" : Shown.plain(value());
  }

  @Override
  public String toString() {
    return refusal == null || isAbsent() ? shown() : "refused: " + refusal.reason();
  }

  /** Whether it is that there is no number to give. */
  public boolean isAbsent() {
    return refusal != null && refusal.isAnswer();
  }

  double number() {
    return number;
  }

  /** By its name, or by its value if it has none. */
  String described() {
    boolean isConstant = step.isConstant();
    return isConstant
        ? symbol()
        : isNamed() ? name : refusal == null ? shown() : "a refused figure";
  }

  private Figure<?> like(Figure<?> other, String verb) {
    if (!other.unit.measuresTheSameAs(unit)) {
      throw Unlike.measures(other, verb, this);
    }
    return other.converted(unit);
  }

  private Figure<?> pure(String verb) {
    if (!unit.measuresTheSameAs(Units.RATIO)) {
      throw Unlike.toANumber(this, verb);
    }
    return converted(Units.RATIO);
  }

  private Unit<?> rootUnit(int degree) {
    if (!unit.dimension().hasRoot(degree)) {
      throw Unlike.root(this, degree);
    }
    return Units.named("root of " + unit.symbol(), Factor.ONE, unit.dimension().root(degree));
  }

  private <R extends Quantity> Figure<R> typed(Unit<R> wanted) {
    if (!wanted.measuresTheSameAs(unit)) {
      throw Unlike.unit(this, wanted);
    }
    return converted(wanted);
  }

  private <R extends Quantity> Figure<R> converted(Unit<R> wanted) {
    if (unit.equals(wanted)) {
      @SuppressWarnings("unchecked") // an equal unit is of the same kind
      Figure<R> same = (Figure<R>) this;
      return same;
    }
    Factor factor = unit.to(wanted);
    boolean onlyRelabeled = factor.equals(Factor.ONE) && !isNamed() && !step.isGiven();
    Step made = onlyRelabeled ? step : new Step.Converted(this, factor);
    double number = factor.applyTo(this.number);
    boolean isLost = refusal == null && !Double.isFinite(number);
    return new Figure<>(
        "",
        "",
        isLost ? 0 : number,
        isLost ? new Refusal(described() + " has no value in " + Unlike.said(wanted)) : refusal,
        wanted,
        made,
        source);
  }

  private static <R extends Quantity> Figure<R> applied(
      Operator operator, Unit<R> unit, Figure<?>... arguments) {
    List<Figure<?>> operands = List.of(arguments);
    for (Figure<?> operand : operands) {
      if (operand.refusal != null) {
        return made(operator, unit, 0, operand.refusal.passedOn(), operands);
      }
    }
    double number = operator.value(operands);
    Refusal undefined =
        Double.isFinite(number)
            ? null
            : new Refusal(
                operator
                        .words(
                            operands, operand -> Written.whole(((Figure<?>) operand).described()))
                        .text()
                    + " has no value");
    return made(operator, unit, undefined == null ? number : 0, undefined, operands);
  }

  private static <R extends Quantity> Figure<R> made(
      Operator operator, Unit<R> unit, double number, Refusal refusal, List<Figure<?>> operands) {
    return new Figure<>(
        "", "", number, refusal, unit, new Step.Applied(operator, operands), Source.ARITHMETIC);
  }
}
