package sheathwright.framing.rafter;

import sheathwright.figure.Check;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.RafterSection;
import sheathwright.wood.SimpleSpan;

/** The birdsmouth: a notch in a rafter's lower edge that lets it sit on the plate. */
final class SeatCut {

  static final Source SHEAR = Source.fromMemory("NDS 2018, 3.4.3.2");
  private static final Source LIMIT = Source.fromMemory("NDS 2018, 4.4.3");
  private static final Figure<Ratio> QUARTER =
      Figure.constant("notch_divisor", 4, Units.RATIO, LIMIT).symbol("4");

  private final Figure<Ratio> part;

  /** What is left over the seat. */
  final Figure<Area> area;

  /** The notch against a quarter of the depth. */
  final Check check;

  /**
   * A notch in a section.
   *
   * @param cutAway of it, square to the edge
   */
  SeatCut(Figure<Length> cutAway, RafterSection section) {
    var depth = section.depth();
    var left =
        depth
            .minus(
                cutAway.onlyIf(
                    cutAway.isLessThan(depth), "the seat cut leaves nothing of the rafter"))
            .as("depth_over_seat_in", Units.INCH)
            .symbol("d_n");
    part = left.dividedBy(depth).as("part_over_seat", Units.RATIO).symbol("(d_n/d)");
    check =
        Check.of(
            "seat-cut depth",
            "notch_ratio",
            cutAway,
            depth.dividedBy(QUARTER).as("notch_allowed_in", Units.INCH, LIMIT));
    area = section.thickness().times(left).as("area_over_seat_sq_in", Units.SQUARE_INCH);
  }

  /** (3 V ÷ 2 b d_n) (d ÷ d_n)². */
  Figure<Stress> shearStress(Figure<Force> shear) {
    return SimpleSpan.shearStress(shear, area).dividedBy(part.squared()).in(Units.PSI);
  }

  /** The value that shear may reach in the area over the seat, F_v' (d_n ÷ d)². */
  Figure<Stress> shearAllowed(Figure<Stress> value) {
    return value.times(part.squared()).as("shear_over_seat_psi", Units.PSI, SHEAR);
  }
}
