package sheathwright.leveling.plan;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The stick that a sister is bought as, and the nails that go into it. */
final class SisterStick {

  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);
  private static final Figure<Length> NO_INCHES = Figure.of(0, Units.INCH);
  private static final Figure<Length> ONE_INCH = Figure.of(1, Units.INCH);
  private static final Figure<Length> STOCK_STEP = Figure.of(2, Units.FOOT);
  private static final Figure<Per<Nails, Pieces>> NO_NAILS = Figure.of(0, Units.NAILS_PER_PIECE);
  private static final Figure<Length> SHORTEST_STOCK =
      Figure.constant("shortest_stock_ft", 8, Units.FOOT, Source.COMMON_PRACTICE).symbol("8 ft");
  private static final Figure<Length> LONGEST_STOCK =
      Figure.constant("longest_stock_ft", 20, Units.FOOT, Source.COMMON_PRACTICE).symbol("20 ft");
  private static final String SPLICE = "splice it to an engineer's detail";
  private static final Figure<Length> NAIL_END_DISTANCES =
      Figure.constant("nail_end_distances_in", 4, Units.INCH, Source.COMMON_PRACTICE)
          .symbol("4 in");

  private final Condition needed;
  private final Figure<Length> length;

  /** A sister of this length in feet, where one is needed. */
  SisterStick(Condition needed, Figure<Length> length) {
    this.needed = needed;
    this.length = length;
  }

  /** The next stock length up, however long. */
  Figure<Length> wanted() {
    return SHORTEST_STOCK.max(length.roundedUpTo(STOCK_STEP)).as("stock_needed_ft", Units.FOOT);
  }

  /** The same, refused where it is longer than the longest that is sold. */
  static Figure<Length> sold(Figure<Length> wanted) {
    return wanted.within(
        "stock_ft", Units.FOOT, Limits.between(8, 20, "the longest stock; " + SPLICE));
  }

  /** The same for one line of a list, where limits have no room above the column. */
  static Figure<Length> soldInAList(Figure<Length> wanted) {
    return wanted
        .onlyIf(
            wanted.isAtMost(LONGEST_STOCK),
            "a sister of %s is longer than any stick; %s".formatted(wanted, SPLICE))
        .as("stock_sold_ft", Units.FOOT);
  }

  /** The stock to buy, of what is needed. */
  Figure<Length> stock(Figure<Length> sold) {
    return Figure.choose(needed, sold, NO_LENGTH)
        .as("stock_ft", Units.FOOT, Source.COMMON_PRACTICE);
  }

  /** Nails in one sister of this length. */
  Figure<Per<Nails, Pieces>> nailsWanted(Figure<Ratio> rows, Figure<Length> spacing) {
    return rows.times(
            length
                .minus(NAIL_END_DISTANCES)
                .max(NO_INCHES)
                .dividedBy(spacing)
                .in(Units.RATIO)
                .roundedUp()
                .plus(ONE))
        .in(Units.RATIO)
        .counting(Units.NAILS_PER_PIECE);
  }

  /** The same where a sister is needed. */
  Figure<Per<Nails, Pieces>> nails(Figure<Per<Nails, Pieces>> wanted) {
    return Figure.choose(needed, wanted, NO_NAILS)
        .as("nails_each", Units.NAILS_PER_PIECE, Source.COMMON_PRACTICE);
  }

  /** The stock that is one step shorter. */
  Figure<Length> shorter(Figure<Length> stock) {
    return stock.minus(STOCK_STEP).as("next_shorter_ft", Units.FOOT);
  }

  /** What a stick of that length lacks. */
  Figure<Length> lacking(Figure<Length> shorter) {
    return length.minus(shorter).as("lacking_in", Units.INCH);
  }

  /** What it lacks if that is under an inch, and if such a stick is sold. */
  static Figure<Length> nearMiss(Figure<Length> shorter, Figure<Length> lacking) {
    var isNear = Condition.all(lacking.isLessThan(ONE_INCH), shorter.isAtLeast(SHORTEST_STOCK));
    return Figure.choose(isNear, lacking, NO_LENGTH).as("near_miss_in", Units.INCH);
  }
}
