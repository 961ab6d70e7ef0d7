package sheathwright.figure;

import java.util.List;
import java.util.Optional;
import sheathwright.figure.Dimension.Base;
import sheathwright.figure.Quantity.AllowableShare;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Quantity.Time;

/** The closed set of units that this trade writes down. Every factor is exact. */
public final class Units {

  private static final Dimension LENGTH = Dimension.of(Base.LENGTH);
  private static final Dimension AREA = LENGTH.raisedTo(2);
  private static final Dimension FORCE = Dimension.of(Base.FORCE);
  private static final Dimension TIME = Dimension.of(Base.TIME);
  private static final Dimension MONEY = Dimension.of(Base.MONEY);
  private static final Dimension SHEETS = Dimension.of(Base.SHEET);
  private static final Dimension NAILS = Dimension.of(Base.NAIL);
  private static final Dimension PIECES = Dimension.of(Base.PIECE);
  private static final Dimension STRENGTH = Dimension.of(Base.STRENGTH);

  public static final Unit<Length> INCH = unit("in", "in", 1, LENGTH, 4);
  public static final Unit<Length> FOOT = unit("ft", "ft", 12, LENGTH, 4);
  public static final Unit<Area> SQUARE_INCH = unit("sq in", "sq_in", 1, AREA, 3);
  public static final Unit<Area> SQUARE_FOOT = unit("sq ft", "sf", 144, AREA, 2);
  public static final Unit<Area> SQUARE = unit("square", "squares", 14_400, AREA, 2);
  public static final Unit<SectionModulus> CUBIC_INCH =
      unit("in³", "in3", 1, LENGTH.raisedTo(3), 3);
  public static final Unit<SecondMoment> INCH_TO_THE_FOURTH =
      unit("in⁴", "in4", 1, LENGTH.raisedTo(4), 3);
  public static final Unit<Force> POUND = unit("lb", "lb", 1, FORCE, 1);
  public static final Unit<Force> TON = unit("ton", "tons", 2000, FORCE, 3);
  public static final Unit<Pressure> PSF =
      new Unit<>("psf", "psf", Factor.oneIn(144), FORCE.dividedBy(AREA), 2);
  public static final Unit<StrengthPressure> STRENGTH_PSF =
      new Unit<>(
          "psf strength", "psf", Factor.oneIn(144), FORCE.dividedBy(AREA).times(STRENGTH), 2);
  public static final Unit<AllowableShare> ALLOWABLE_PER_STRENGTH =
      unit("psf/psf strength", "", 1, Dimension.NONE.dividedBy(STRENGTH), 2);
  public static final Unit<Stress> PSI = unit("psi", "psi", 1, FORCE.dividedBy(AREA), 1);
  public static final Unit<LineForce> POUND_PER_INCH =
      unit("lb/in", "lb_per_in", 1, FORCE.dividedBy(LENGTH), 2);
  public static final Unit<LineForce> POUND_PER_FOOT =
      new Unit<>("lb/ft", "lb_per_ft", Factor.oneIn(12), FORCE.dividedBy(LENGTH), 2);
  public static final Unit<Density> PCF =
      new Unit<>("pcf", "pcf", Factor.oneIn(1728), FORCE.dividedBy(LENGTH.raisedTo(3)), 2);
  public static final Unit<Density> PSF_PER_INCH =
      new Unit<>("psf/in", "psf_per_in", Factor.oneIn(144), FORCE.dividedBy(LENGTH.raisedTo(3)), 2);
  public static final Unit<Moment> INCH_POUND = unit("in-lb", "in_lb", 1, FORCE.times(LENGTH), 0);
  public static final Unit<Stiffness> POUND_SQUARE_INCH =
      unit("lb-in²", "lb_in2", 1, FORCE.times(AREA), 0);
  public static final Unit<Time> HOUR = unit("h", "h", 1, TIME, 2);
  public static final Unit<Money> USD = unit("$", "usd", 1, MONEY, 2);
  public static final Unit<Ratio> RATIO = unit("", "", 1, Dimension.NONE, 4);
  public static final Unit<Ratio> PERCENT =
      new Unit<>("%", "pct", Factor.oneIn(100), Dimension.NONE, 2);
  public static final Unit<Ratio> RISE_IN_12 =
      new Unit<>("in 12", "in_12", Factor.oneIn(12), Dimension.NONE, 2);
  public static final Unit<Sheets> SHEET = unit("sheet", "", 1, SHEETS, 2);
  public static final Unit<Nails> NAIL = unit("nail", "", 1, NAILS, 1);
  public static final Unit<Pieces> PIECE = unit("piece", "", 1, PIECES, 1);
  public static final Unit<Per<Money, Sheets>> USD_PER_SHEET =
      unit("$/sheet", "usd", 1, MONEY.dividedBy(SHEETS), 2);
  public static final Unit<Per<Money, Nails>> USD_PER_NAIL =
      unit("$/nail", "usd", 1, MONEY.dividedBy(NAILS), 3);
  public static final Unit<Per<Money, Pieces>> USD_PER_PIECE =
      unit("$/piece", "usd", 1, MONEY.dividedBy(PIECES), 2);
  public static final Unit<Per<Money, Time>> USD_PER_HOUR =
      unit("$/h", "usd_per_h", 1, MONEY.dividedBy(TIME), 2);
  public static final Unit<Per<Money, Force>> USD_PER_TON =
      new Unit<>("$/ton", "usd_per_ton", Factor.oneIn(2000), MONEY.dividedBy(FORCE), 2);
  public static final Unit<Per<Nails, Sheets>> NAILS_PER_SHEET =
      unit("nails/sheet", "", 1, NAILS.dividedBy(SHEETS), 1);
  public static final Unit<Per<Nails, Pieces>> NAILS_PER_PIECE =
      unit("nails/piece", "", 1, NAILS.dividedBy(PIECES), 1);
  public static final Unit<Per<Time, Sheets>> HOURS_PER_SHEET =
      unit("h/sheet", "h", 1, TIME.dividedBy(SHEETS), 2);
  public static final Unit<Per<Time, Pieces>> HOURS_PER_PIECE =
      unit("h/piece", "h", 1, TIME.dividedBy(PIECES), 2);
  public static final Unit<Per<Money, Length>> USD_PER_FOOT =
      new Unit<>("$/ft", "usd", Factor.oneIn(12), MONEY.dividedBy(LENGTH), 2);
  public static final Unit<Per<Nails, Length>> NAILS_PER_FOOT =
      new Unit<>("nails/ft", "", Factor.oneIn(12), NAILS.dividedBy(LENGTH), 1);
  public static final Unit<Per<Time, Length>> HOURS_PER_FOOT =
      new Unit<>("h/ft", "h", Factor.oneIn(12), TIME.dividedBy(LENGTH), 4);
  public static final Unit<Per<Time, Area>> HOURS_PER_SQUARE =
      new Unit<>("h/square", "", Factor.oneIn(14_400), TIME.dividedBy(AREA), 2);
  public static final Unit<Per<Force, Sheets>> POUNDS_PER_SHEET =
      unit("lb/sheet", "lb", 1, FORCE.dividedBy(SHEETS), 1);
  public static final Unit<Per<Area, Sheets>> SQUARE_FEET_PER_SHEET =
      unit("sq ft/sheet", "sf", 144, AREA.dividedBy(SHEETS), 2);

