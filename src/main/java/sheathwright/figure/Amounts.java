package sheathwright.figure;

import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Density;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Money;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Per;
import sheathwright.figure.Quantity.Pieces;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Sheets;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Quantity.Time;

/** Numbers said with their unit, in the trade's words. Meant to be imported statically. */
public final class Amounts {

  private Amounts() {}

  /** Inches. */
  public static Figure<Length> in(double inches) {
    return Figure.of(inches, Units.INCH);
  }

  /** Inches as spoken: {@code in("1-3/8")}. */
  public static Figure<Length> in(String inches) {
    return in(Lengths.inches(inches));
  }

  /** Feet. */
  public static Figure<Length> ft(double feet) {
    return Figure.of(feet, Units.FOOT);
  }

  /** Feet and inches as spoken: {@code ft("16-9 1/4")}. */
  public static Figure<Length> ft(String feet) {
    return ft(Lengths.inchesFromFeet(feet) / 12);
  }

  /** Square feet. */
  public static Figure<Area> sqft(double squareFeet) {
    return Figure.of(squareFeet, Units.SQUARE_FOOT);
  }

  /** Roofing squares of 100 square feet. */
  public static Figure<Area> squares(double squares) {
    return Figure.of(squares, Units.SQUARE);
  }

  /** Pounds per square foot. */
  public static Figure<Pressure> psf(double poundsPerSquareFoot) {
    return Figure.of(poundsPerSquareFoot, Units.PSF);
  }

  /** Pounds per square foot of wind at strength level, as a velocity pressure is. */
  public static Figure<StrengthPressure> strengthPsf(double poundsPerSquareFoot) {
    return Figure.of(poundsPerSquareFoot, Units.STRENGTH_PSF);
  }

  /** Pounds per cubic foot. */
  public static Figure<Density> pcf(double poundsPerCubicFoot) {
    return Figure.of(poundsPerCubicFoot, Units.PCF);
  }

  /** Miles an hour. */
  public static Figure<Speed> mph(double milesAnHour) {
    return Figure.of(milesAnHour, Units.MPH);
  }

  /** Pounds per square inch: a stress or a modulus. */
  public static Figure<Stress> psi(double poundsPerSquareInch) {
    return Figure.of(poundsPerSquareInch, Units.PSI);
  }

  /** Pounds of weight or force. */
  public static Figure<Force> lb(double pounds) {
    return Figure.of(pounds, Units.POUND);
  }

  /** Tons of 2,000 lb. */
  public static Figure<Force> tons(double tons) {
    return Figure.of(tons, Units.TON);
  }

  /** Pounds for each inch: a load along a rafter, or how hard a nail holds against slip. */
  public static Figure<LineForce> lbPerInch(double pounds) {
    return Figure.of(pounds, Units.POUND_PER_INCH);
  }

  /** Pounds for each foot of length. */
  public static Figure<LineForce> lbPerFt(double poundsPerFoot) {
    return Figure.of(poundsPerFoot, Units.POUND_PER_FOOT);
  }

  /** Pounds for each sheet. */
  public static Figure<Per<Force, Sheets>> lbPerSheet(double pounds) {
    return Figure.of(pounds, Units.POUNDS_PER_SHEET);
  }

  /** A percentage: {@code pct(5)} is five in a hundred. */
  public static Figure<Ratio> pct(double percent) {
    return Figure.of(percent, Units.PERCENT);
  }

  /** A pure number. */
  public static Figure<Ratio> number(double number) {
    return Figure.of(number, Units.RATIO);
  }

  /** A roof pitch, as its rise in 12. */
  public static Figure<Ratio> pitch(double riseIn12) {
    return Figure.of(riseIn12, Units.RISE_IN_12);
  }

  /** Dollars. */
  public static Figure<Money> usd(double dollars) {
    return Figure.of(dollars, Units.USD);
  }

  /** Dollars for each sheet. */
  public static Figure<Per<Money, Sheets>> usdPerSheet(double dollars) {
    return Figure.of(dollars, Units.USD_PER_SHEET);
  }

  /** Dollars for each nail. */
  public static Figure<Per<Money, Nails>> usdPerNail(double dollars) {
    return Figure.of(dollars, Units.USD_PER_NAIL);
  }

  /** Dollars for each hour. */
  public static Figure<Per<Money, Time>> usdPerHour(double dollars) {
    return Figure.of(dollars, Units.USD_PER_HOUR);
  }

  /** Dollars for each ton of 2,000 lb. */
  public static Figure<Per<Money, Force>> usdPerTon(double dollars) {
    return Figure.of(dollars, Units.USD_PER_TON);
  }

  /** Nails. */
  public static Figure<Nails> nails(double nails) {
    return Figure.of(nails, Units.NAIL);
  }

  /** Nails in each pound. */
  public static Figure<Per<Nails, Force>> nailsPerPound(double nails) {
    return Figure.of(nails, Units.NAILS_PER_POUND);
  }

  /** Hours. */
  public static Figure<Time> hours(double hours) {
    return Figure.of(hours, Units.HOUR);
  }

  /** Minutes, in hours. */
  public static Figure<Time> minutes(double minutes) {
    return hours(minutes / 60);
  }

  /** Hours for each sheet. */
  public static Figure<Per<Time, Sheets>> hoursPerSheet(double hours) {
    return Figure.of(hours, Units.HOURS_PER_SHEET);
  }

  /** Sheets of decking. */
  public static Figure<Sheets> sheets(double sheets) {
    return Figure.of(sheets, Units.SHEET);
  }

  /** Nails in each sheet. */
  public static Figure<Per<Nails, Sheets>> nailsPerSheet(double nails) {
    return Figure.of(nails, Units.NAILS_PER_SHEET);
  }

  /** Pieces of lumber: rafters, sisters, sticks. */
  public static Figure<Pieces> pieces(double pieces) {
    return Figure.of(pieces, Units.PIECE);
  }

  /** Dollars for each piece. */
  public static Figure<Per<Money, Pieces>> usdPerPiece(double dollars) {
    return Figure.of(dollars, Units.USD_PER_PIECE);
  }

  /** Nails in each piece. */
  public static Figure<Per<Nails, Pieces>> nailsPerPiece(double nails) {
    return Figure.of(nails, Units.NAILS_PER_PIECE);
  }

  /** Hours for each piece. */
  public static Figure<Per<Time, Pieces>> hoursPerPiece(double hours) {
    return Figure.of(hours, Units.HOURS_PER_PIECE);
  }

  /** Dollars for each foot. */
  public static Figure<Per<Money, Length>> usdPerFoot(double dollars) {
    return Figure.of(dollars, Units.USD_PER_FOOT);
  }

  /** Nails in each foot. */
  public static Figure<Per<Nails, Length>> nailsPerFoot(double nails) {
    return Figure.of(nails, Units.NAILS_PER_FOOT);
  }

  /** Hours for each foot. */
  public static Figure<Per<Time, Length>> hoursPerFoot(double hours) {
    return Figure.of(hours, Units.HOURS_PER_FOOT);
  }

  /** Hours for each square of 100 sq ft. */
  public static Figure<Per<Time, Area>> hoursPerSquare(double hours) {
    return Figure.of(hours, Units.HOURS_PER_SQUARE);
  }
}
