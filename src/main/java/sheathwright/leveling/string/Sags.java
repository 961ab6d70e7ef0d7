package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How bad a sag is: against the span it hangs in, and against a straightedge. */
public final class Sags {

  private static final Figure<Length> NO_SAG = Figure.of(0, Units.INCH);
  private static final Figure<Length> ONE_INCH = Figure.of(1, Units.INCH);

  private Sags() {}

  /**
   * A sag as a fraction of its span, L/89, held against a fraction that is allowed.
   *
   * <pre>
   * span over sag = span ÷ sag
   * limit = span ÷ n
   * </pre>
   *
   * <p>Does not cover strength: a rafter may be straight and too weak. A sag that still moves, a
   * split rafter, or more than about 1 in in 8 ft is for a licensed engineer.
   *
   * <pre>{@code
   * sagFraction(SaggedSpan.sag(in("1-5/8")).span(ft(12.0185)), number(240)).spanOverSag() // 88.752
   * sagFraction(SaggedSpan.sag(in("1-5/8")).span(ft(12.0185)), number(240)).limit() // 0.6009 in
   * }</pre>
   *
   * @param rafter that sags
   * @param fraction the n of L/n, 60 to 1000
   * @return span over sag, or the words no sag; the sag allowed in inches; sag over limit; yes or
   *     no
   * @throws RefusedException if a number lies outside its range
   * @see "derived: arithmetic; L/240 and L/180 are the limits that span tables print for sag under
   *     load, from memory, and are taken here as a measure only"
   */
  @LibraryFunction(words = {"sagging", "dip", "flatness"})
  public static SagFraction sagFraction(
      SaggedSpan rafter, @Column(value = "fraction", preset = "240") Figure<Ratio> fraction) {
    var drop = rafter.sag();
    var full = rafter.span();
    var part =
        fraction.within("fraction", Units.RATIO, Limits.between(60, 1000, "240 and 180 are usual"));

    var sags = drop.isMoreThan(NO_SAG);
    var divisor = Figure.choose(sags, drop, ONE_INCH).as("divisor_in", Units.INCH);
    var quotient = full.dividedBy(divisor).as("quotient", Units.RATIO);
    var limit = full.dividedBy(part).as("sag_limit_in", Units.INCH, Source.ARITHMETIC);
    var check = Check.of("sag of the span", "sag_ratio", drop, limit);
    return new SagFraction(
        Figure.choose(sags, quotient, Figure.none("no sag", Units.RATIO))
            .as("span_over_sag", Units.RATIO),
        limit,
        check,
        check.ok().as("ok"));
  }

  /**
   * How far one place on a line lies below the straight line that joins two others: what a
   * straightedge laid on those two would show.
   *
   * <pre>
   * deviation = drop − (first drop + (place − first) ÷ (last − first) × (last drop − first drop))
   * </pre>
   *
   * <p>Does not cover which window along a rafter is the worst: a survey of the plane slides the
   * straightedge over all readings.
   *
   * <pre>{@code
   * chordDeviation(Straightedge.of(LinePlace.at(in(0)).drop(in("1/4")), LinePlace.at(in(120)).drop(in("3/4"))), LinePlace.at(in(60)).drop(in("7/8"))) // 3/8 in
   * }</pre>
   *
   * @param edge the straight line that joins two places
   * @param there a place between or beyond them
   * @return inches below the straight line, low positive
   * @throws RefusedException if a number lies outside its range, or the last end is not beyond the
   *     first
   * @see "derived: geometry"
   */
  @LibraryFunction(words = {"dip", "hump", "straightedge", "flatness"})
  @Column("deviation_in")
  public static Figure<Length> chordDeviation(Straightedge edge, LinePlace there) {
    var begin = edge.first();
    var end = edge.last();

    var chordLength =
        end.minus(begin)
            .onlyIf(
                end.isMoreThan(begin),
                "the last end, at %s, is not beyond the first, at %s; give the ends in order"
                    .formatted(end, begin))
            .as("chord_length_in", Units.INCH);
    var share = there.place().minus(begin).dividedBy(chordLength).as("share", Units.RATIO);
    var chord =
        edge.firstDrop()
            .plus(share.times(edge.lastDrop().minus(edge.firstDrop())))
            .as("chord_drop_in", Units.INCH);
    return there.drop().minus(chord).as("deviation_in", Units.INCH, Source.derived("geometry"));
  }
}