  public static final Unit<Per<Nails, Force>> NAILS_PER_POUND =
      unit("nails/lb", "", 1, NAILS.dividedBy(FORCE), 1);
  public static final Unit<Speed> MPH = unit("mph", "mph", 5280 * 12, LENGTH.dividedBy(TIME), 1);

  private static final List<Unit<?>> ALL =
      List.of(
          INCH,
          FOOT,
          SQUARE_INCH,
          SQUARE_FOOT,
          SQUARE,
          CUBIC_INCH,
          INCH_TO_THE_FOURTH,
          POUND,
          TON,
          PSF,
          STRENGTH_PSF,
          ALLOWABLE_PER_STRENGTH,
          MPH,
          PSI,
          POUND_PER_INCH,
          POUND_PER_FOOT,
          PCF,
          PSF_PER_INCH,
          INCH_POUND,
          POUND_SQUARE_INCH,
          HOUR,
          USD,
          RATIO,
          PERCENT,
          RISE_IN_12,
          SHEET,
          NAIL,
          PIECE,
          USD_PER_SHEET,
          USD_PER_NAIL,
          USD_PER_PIECE,
          USD_PER_HOUR,
          USD_PER_TON,
          NAILS_PER_SHEET,
          NAILS_PER_PIECE,
          HOURS_PER_SHEET,
          HOURS_PER_PIECE,
          USD_PER_FOOT,
          NAILS_PER_FOOT,
          HOURS_PER_FOOT,
          HOURS_PER_SQUARE,
          POUNDS_PER_SHEET,
          SQUARE_FEET_PER_SHEET,
          NAILS_PER_POUND);

  private Units() {}

  /** Every unit, each once. */
  public static List<Unit<?>> all() {
    return ALL;
  }

  /** The unit that is written so, if there is one. */
  public static Optional<Unit<?>> written(String symbol) {
    return ALL.stream().filter(unit -> unit.symbol().equals(symbol)).findFirst();
  }

  /**
   * The unit that a column's name ends in, the longest one if several do: {@code usd_per_h} before
   * {@code h}; a name that ends in none is a pure number.
   */
  public static Unit<?> endingOf(String column) {
    Unit<?> best = RATIO;
    for (Unit<?> unit : ALL) {
      if (!unit.suffix().isEmpty()
          && column.endsWith("_" + unit.suffix())
          && unit.suffix().length() > best.suffix().length()) {
        best = unit;
      }
    }
    return best;
  }

  /**
   * The unit with this factor and dimension: one of ours if there is one, else one made up for a
   * middle step.
   */
  static Unit<?> named(String symbol, Factor factor, Dimension dimension) {
    for (Unit<?> unit : ALL) {
      if (unit.dimension().equals(dimension) && unit.factor().equals(factor)) {
        return unit;
      }
    }
    return new Unit<>(symbol, "", factor, dimension, 4);
  }

  private static <Q extends Quantity> Unit<Q> unit(
      String symbol, String suffix, long factor, Dimension dimension, int decimals) {
    return new Unit<>(symbol, suffix, Factor.of(factor), dimension, decimals);
  }
}
