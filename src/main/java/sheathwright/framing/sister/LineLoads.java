package sheathwright.framing.sister;

import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stiffness;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.loads.LiveLoad;
import sheathwright.wood.SimpleSpan;

/** A simple span and the even load on each inch of it, both on the horizontal projection. */
public final class LineLoads {

  private static final Figure<Ratio> TWO = Figure.of(2, Units.RATIO);
  private static final Figure<LineForce> NOTHING = Figure.of(0, Units.POUND_PER_INCH);

  private final Figure<Length> spacing;
  private final Figure<Pressure> dead;
  private final Figure<Length> span;
  private final Figure<LineForce> live;
  private final Figure<LineForce> total;

  public LineLoads(SpanLoad load) {
    this(load.span(), load.load().passing(), load.load().dead());
  }

  /** The live load alone. */
  public LineLoads(LiveSpan load) {
    this(load.span(), load.load(), Figure.of(0, Units.PSF));
  }

  private LineLoads(Figure<Length> clear, LiveLoad load, Figure<Pressure> dead) {
    this.dead = dead;
    spacing = load.spacing();
    span = clear.as("span_in", Units.INCH).symbol("L");
    live =
        load.live()
            .times(spacing)
            .as("live_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w_live");
    total =
        load.live()
            .plus(dead)
            .times(spacing)
            .as("total_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
            .symbol("w");
  }

  public Figure<Length> span() {
    return span;
  }

  /** What comes and goes. */
  public Figure<LineForce> live() {
    return live;
  }

  /** With what always lies there. */
  public Figure<LineForce> total() {
    return total;
  }

  /** What stays in the old rafter: its load when the sister is nailed, unless it is jacked. */
  public Figure<LineForce> locked(SisterLoad load) {
    var there = load.existing();
    Condition isJacked = load.jacked().choice().is(YesNo.YES);
    var existingLoad =
        there
            .onlyIf(
                Condition.any(isJacked, there.isAtMost(dead)),
                "the dead load in place when the sister is nailed, existing_psf, is more than"
                    + " the whole dead load, dead_psf; give the part of it that is still in place")
            .times(spacing)
            .as("existing_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS);
    return Figure.choose(isJacked, NOTHING, existingLoad)
        .as(
            "locked_load_lb_per_in",
            Units.POUND_PER_INCH,
            Source.derived("load in the old rafter stays there unless it is shored"))
        .symbol("w_locked");
  }

  public Figure<LineForce> addedTo(Figure<LineForce> locked) {
    return total
        .minus(locked)
        .as("added_load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS)
        .symbol("w_added");
  }

  /** The bending moment at mid-span under one of the loads. */
  public Figure<Moment> middleMoment(Figure<LineForce> load, String name) {
    return SimpleSpan.moment(load, span)
        .as(name + "_moment_in_lb", Units.INCH_POUND, SimpleSpan.STATICS)
        .symbol("M_" + name);
  }

  /** The bending moment at a distance from a support, under the whole load. */
  public Figure<Moment> momentAt(Figure<Length> distance, String name) {
    return total
        .times(distance)
        .times(span.minus(distance))
        .dividedBy(TWO)
        .as(name + "_moment_in_lb", Units.INCH_POUND, SimpleSpan.STATICS);
  }

  /** How far one stiffness sags at mid-span under one of the loads. */
  public Figure<Length> sag(Figure<LineForce> load, Figure<Stiffness> stiffness, String name) {
    return SimpleSpan.sag(load, span, stiffness).as(name, Units.INCH, SimpleSpan.STATICS);
  }

  /** The sag that a limit allows. */
  public Figure<Length> sagAllowed(Figure<Ratio> limit) {
    return span.dividedBy(limit)
        .as("sag_allowed_in", Units.INCH, Source.secondHand("IRC Table R301.7"));
  }
}
