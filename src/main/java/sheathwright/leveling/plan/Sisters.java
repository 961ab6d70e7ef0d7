package sheathwright.leveling.plan;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.catalog.Marked;
import sheathwright.catalog.Narrowed;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.leveling.string.SaggedSpan;
import sheathwright.wood.DressedSizes;

/** Sisters: straight lumber nailed to the side of a sagged rafter, set to a string line. */
public final class Sisters {

  private static final Source PARABOLA = Source.derived("parabola, deepest at mid-length");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> NOTHING = Figure.of(0, Units.RATIO);
  private static final Figure<Length> NO_LENGTH = Figure.of(0, Units.FOOT);
  private static final Figure<Length> NO_INCHES = Figure.of(0, Units.INCH);
  private static final Figure<Pieces> NO_PIECES = Figure.of(0, Units.PIECE);

  /** Inches. */
  private static final double MOST_SAG = 6;

  private static final String SAG_RULE = "more is a structural repair: a licensed engineer decides";

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
   * sisterStock(SaggedSpan.sag(in("1-5/8")).span(ft(12.0185)), SisterPlan.size(SIZE_2X8).tolerance(in("3/8")).lap(in(24)), pieces(18)).stock() // 14' 0"
   * sisterStock(SaggedSpan.sag(in("1-5/8")).span(ft(12.0185)), SisterPlan.size(SIZE_2X8).tolerance(in("3/8")).lap(in(24)), pieces(18)).nails() // 468 nails
   * }</pre>
   *
   * @param rafter the worst one; its sag from 0 in to 6 in
   * @param plan how sisters are cut and nailed
   * @param rafterCount rafters to sister, 0 to 500
   * @return length and stock in feet, pieces, nails, end offset and near miss in inches; all zero
   *     if the sag is within the tolerance
   * @throws RefusedException if a number lies outside its range, or no stock up to 20 ft is long
   *     enough
   * @see "common practice, no source: straight stock set to a string line; the parabola is
   *     geometry"
   */
  @LibraryFunction(words = {"cut list", "lumber list", "sticks to buy", "straighten"})
  public static SisterStock sisterStock(
      @Narrowed(column = "sag_in", least = 0, most = MOST_SAG, rule = SAG_RULE) SaggedSpan rafter,
      SisterPlan plan,
      @Column(value = "rafter_count", unit = "piece") @Assumed("1") Figure<Pieces> rafterCount) {
    var depth = DressedSizes.width(plan.size()).as("sister_depth_in", Units.INCH);
    var measured = rafter.sag().within("sag_in", Units.INCH, Limits.between(0, MOST_SAG, SAG_RULE));
    var full = rafter.span();
    var left = plan.tolerance();
    var overlap = plan.lap();
    var rafters =
        rafterCount.within(
            "rafter_count", Units.PIECE, Limits.whole(0, 500, "the rafters that drop too far"));
    var spacing = plan.nailSpacing();
    var rows = plan.nailRows();
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
                "sag_in is %s, not less than the depth of a %s sister: set to the string it would not lie against the old rafter at mid-length; use a deeper one"
                    .formatted(measured, plan.size().choice()))
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

  /**
   * How far below a string a rafter lies that sags in a parabola, deepest at mid-length.
   *
   * @param sag at mid-length
   * @param span from bearing to bearing
   * @param along from the lower bearing
   */
  public static Figure<Length> belowTheString(
      Figure<Length> sag, Figure<Length> span, Figure<Length> along) {
    Figure<?> fromTheMiddle = TWO.times(along).in(Units.INCH).minus(span).dividedBy(span);
    return sag.times(ONE.minus(fromTheMiddle.squared())).in(Units.INCH);
  }

  /** The stick to buy for a sister of some length, however long: the next of 8, 10, 12 ft … */
  public static Figure<Length> stickFor(Figure<Length> sister) {
    return new SisterStick(sister.isMoreThan(NO_LENGTH), sister).wanted();
  }

  /**
   * The lumber that brings sagged rafters to a string line.
   *
   * @param length of each sister
   * @param stock of each stick to buy
   * @param pieces sticks to buy
   * @param nails in all
   * @param endOffset how far the sister's top stands above the old rafter at its ends
   * @param nearMiss how much too short the next shorter stock is, if under an inch, else zero
   */
  public record SisterStock(
      @Column(value = "length_ft", marked = Marked.DOWN) Figure<Length> length,
      @Column("stock_ft") Figure<Length> stock,
      @Column(value = "pieces", unit = "piece") Figure<Pieces> pieces,
      @Column(value = "nails", unit = "nail") Figure<Nails> nails,
      @Column(value = "end_offset_in", marked = Marked.NEAREST) Figure<Length> endOffset,
      @Column("near_miss_in") Figure<Length> nearMiss) {}
}
