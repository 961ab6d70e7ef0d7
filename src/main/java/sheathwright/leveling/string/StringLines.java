package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What a string over a roof plane tells, and how far the string itself hangs. */
public final class StringLines {

  private static final Source HANGING = Source.derived("a tight string hangs in a parabola");
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
   * stringSag(TightString.length(ft(20)), ft(10)) // 0.045 in
   * }</pre>
   *
   * @param string between its blocks
   * @param place from one block, 0 ft to 200 ft, at most the length
   * @return inches below the straight line, zero at the blocks
   * @throws RefusedException if a number lies outside its range, or the place lies beyond the
   *     string's end
   * @see "derived: statics of a tight string; line weight and tension are common practice, no
   *     source: weigh your own line"
   */
  @LibraryFunction(words = {"string line", "stringline"})
  @Column("string_sag_in")
  public static Figure<Length> stringSag(
      TightString string, @Column("place_ft") Figure<Length> place) {
    var full = string.length();
    var along = place.within("place_ft", Units.FOOT, Limits.between(0, 200, "from one block"));
    var on =
        along
            .onlyIf(
                along.isAtMost(full),
                "the string ends at %s, before the place at %s".formatted(full, along))
            .as("on_the_string_ft", Units.FOOT);
    return sag(full, on, string.weight(), string.tension())
        .as("string_sag_in", Units.INCH, HANGING);
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
   * dropBelowString(RawReading.of(in("2-1/8"))) // 1-3/8 in
   * }</pre>
   *
   * @param reading under the string
   * @return inches below the line, low positive
   * @throws RefusedException if a number lies outside its range
   * @see "common practice, no source: string-line method"
   */
  @LibraryFunction(words = {"string line", "stringline", "chalk line"})
  @Column("drop_in")
  public static Figure<Length> dropBelowString(RawReading reading) {
    return drop(reading.reading(), reading.block(), reading.stringSag())
        .as("drop_in", Units.INCH, Source.COMMON_PRACTICE);
  }

  /** The drop from numbers that have been held to their limits. */
  static Figure<Length> drop(
      Figure<Length> reading, Figure<Length> block, Figure<Length> stringSag) {
    return reading.minus(block).plus(stringSag);
  }
}
