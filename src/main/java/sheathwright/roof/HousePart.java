package sheathwright.roof;

import java.util.List;
import java.util.Locale;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.RefusedException;

/**
 * What stands on a side of a house's roof, in plan.
 *
 * @param kind what it is
 * @param side the side whose slope it stands on
 * @param at from the left corner of that side, as one looks up the slope
 * @param from from the eave; nothing where it begins at the eave
 * @param width along the eave
 * @param depth out from the eave, or back from where it begins
 */
record HousePart(
    Kind kind,
    HouseSide side,
    Figure<Length> at,
    Figure<Length> from,
    Figure<Length> width,
    Figure<Length> depth) {

  /** What can stand on a roof. */
  enum Kind {
    /** Gabled, its ridge square to the body's, its eaves at the body's height. */
    WING,
    /** The slope carried on beyond the eave. */
    PORCH,
    /** Gabled, its front wall on the slope. */
    DORMER,
    /** A rectangle without deck. */
    CHIMNEY
  }

  /** Whether it has a ridge, eaves and valleys of its own. */
  boolean isGabled() {
    return kind == Kind.WING || kind == Kind.DORMER;
  }

  /** Whether it changes the eave. */
  boolean isAtTheEave() {
    return kind == Kind.WING || kind == Kind.PORCH;
  }

  /** Whether it stands on one of the short sides. */
  boolean isAtAnEnd() {
    return side == HouseSide.LEFT || side == HouseSide.RIGHT;
  }

  String word() {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  /** Below nothing a chimney would add deck, and a porch take some off. */
  void refuseBelowNothing() {
    for (Figure<Length> each : List.of(at, from, width, depth)) {
      if (House.feet(each) < 0) {
        throw new RefusedException(
            "a measure of the %s is %s, and none is less than 0; measure from the left corner of its side and from the eave"
                .formatted(word(), each),
            List.of(each));
      }
    }
  }

  /** Where it begins and ends along the eave, in feet. */
  double left() {
    return House.feet(at);
  }

  double right() {
    return House.feet(at) + House.feet(width);
  }
}
