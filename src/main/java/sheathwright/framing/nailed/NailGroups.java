package sheathwright.framing.nailed;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Nails;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.framing.sister.LineLoads;
import sheathwright.framing.sister.Stiffnesses;
import sheathwright.wood.SimpleSpan;

/**
 * Two groups of nails near each end of a centered sister, and nothing between: the force that slip
 * leaves on each group, up on one and down on the other, follows from where the rafter and the
 * sister would be without it.
 */
final class NailGroups {

  static final Source GROUPS =
      Source.derived("two beams held together by two nail groups at each end");

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<Ratio> THREE =
      Figure.constant("tip_divisor", 3, Units.RATIO, GROUPS).symbol("3");
  private static final Figure<Ratio> FOUR =
      Figure.constant("half_span_squared_divisor", 4, Units.RATIO, GROUPS).symbol("4");
  private static final Figure<Ratio> TWENTY_FOUR =
      Figure.constant("curve_divisor", 24, Units.RATIO, SimpleSpan.STATICS).symbol("24");

  private final LineLoads load;
  private final Stiffnesses stiffnesses;
  private final Figure<Length> arm;
  final Figure<Length> far;
  final Figure<Length> near;
  private final Figure<LineForce> pieces;
  final Figure<Force> rigid;

  NailGroups(
      LineLoads load,
      Figure<LineForce> added,
      Stiffnesses stiffnesses,
      Figure<Length> far,
      Figure<Length> arm) {
    this.load = load;
    this.stiffnesses = stiffnesses;
    this.arm = arm;
    this.far = far;
    near = far.plus(arm).as("near_group_in", Units.INCH, GROUPS).symbol("x_2");
    var slip =
        added
            .times(curve(near).minus(curve(far)))
            .dividedBy(TWENTY_FOUR.times(stiffnesses.rafter()))
            .as("slip_without_nails_in", Units.INCH, SimpleSpan.STATICS)
            .symbol("u");
    var between =
        load.span()
            .dividedBy(TWO)
            .minus(near)
            .as("half_between_groups_in", Units.INCH, GROUPS)
            .symbol("b");
    pieces =
        stiffnesses
            .rafter()
            .times(stiffnesses.sister())
            .dividedBy(
                stiffnesses.both().times(arm.squared().times(between.plus(arm.dividedBy(THREE)))))
            .as("pieces_stiffness_lb_per_in", Units.POUND_PER_INCH, GROUPS)
            .symbol("k_pieces");
    rigid = slip.times(pieces).as("rigid_lb", Units.POUND, GROUPS).symbol("R_rigid");
  }

  /** The force on each group, with so many nails in it. */
  Figure<Force> force(Figure<Nails> nails, Figure<LineForce> nailStiffness) {
    var group =
        nails
            .dividedBy(Figure.of(1, Units.NAIL))
            .times(nailStiffness)
            .dividedBy(TWO)
            .as("group_stiffness_lb_per_in", Units.POUND_PER_INCH, GROUPS)
            .symbol("k_group");
    return rigid
        .times(group)
        .dividedBy(group.plus(pieces))
        .as("group_lb", Units.POUND, GROUPS)
        .symbol("R");
  }

  /** What the old rafter is asked at most along the sister, of what it is asked alone. */
  Figure<Moment> rafterMoment(Figure<Moment> whole, Figure<Force> force) {
    var middle =
        whole.minus(force.times(arm)).as("rafter_middle_moment_in_lb", Units.INCH_POUND, GROUPS);
    var peak =
        load.span()
            .dividedBy(TWO)
            .minus(force.dividedBy(load.total()))
            .in(Units.INCH)
            .max(far)
            .min(near)
            .as("peak_between_groups_in", Units.INCH, GROUPS)
            .symbol("x_peak");
    return load.momentAt(peak, "peak")
        .minus(force.times(peak.minus(far)))
        .in(Units.INCH_POUND)
        .max(middle)
        .as("rafter_moment_in_lb", Units.INCH_POUND, GROUPS);
  }

  /** What the groups take off the old rafter's sag at mid-span. */
  Figure<Length> relief(Figure<Force> force) {
    var outer = arm.squared().times(far).dividedBy(TWO).plus(arm.cubed().dividedBy(THREE));
    var inner =
        arm.times(load.span().squared().dividedBy(FOUR).minus(near.squared())).dividedBy(TWO);
    return force
        .times(outer.plus(inner))
        .dividedBy(stiffnesses.rafter())
        .as("sag_taken_off_in", Units.INCH, GROUPS);
  }

  /** The shape of the old rafter's own sag at a distance from the support. */
  private Figure<?> curve(Figure<Length> x) {
    return x.times(load.span().cubed())
        .minus(TWO.times(load.span()).times(x.cubed()))
        .plus(x.times(x.cubed()));
  }
}
