package sheathwright.fastening.strength;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.Nds;

/** The six yield equations of a dowel through two members, each divided by its reduction term. */
final class SingleShear {

  private static final Source TABLE = Nds.COPIED.at("Table 12.3.1A");
  private static final Figure<Ratio> ONE = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> THREE = Nds.number("yield_divisor", 3, "3", TABLE);

  private final Figure<Force> crushingMain;
  private final Figure<Force> crushingSide;
  private final Figure<Force> turning;
  private final Figure<Force> bendingInSide;
  private final Figure<Force> bendingInMain;
  private final Figure<Force> bendingTwice;

  /** The value of the weakest mode. */
  final Figure<Force> least;

  /**
   * A dowel through two members.
   *
   * @param d diameter
   * @param lm bearing length in the main member
   * @param ls bearing length in the side member
   * @param fem bearing strength of the main member
   * @param fes bearing strength of the side member
   * @param fyb bending yield strength of the dowel
   * @param rd reduction term, the same for every mode
   */
  SingleShear(
      Figure<Length> d,
      Figure<Length> lm,
      Figure<Length> ls,
      Figure<Stress> fem,
      Figure<Stress> fes,
      Figure<Stress> fyb,
      Figure<Ratio> rd) {
    var re = fem.dividedBy(fes).as("bearing_ratio", Units.RATIO, TABLE).symbol("R_e");
    var rt = lm.dividedBy(ls).as("length_ratio", Units.RATIO, TABLE).symbol("R_t");
    var perInch = d.times(fem).dividedBy(rd).as("main_lb_per_in", Units.POUND_PER_INCH);
    var sidePerInch = d.times(fes).dividedBy(rd).as("side_lb_per_in", Units.POUND_PER_INCH);

    var inside =
        re.plus(TWO.times(re.squared()).times(ONE.plus(rt).plus(rt.squared())))
            .plus(rt.squared().times(re.cubed()))
            .as("k1_under_the_root", Units.RATIO);
    var k1 =
        inside
            .squareRoot()
            .minus(re.times(ONE.plus(rt)))
            .dividedBy(ONE.plus(re))
            .as("k1", Units.RATIO, TABLE);
    var k2 =
        TWO.times(ONE.plus(re))
            .in(Units.RATIO)
            .plus(bent(fyb, ONE.plus(TWO.times(re)), d, fem, lm))
            .squareRoot()
            .minus(ONE)
            .as("k2", Units.RATIO, TABLE);
    var k3 =
        TWO.times(ONE.plus(re))
            .dividedBy(re)
            .in(Units.RATIO)
            .plus(bent(fyb, TWO.plus(re), d, fem, ls))
            .squareRoot()
            .minus(ONE)
            .as("k3", Units.RATIO, TABLE);

    crushingMain = perInch.times(lm).as("mode_im_lb", Units.POUND, TABLE);
    crushingSide = sidePerInch.times(ls).as("mode_is_lb", Units.POUND, TABLE);
    turning = k1.times(sidePerInch).times(ls).as("mode_ii_lb", Units.POUND, TABLE);
    bendingInSide =
        k2.times(perInch)
            .times(lm)
            .dividedBy(ONE.plus(TWO.times(re)))
            .as("mode_iiim_lb", Units.POUND, TABLE);
    bendingInMain =
        k3.times(perInch).times(ls).dividedBy(TWO.plus(re)).as("mode_iiis_lb", Units.POUND, TABLE);
    bendingTwice =
        d.squared()
            .dividedBy(rd)
            .times(TWO.times(fem).times(fyb).dividedBy(THREE.times(ONE.plus(re))).squareRoot())
            .as("mode_iv_lb", Units.POUND, TABLE);
    var unbent =
        crushingMain.min(crushingSide).min(turning).as("least_unbent_mode_lb", Units.POUND);
    least = unbent.min(bendingInSide).min(bendingInMain).min(bendingTwice);
  }

  private static Figure<Ratio> bent(
      Figure<Stress> fyb,
      Figure<Ratio> sum,
      Figure<Length> d,
      Figure<Stress> fem,
      Figure<Length> bearing) {
    return TWO.times(fyb)
        .times(sum)
        .times(d.squared())
        .dividedBy(THREE.times(fem).times(bearing.squared()))
        .in(Units.RATIO);
  }

  /** The mode that a value belongs to; of two alike, the first in the order of the table. */
  Choice<YieldMode> modeOf(Figure<Force> value) {
    var last = named(value, bendingInMain, YieldMode.IIIS, Choice.literal(YieldMode.IV), "iiis");
    var fourth = named(value, bendingInSide, YieldMode.IIIM, last, "iiim");
    var third = named(value, turning, YieldMode.II, fourth, "ii");
    var second = named(value, crushingSide, YieldMode.IS, third, "is");
    return named(value, crushingMain, YieldMode.IM, second, "im");
  }

  private static Choice<YieldMode> named(
      Figure<Force> value,
      Figure<Force> ofMode,
      YieldMode mode,
      Choice<YieldMode> otherwise,
      String from) {
    return Choice.choose(value.isTheSameAs(ofMode), mode, otherwise).as("mode_from_" + from);
  }
}
