package sheathwright.figure;

import java.util.Optional;
import sheathwright.figure.Quantity.Ratio;

/**
 * A demand held against a capacity.
 *
 * @param what what is checked, in words
 * @param demand what is asked of it
 * @param capacity what it can give
 * @param ratio demand divided by capacity
 * @param ok whether the ratio is at most one
 * @param look what has to be known before it can be made, where that is not a matter of course
 */
public record Check(
    String what,
    Figure<?> demand,
    Figure<?> capacity,
    Figure<Ratio> ratio,
    Condition ok,
    Optional<Look> look) {

  /**
   * Whether anybody has looked at what a check is of.
   *
   * @param isDone whether enough is known
   * @param what would have to be looked at or given, in words
   */
  public record Look(Condition isDone, String what) {

    private <Q extends Quantity> Figure<Q> shown(String name, Figure<Q> number) {
      String cell = name + (number.unit().suffix().isEmpty() ? "" : "_" + number.unit().suffix());
      return Figure.choose(isDone, number, Figure.none(NOT_LOOKED, number.unit()))
          .as(cell, number.unit(), number.source());
    }

    /** Why a check cannot be made; nothing if it can. */
    private Optional<String> missing() {
      return isDone
          .refusal()
          .map(Refusal::reason)
          .or(() -> isDone.holds() ? Optional.empty() : Optional.of(what));
    }
  }

  /** What a check comes to as it is now; a cell keeps the live formula. */
  public sealed interface Outcome {

    /** In a word or few, as the prompt says it. */
    String words();

    /** Whether it is known to hold: what nobody looked at does not. */
    default boolean isSound() {
      return this instanceof Holds;
    }
  }

  /** The capacity is enough. */
  public record Holds(Check check) implements Outcome {

    @Override
    public String words() {
      return "ok";
    }
  }

  /** The demand is more than the capacity. */
  public record Fails(Check check) implements Outcome {

    @Override
    public String words() {
      return "NOT ok";
    }
  }

  /**
   * Nobody can say, because something is not known.
   *
   * @param why what is not known, and what would have to be looked at or given
   */
  public record NotLooked(Check check, String why) implements Outcome {

    @Override
    public String words() {
      return NOT_LOOKED + ": " + why;
    }
  }

  private static final String NOT_LOOKED = "not looked at";
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> NO_RATIO = Figure.none("none allowed", Units.RATIO);

  /** A check of what is known. */
  public Check(
      String what, Figure<?> demand, Figure<?> capacity, Figure<Ratio> ratio, Condition ok) {
    this(what, demand, capacity, ratio, ok, Optional.empty());
  }

  /** The check of a demand against a capacity, its ratio under a name. */
  public static Check of(String what, String ratioName, Figure<?> demand, Figure<?> capacity) {
    Figure<Ratio> ratio = demand.dividedBy(capacity).as(ratioName, Units.RATIO, Source.ARITHMETIC);
    return new Check(what, demand, capacity, ratio, ratio.isAtMost(ONE));
  }

  /** The check of something of which there may be none. */
  public static Check noneOf(String what, Figure<Ratio> count) {
    return new Check(what, count, NONE, NO_RATIO, count.isAtMost(NONE));
  }

  /**
   * The check of what is there against what is asked for, made only once somebody has looked: until
   * then it shows no numbers.
   *
   * @param name begins the names of its cells
   * @param demand a number also where too little is known, as if it were usual
   * @param there the same
   */
  public static <D extends Quantity, Q extends Quantity> Check onceLooked(
      String what, String name, Figure<D> demand, Figure<Q> there, Look look) {
    Figure<Ratio> part =
        Figure.choose(
                there.isMoreThan(Figure.of(0, there.unit())),
                demand.dividedBy(there).in(Units.RATIO),
                Figure.none("nothing there", Units.RATIO))
            .as(name + "_part_used", Units.RATIO, Source.ARITHMETIC);
    return new Check(
        what,
        look.shown(name + "_asked", demand),
        look.shown(name + "_there", there),
        look.shown(name + "_ratio", part),
        demand.isAtMost(there),
        Optional.of(look));
  }

  /** A check that nobody can make with what is known, whatever else is said. */
  public static Check neverLooked(String what, String why) {
    Figure<Ratio> nothing = NONE.onlyIf(Choice.literal(YesNo.NO).is(YesNo.YES), why);
    return new Check(what, nothing, nothing, nothing, nothing.isAtMost(NONE));
  }

  /** The same, made only once somebody has looked. */
  public Check once(Look looked) {
    return new Check(what, demand, capacity, ratio, ok, Optional.of(looked));
  }

  /** What it comes to as it is now. */
  public Outcome outcome() {
    Optional<String> unknown =
        look.flatMap(Look::missing).or(() -> ok.refusal().map(Refusal::reason));
    return unknown
        .<Outcome>map(why -> new NotLooked(this, why))
        .orElseGet(() -> ok.holds() ? new Holds(this) : new Fails(this));
  }

  /** Whether a cell can follow it; what is refused as it stands cannot be said later. */
  public boolean isLive() {
    return ok.refusal().isEmpty();
  }

  /** One while nobody has looked, else nothing; no such count where looking is not asked for. */
  public Optional<Figure<Ratio>> unmade() {
    return look.map(
        asked ->
            Figure.choose(asked.isDone(), NONE, ONE)
                .as(cellName() + "_not_looked_at", Units.RATIO, Source.ARITHMETIC));
  }

  private String cellName() {
    return (ratio.isNamed() ? ratio : demand).name();
  }

  /** That it holds, or that nobody has looked. */
  public Condition isNotBroken() {
    return unmade().map(open -> Condition.any(open.isAtLeast(ONE), ok)).orElse(ok);
  }

  /** The same in a cell: a word for what holds and for what does not, or that nobody has looked. */
  public Choice<String> verdict(Choice<String> holding, String otherwise) {
    String name = cellName();
    Choice<String> made =
        Choice.choose(ok, holding, Choice.literal(otherwise))
            .as(name + "_verdict", Source.ARITHMETIC);
    return look.map(
            asked ->
                Choice.choose(asked.isDone(), made, Choice.literal(NOT_LOOKED))
                    .as(name + "_verdict_once_looked", Source.ARITHMETIC))
        .orElse(made);
  }

  @Override
  public String toString() {
    return "%s: %s of %s, ratio %s, %s".formatted(what, demand, capacity, ratio, outcome().words());
  }
}
