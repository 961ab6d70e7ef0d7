package sheathwright.leveling.string;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
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
   * sagFraction(in("1-5/8"), ft(12.0185), number(240)).spanOverSag() // 88.752
   * sagFraction(in("1-5/8"), ft(12.0185), number(240)).limit() // 0.6009 in
   * }</pre>
   *
   * @param sag greatest drop below the string, 0 in to 24 in
   * @param span bearing to bearing along the rafter, 2 ft to 40 ft
   * @param fraction the n of L/n, 60 to 1000
   * @return span over sag, or the words no sag; the sag allowed in inches; sag over limit; yes or
   *     no
   * @throws RefusedException if a number lies outside its range
   * @see "derived: arithmetic; L/240 and L/180 are the limits that span tables print for sag under
   *     load, from memory, and are taken here as a measure only"
   */
  @LibraryFunction
  public static SagFraction sagFraction(
      @Column("sag_in") Figure<Length> sag,
      @Column("span_ft") Figure<Length> span,
      @Column(value = "fraction", preset = "240") Figure<Ratio> fraction) {
    var drop = sag.within("sag_in", Units.INCH, Limits.between(0, 24, "low is positive"));
    var full =
        span.within(
            "span_ft", Units.FOOT, Limits.between(2, 40, "bearing to bearing along the rafter"));
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
   * chordDeviation(in(0), in("1/4"), in(120), in("3/4"), in(60), in("7/8")) // 3/8 in
   * }</pre>
   *
   * @param first place of the first end, -1200 in to 2400 in
   * @param firstDrop drop there, low positive, -24 in to 24 in
   * @param last place of the last end, -1200 in to 2400 in, beyond the first
   * @param lastDrop drop there, low positive, -24 in to 24 in
   * @param place place between or beyond them, -1200 in to 2400 in
   * @param drop drop there, low positive, -24 in to 24 in
   * @return inches below the straight line, low positive
   * @throws RefusedException if a number lies outside its range, or the last end is not beyond the
   *     first
   * @see "derived: geometry"
   */
  @LibraryFunction
  @Column("deviation_in")
  public static Figure<Length> chordDeviation(
      @Column("first_in") Figure<Length> first,
      @Column("first_drop_in") Figure<Length> firstDrop,
      @Column("last_in") Figure<Length> last,
      @Column("last_drop_in") Figure<Length> lastDrop,
      @Column("place_in") Figure<Length> place,
      @Column("drop_in") Figure<Length> drop) {
    var begin = along(first, "first_in");
    var end = along(last, "last_in");
    var there = along(place, "place_in");
    var beginDrop = fall(firstDrop, "first_drop_in");
    var endDrop = fall(lastDrop, "last_drop_in");
    var fall = fall(drop, "drop_in");

    var chordLength =
        end.minus(begin)
            .onlyIf(
                end.isMoreThan(begin),
                "the last end, at %s, is not beyond the first, at %s; give the ends in order"
                    .formatted(end, begin))
            .as("chord_length_in", Units.INCH);
    var share = there.minus(begin).dividedBy(chordLength).as("share", Units.RATIO);
    var chord =
        beginDrop.plus(share.times(endDrop.minus(beginDrop))).as("chord_drop_in", Units.INCH);
    return fall.minus(chord).as("deviation_in", Units.INCH, Source.derived("geometry"));
  }

  private static Figure<Length> along(Figure<Length> place, String name) {
    return place.within(name, Units.INCH, Limits.between(-1200, 2400, "along one line"));
  }

  private static Figure<Length> fall(Figure<Length> drop, String name) {
    return drop.within(name, Units.INCH, Limits.between(-24, 24, "low is positive"));
  }
}
