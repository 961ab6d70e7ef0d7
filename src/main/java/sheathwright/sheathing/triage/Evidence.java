package sheathwright.sheathing.triage;

import sheathwright.figure.Choice;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;

/**
 * A number that may not have been measured, held against another that may not be known.
 *
 * @param isThere whether both are known
 * @param measured what was measured; 0 where it was not
 * @param limit what it is held against; 0 where that is not known
 */
record Evidence<Q extends Quantity>(Choice<YesNo> isThere, Figure<Q> measured, Figure<Q> limit) {

  private static final Figure<Ratio> NONE = Figure.of(0, Units.RATIO);
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);

  /** Both may be left open. */
  static <Q extends Quantity> Evidence<Q> of(String name, Figure<Q> measured, Figure<Q> wanted) {
    return new Evidence<>(
        Condition.all(measured.isMeasured(), wanted.isMeasured()).as(name + "_measured"),
        orNone(name + "_there", measured),
        orNone(name + "_wanted", wanted));
  }

  /** Held against a limit that is always known. */
  static <Q extends Quantity> Evidence<Q> within(String name, Figure<Q> measured, Figure<Q> limit) {
    return new Evidence<>(
        measured.isMeasured().as(name + "_measured"), orNone(name + "_there", measured), limit);
  }

  private static <Q extends Quantity> Figure<Q> orNone(String name, Figure<Q> figure) {
    return Figure.choose(figure.isMeasured(), figure, Figure.of(0, figure.unit()))
        .as(name, figure.unit());
  }

  /** It is known to lie above its limit. */
  Condition isAbove() {
    return Condition.all(isKnown(), measured.isMoreThan(limit));
  }

  /** It is known to lie at its limit or below. */
  Condition isAtMost() {
    return Condition.all(isKnown(), measured.isAtMost(limit));
  }

  /** It is known to lie below its limit. */
  Condition isBelow() {
    return Condition.all(isKnown(), measured.isLessThan(limit));
  }

  Condition isKnown() {
    return isThere.is(YesNo.YES);
  }

  Condition isOpen() {
    return isThere.is(YesNo.NO);
  }

  /** One, if it is known. */
  Figure<Ratio> counted() {
    return counted(isThere.name() + "_count", isKnown());
  }

  /** One, if this holds. */
  static Figure<Ratio> counted(String name, Condition condition) {
    return Figure.choose(condition, ONE, NONE).as(name, Units.RATIO);
  }
}
