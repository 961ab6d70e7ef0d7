package sheathwright.framing.sister;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.wood.SimpleSpan;

/** A simple span and the even load on each inch of it, both on the horizontal projection. */
final class SpanLoad {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<LineForce> NOTHING = Figure.of(0, Units.POUND_PER_INCH);

  final Figure<Length> spacing;
  private final Figure<Pressure> deadPressure;
  final Figure<Length> span;
  final Figure<LineForce> live;
  final Figure<LineForce> total;

  SpanLoad(
      Figure<Length> spacing, Figure<Length> span, Figure<Pressure> live, Figure<Pressure> dead) {
    this.spacing =
        spacing
            .within(
                "spacing_in",
                Units.INCH,
                Limits.between(4, 48, "center to center; 16 and 24 are usual"))
            .symbol("spacing");
    this.span =
        span.within(
                "span_ft", Units.FOOT, Limits.between(1, 40, "clear, on the horizontal projection"))
            .as("span_in", Units.INCH)
            .symbol("L");
    var livePressure =
        live.within(
                "live_psf",
                Units.PSF,
                Limits.between(1, 300, "of horizontal projection; 20 is the usual least"))
            .symbol("q_live");
    deadPressure =
        dead.within(
                "dead_psf",
                Units.PSF,
                Limits.between(0, 100, "of horizontal projection; 10 and 20 are usual"))
            .symbol("q_dead");
    this.live =
        livePressure
            .times(this.spacing)
            .as("live_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w_live");
    total =
        livePressure
            .plus(deadPressure)
            .times(this.spacing)
            .as("total_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w");
  }

  /** What stays in the old rafter: its load when the sister is nailed, unless it is jacked. */
  Figure<LineForce> locked(Figure<Pressure> existing, OneOf<YesNo> jacked) {
    var there =
        existing
            .within(
                "existing_psf",
                Units.PSF,
                Limits.between(0, 100, "of the dead load: 0 once everything is stripped off"))
            .symbol("q_existing");
    Condition isJacked = jacked.choice().argument("jacked").is(YesNo.YES);
    var existingLoad =
        there
            .onlyIf(
                Condition.any(isJacked, there.isAtMost(deadPressure)),
                "the load that lies on the rafter while the sister is nailed, existing_psf, is more than"
                    + " the whole dead load, dead_psf; give the part of it that is still there")
            .times(spacing)
            .as("existing_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS);
    return Figure.choose(isJacked, NOTHING, existingLoad)
        .as(
            "locked_load_lb_per_in",
            Units.POUND_PER_INCH,
            Source.derived("load in the old rafter stays there unless it is jacked"))
        .symbol("w_locked");
  }

  Figure<LineForce> addedTo(Figure<LineForce> locked) {
    return total
        .minus(locked)
        .as("added_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
        .symbol("w_added");
  }

  /** The bending moment at mid-span under one of the loads. */
  Figure<Moment> middleMoment(Figure<LineForce> load, String name) {
    return SimpleSpan.moment(load, span)
        .as(name + "_moment_in_lb", Units.INCH_POUND, SimpleSpan.STATICS)
        .symbol("M_" + name);
  }

  /** The bending moment at a distance from a support, under the whole load. */
  Figure<Moment> momentAt(Figure<Length> distance, String name) {
    return total
        .times(distance)
        .times(span.minus(distance))
        .dividedBy(TWO)
        .as(name + "_moment_in_lb", Units.INCH_POUND, SimpleSpan.STATICS);
  }

  /** How far one stiffness sags at mid-span under one of the loads. */
  Figure<Length> sag(Figure<LineForce> load, Figure<Stiffness> stiffness, String name) {
    return SimpleSpan.sag(load, span, stiffness).as(name, Units.INCH, SimpleSpan.STATICS);
  }

  /** The sag that a limit allows. */
  Figure<Length> sagAllowed(Figure<Ratio> limit) {
    return span.dividedBy(
            limit
                .within(
                    "deflection_limit",
                    Units.RATIO,
                    Limits.between(120, 480, "180 without, 240 with a ceiling below"))
                .symbol("n"))
        .as("sag_allowed_in", Units.INCH, Source.secondHand("IRC Table R301.7"));
  }
}
