package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What a string over a roof plane tells, and how far the string itself hangs. */
public final class StringLines {

  private static final Source HANGING = Source.derived("a tight string hangs in a parabola");
  static final Limits LENGTH = Limits.between(1, 200, "from block to block");
  static final Limits WEIGHT = Limits.between(0, 1, "0.0015 is a thin line");
  static final Limits TENSION = Limits.between(1, 500, "20 is a hard pull");
  static final Limits BLOCK = Limits.between(0, 12, "3/4 is usual");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private StringLines() {}

  /**
   * How far a string pulled tight between two blocks hangs below the straight line, at one place.
   *
   * <pre>
   * string sag = w × place × (length − place) ÷ (2 × T), which is w L² ÷ (8 T) at mid-length
   * </pre>
   *
   * <p>Does not cover wind, a wet line, or a string that touches the roof between its blocks.
   *
   * <pre>{@code
   * stringSag(ft(20), ft(10), lbPerFt(0.0015), lb(20)) // 0.045 in
   * }</pre>
   *
   * @param length from block to block, 1 ft to 200 ft
   * @param place from one block, 0 ft to 200 ft, at most the length
   * @param lineWeight of the string, 0 lb/ft to 1 lb/ft
   * @param tension that it is pulled with, 1 lb to 500 lb
   * @return inches below the straight line, zero at the blocks
   * @throws RefusedException if a number lies outside its range, or the place lies beyond the
   *     string's end
   * @see "derived: statics of a tight string; line weight and tension are common practice, no
   *     source: weigh your own line"
   */
  @LibraryFunction
  @Column("string_sag_in")
  public static Figure<Length> stringSag(
      @Column("string_ft") Figure<Length> length,
      @Column("place_ft") Figure<Length> place,
      @Column(value = "line_lb_per_ft", preset = "0.0015") Figure<LineForce> lineWeight,
      @Column(value = "tension_lb", preset = "20") Figure<Force> tension) {
    var full = length.within("string_ft", Units.FOOT, LENGTH);
    var along = place.within("place_ft", Units.FOOT, Limits.between(0, 200, "from one block"));
    var weight = lineWeight.within("line_lb_per_ft", Units.POUND_PER_FOOT, WEIGHT);
    var pull = tension.within("tension_lb", Units.POUND, TENSION);

    var on =
        along
            .onlyIf(
                along.isAtMost(full),
                "the string ends at %s, before the place at %s".formatted(full, along))
            .as("on_the_string_ft", Units.FOOT);
    return sag(full, on, weight, pull).as("string_sag_in", Units.INCH, HANGING);
  }

  /** The hang of a string whose numbers have been held to their limits. */
  static Figure<?> sag(
      Figure<Length> length, Figure<Length> place, Figure<LineForce> weight, Figure<Force> pull) {
    return weight.times(place).times(length.minus(place)).dividedBy(TWO.times(pull));
  }

  /**
   * How far the wood lies below the straight line between the string's blocks, from what is read
   * between string and wood.
   *
   * <pre>
   * drop = reading − block + string sag
   * </pre>
   *
   * <p>Does not cover blocks of two heights, or a string that touches the roof. A negative drop is
   * wood that stands high.
   *
   * <pre>{@code
   * dropBelowString(in("2-1/8"), in("3/4"), in(0)) // 1-3/8 in
   * }</pre>
   *
   * @param reading string to wood, 0 in to 24 in
   * @param block height of the two blocks under the string, 0 in to 12 in
   * @param stringSag how far the string itself hangs at that place, 0 in to 3 in
   * @return inches below the line, low positive
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: string-line method"
   */
  @LibraryFunction
  @Column("drop_in")
  public static Figure<Length> dropBelowString(
      @Column("reading_in") Figure<Length> reading,
      @Column(value = "block_in", preset = "3/4") Figure<Length> block,
      @Column(value = "string_sag_in", preset = "0") Figure<Length> stringSag) {
    var read =
        reading.within("reading_in", Units.INCH, Limits.between(0, 24, "from string to wood"));
    var under = block.within("block_in", Units.INCH, BLOCK);
    var hang =
        stringSag.within(
            "string_sag_in", Units.INCH, Limits.between(0, 3, "pull a slack string tighter"));
    return drop(read, under, hang).as("drop_in", Units.INCH, Source.COMMON_PRACTICE);
  }

  /** The drop from numbers that have been held to their limits. */
  static Figure<Length> drop(
      Figure<Length> reading, Figure<Length> block, Figure<Length> stringSag) {
    return reading.minus(block).plus(stringSag);
  }
}
