package sheathwright.framing.nailed;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.sister.LineLoads;

/** How long a sister that ends short of the supports may be, and what it is good for. */
final class PartSisterLengths {

  static final Source PRYING =
      Source.derived(
          "two-beam model: the moment just inside the sister's end is up to a tenth more");
  static final Figure<Ratio> PRYING_FACTOR =
      Figure.constant("prying_factor", 0.9, Units.RATIO, PRYING).symbol("0.9");

  private static final Source SHORTEST =
      Source.derived("two-beam model: below this length nails that slip bring over too little");
  private static final Figure<Ratio> SHORTEST_PART =
      Figure.constant("shortest_stiffener", 0.6, Units.RATIO, SHORTEST).symbol("0.6");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private PartSisterLengths() {}

  static Condition isLongEnough(Figure<Length> length, LineLoads load) {
    return length.isAtLeast(SHORTEST_PART.times(load.span()));
  }

  static Figure<Length> withinSpan(Figure<Length> length, LineLoads load) {
    return length
        .onlyIf(
            length.isAtMost(load.span()),
            "the sister is longer than the span: if it bears on both plates it is a full-length one,"
                + " see sistered_rafter")
        .as("length_within_in", Units.INCH)
        .symbol("l");
  }

  static Figure<Length> stiffener(Figure<Length> length, LineLoads load) {
    return withinSpan(length, load)
        .onlyIf(
            isLongEnough(length, load),
            "a sister shorter than 0.6 of the span does not stiffen it, it is a splice and has to"
                + " carry everything by itself, see sister_splice")
        .as("stiffener_length_in", Units.INCH, SHORTEST)
        .symbol("l");
  }

  static Figure<Length> groupsFit(Figure<Length> length, Figure<Length> arm, Figure<Length> end) {
    return length
        .onlyIf(
            TWO.times(arm.plus(end)).isAtMost(length),
            "the four nail groups overlap at mid-length; use a shorter arm_in or a longer sister")
        .as("length_for_groups_in", Units.INCH)
        .symbol("l");
  }

  /** From a support to where a centered sister begins. */
  static Figure<Length> sisterEnd(Figure<Length> length, LineLoads load) {
    return load.span()
        .minus(length)
        .dividedBy(TWO)
        .as("sister_end_in", Units.INCH, NailGroups.GROUPS)
        .symbol("a");
  }

  /** A length that stands only where the old rafter is strong enough at its supports. */
  static Figure<Length> supported(Figure<Ratio> supportRatio, Figure<Length> length) {
    var ratio =
        supportRatio
            .within(
                "support_ratio",
                Units.RATIO,
                Limits.between(0, 20, "the greater of shear and bearing, from rafter_check"))
            .symbol("support ratio");
    return length
        .onlyIf(
            ratio.isAtMost(ONE),
            "the old rafter fails in shear or bearing at its supports, and a sister that stops short of"
                + " them takes no load off there: a licensed engineer decides; a sister would have to"
                + " bear on both plates")
        .as("length_between_supports_in", Units.INCH)
        .symbol(length.symbol());
  }
}
