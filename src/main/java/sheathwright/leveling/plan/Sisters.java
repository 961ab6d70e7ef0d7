package sheathwright.leveling.plan;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.DressedSizes;
import sheathwright.wood.LumberSize;

/** Sisters: straight lumber nailed to the side of a sagged rafter, set to a string line. */
public final class Sisters {

  private static final Source PARABOLA = Source.derived("parabola, deepest at mid-length");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);
  private static final Figure<Length> NO_INCHES = Figure.of(0, Units.INCH);
  private static final Figure<Pieces> NO_PIECES = Figure.of(0, Units.PIECE);

  private Sisters() {}

  /**
   * What sisters it takes to bring sagged rafters to a string line: their length, the stock to buy,
   * pieces and nails.
   *
   * <pre>
   * length = span × √(1 − tolerance ÷ sag) + 2 laps, at most the span
   * stock  = the next of 8, 10, 12, 14, 16, 18, 20 ft
   * nails  = rows × (⌈(length − 4 in) ÷ spacing⌉ + 1) × pieces
   * end offset = sag × (1 − (length ÷ span)²)
   * </pre>
   *
   * <p>Does not cover strength: a sister set to a string line does not by itself make a rafter
   * adequate. Cracked, cut or rotten rafters, trusses, and sags that still move are for a licensed
   * engineer before any work.
   *
   * <pre>{@code
   * sisterStock(in("1-5/8"), ft(12.0185), in("3/8"), in(24), pieces(18), SIZE_2X8, in(12), number(2)).stock() // 14' 0"
   * sisterStock(in("1-5/8"), ft(12.0185), in("3/8"), in(24), pieces(18), SIZE_2X8, in(12), number(2)).nails() // 468 nails
   * }</pre>
   *
   * @param sag greatest drop below the string, at mid-length, 0 in to 6 in
   * @param span bearing to bearing along the rafter, 2 ft to 40 ft
   * @param tolerance drop that may stay, 0 in to 2 in
   * @param lap how far the sister runs on beyond the drop, at each end, 0 in to 120 in
   * @param rafterCount rafters to sister, 0 to 500
   * @param sisterSize nominal size of the sister; its depth must be more than the sag, or it would
   *     not lie against the rafter
   * @param nailSpacing nail to nail in a row, 2 in to 48 in
   * @param nailRows rows of nails, 1 to 4
   * @return length and stock in feet, pieces, nails, end offset and near miss in inches; all zero
   *     if the sag is within the tolerance
   * @throws RefusedException if a number lies outside its range, or no stock up to 20 ft is long
   *     enough
   * @see "common practice, no source: straight stock set to a string line; the parabola is
   *     geometry"
   */
  @LibraryFunction
  public static SisterStock sisterStock(
      @Column("sag_in") Figure<Length> sag,
      @Column("span_ft") Figure<Length> span,
      @Column("tolerance_in") Figure<Length> tolerance,
      @Column("lap_in") Figure<Length> lap,
      @Column(value = "rafter_count", unit = "piece") Figure<Pieces> rafterCount,
      @Column(value = "sister_size", preset = "2x6") OneOf<LumberSize> sisterSize,
      @Column(value = "nail_spacing_in", preset = "12") Figure<Length> nailSpacing,
      @Column(value = "nail_rows", preset = "2") Figure<Ratio> nailRows) {
    var depth =
        DressedSizes.width(sisterSize.choice().argument("sister_size"))
            .as("sister_depth_in", Units.INCH);
    var measured =
        sag.within(
            "sag_in",
            Units.INCH,
            Limits.between(0, 6, "more is a structural repair: a licensed engineer decides"));
    var full =
        span.within(
            "span_ft", Units.FOOT, Limits.between(2, 40, "bearing to bearing along the rafter"));
    var left = tolerance.within("tolerance_in", Units.INCH, SisterRules.TOLERANCE);
    var overlap = lap.within("lap_in", Units.INCH, SisterRules.LAP);
    var rafters =
        rafterCount.within(
            "rafter_count", Units.PIECE, Limits.whole(0, 500, "the rafters that drop too far"));
    var spacing = nailSpacing.within("nail_spacing_in", Units.INCH, SisterRules.NAIL_SPACING);
    var rows = nailRows.within("nail_rows", Units.RATIO, SisterRules.NAIL_ROWS);
    // Every argument is held to its limits, also where the sag turns out to need nothing.
    var sound =
        Condition.all(
            measured.isLessThan(depth),
            full.isMoreThan(NO_LENGTH),
            left.isAtLeast(NO_INCHES),
            overlap.isAtLeast(NO_INCHES),
            rafters.isAtLeast(NO_PIECES),
            spacing.isMoreThan(NO_INCHES),
            rows.isMoreThan(NOTHING));
    var drop =
        measured
            .onlyIf(
                sound,
                "sag_in is %s, not less than the depth of a %s sister: set to the string it would not lie against the old rafter at mid-length; take a deeper one"
                    .formatted(measured, sisterSize.choice()))
            .as("drop_in", Units.INCH);

    Condition needed = drop.isMoreThan(left);
    var curved =
        Figure.choose(needed, ONE.minus(left.dividedBy(drop)), NOTHING)
            .as("curved_part", Units.RATIO, PARABOLA);
    var reach =
        full.times(curved.squareRoot())
            .in(Units.FOOT)
            .plus(TWO.times(overlap))
            .min(full)
            .as("reach_ft", Units.FOOT);
    var length = Figure.choose(needed, reach, NO_LENGTH).as("length_ft", Units.FOOT, PARABOLA);

    var stick = new SisterStick(needed, length);
    var stock = stick.stock(SisterStick.sold(stick.wanted()));
    var pieces = Figure.choose(needed, rafters, NO_PIECES).as("pieces", Units.PIECE);

    var nailsEach = stick.nails(stick.nailsWanted(rows, spacing));
    var nails = nailsEach.times(pieces).as("nails", Units.NAIL);

    var straight = length.dividedBy(full).in(Units.RATIO);
    var endOffset =
        Figure.choose(needed, drop.times(ONE.minus(straight.squared())).in(Units.INCH), NO_LENGTH)
            .as("end_offset_in", Units.INCH, PARABOLA);

    var shorter = stick.shorter(stock);
    var nearMiss = SisterStick.nearMiss(shorter, stick.lacking(shorter));
    return new SisterStock(length, stock, pieces, nails, endOffset, nearMiss);
  }
}
