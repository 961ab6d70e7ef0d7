package sheathwright.framing.sister;

import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** The end of a piece on its support: what it can give in shear, and in bearing on its seat. */
final class EndStrength {

  private static final Source NOTCH = Source.fromMemory("NDS 2018, 3.4.3.2");
  private static final Source DEEPEST = Source.fromMemory("NDS 2018, 4.4.3");
  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> THREE =
      Figure.constant("shear_divisor", 3, Units.RATIO, Source.derived("rectangle")).symbol("3");
  private static final Figure<Ratio> QUARTER =
      Figure.constant("deepest_notch", 0.25, Units.RATIO, DEEPEST).symbol("1/4");

  final Figure<Force> shear;
  final Figure<Force> bearing;

  EndStrength(String whose, PlySection ply, PlyEnd unnamed, Figure<Length> seat) {
    PlyEnd end = unnamed.of(whose);
    var cut = end.notch();
    var deepest = ply.depth.times(QUARTER).as(whose + "_deepest_notch_in", Units.INCH, DEEPEST);
    var left =
        ply.depth
            .minus(
                cut.onlyIf(
                    cut.isAtMost(deepest),
                    "the seat cut of the %s takes more than a quarter of its depth (%s): that is a licensed engineer's call"
                        .formatted(whose, DEEPEST)))
            .as(whose + "_depth_left_in", Units.INCH)
            .symbol("d_n_" + whose);
    var notched = left.dividedBy(ply.depth).as(whose + "_notch_factor", Units.RATIO, NOTCH);
    shear =
        TWO.times(end.shear())
            .times(ply.thickness)
            .times(left)
            .dividedBy(THREE)
            .times(notched.squared())
            .as(whose + "_shear_capacity_lb", Units.POUND, NOTCH);
    bearing =
        end.bearing()
            .times(ply.thickness)
            .times(seat)
            .as(whose + "_bearing_capacity_lb", Units.POUND, Source.secondHand("NDS 2018, 3.10.2"));
  }

  Check shearCheck(String what, String name, Figure<Force> reaction) {
    return Check.of("shear of " + what, name + "_shear_ratio", reaction, shear);
  }

  Check bearingCheck(String what, String name, Figure<Force> reaction) {
    return Check.of("bearing of " + what, name + "_bearing_ratio", reaction, bearing);
  }
}
