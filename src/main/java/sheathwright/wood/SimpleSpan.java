package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.SectionModulus;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * A stick on two supports under one even load: what the load does to it, and the span at which it
 * does just as much as is allowed.
 */
public final class SimpleSpan {

  public static final Source STATICS = Source.derived("simple span, uniform load");

  public static final Figure<Ratio> EIGHT = constant("moment_divisor", 8);
  private static final Figure<Ratio> FIVE = constant("deflection_multiplier", 5);
  private static final Figure<Ratio> DEFLECTION_384 = constant("deflection_divisor", 384);
  private static final Figure<Ratio> THREE = constant("shear_multiplier", 3);
  private static final Figure<Ratio> FOUR = constant("shear_span_multiplier", 4);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);

  private SimpleSpan() {}

  /** M = w L² ÷ 8. */
  public static Figure<Moment> moment(Figure<LineForce> w, Figure<Length> span) {
    return w.times(span.squared()).dividedBy(EIGHT).in(Units.INCH_POUND);
  }

  /** M = P L ÷ 4: a load on one point does most at the middle, wherever it may stand. */
  public static Figure<Moment> pointMoment(Figure<Force> point, Figure<Length> span) {
    return point.times(span).dividedBy(FOUR).in(Units.INCH_POUND);
  }

  /** R = w L ÷ 2. */
  public static Figure<Force> reaction(Figure<LineForce> w, Figure<Length> span) {
    return w.times(span).dividedBy(TWO).in(Units.POUND);
  }

  /** The stress 3 V ÷ 2 A of a rectangle. */
  public static Figure<Stress> shearStress(Figure<Force> shear, Figure<Area> area) {
    return THREE.times(shear).dividedBy(TWO.times(area)).in(Units.PSI);
  }

  /** 5 w L⁴ ÷ 384 E I. */
  public static Figure<Length> sag(
      Figure<LineForce> w, Figure<Length> span, Figure<Stress> e, Figure<SecondMoment> i) {
    return FIVE.times(w)
        .times(span.times(span.cubed()))
        .dividedBy(DEFLECTION_384.times(e).times(i))
        .in(Units.INCH);
  }

  /** The same for pieces that share the load, by the sum of their E I. */
  public static Figure<Length> sag(
      Figure<LineForce> w, Figure<Length> span, Figure<Stiffness> stiffness) {
    return FIVE.times(w)
        .times(span.times(span.cubed()))
        .dividedBy(DEFLECTION_384.times(stiffness))
        .in(Units.INCH);
  }

  /** √(8 F S ÷ w). */
  public static Figure<Length> spanByBending(
      Figure<Stress> allowed, Figure<SectionModulus> s, Figure<LineForce> w) {
    return EIGHT.times(allowed).times(s).dividedBy(w).squareRoot().in(Units.INCH);
  }

  /** 4 A F ÷ 3 w. */
  public static Figure<Length> spanByShear(
      Figure<Stress> allowed, Figure<Area> area, Figure<LineForce> w) {
    return FOUR.times(area).times(allowed).dividedBy(THREE.times(w)).in(Units.INCH);
  }

  /** ∛(384 E I ÷ 5 n w), where the sag may be the span divided by n. */
  public static Figure<Length> spanBySag(
      Figure<Stress> e, Figure<SecondMoment> i, Figure<Ratio> n, Figure<LineForce> w) {
    return DEFLECTION_384
        .times(e)
        .times(i)
        .dividedBy(FIVE.times(n).times(w))
        .cubeRoot()
        .in(Units.INCH);
  }

  /** 2 b l F ÷ w. */
  public static Figure<Length> spanByBearing(
      Figure<Stress> allowed, Figure<Length> thickness, Figure<Length> seat, Figure<LineForce> w) {
    return TWO.times(allowed).times(thickness).times(seat).dividedBy(w).in(Units.INCH);
  }

  private static Figure<Ratio> constant(String name, double number) {
    return Figure.constant(name, number, Units.RATIO, STATICS).symbol(String.valueOf((int) number));
  }
}
