package sheathwright.framing.rafter;

import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.LineForce;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.SecondMoment;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.wood.SimpleSpan;

/** How far a rafter sags: under what passes, and under all load with the creep of the dead load. */
final class RafterSag {

  private static final Source CREEP = Source.fromMemory("NDS 2018, 3.5.2");
  private static final Source PASSING = Source.secondHand("IRC Table R301.7");
  private static final Figure<Ratio> SEASONED = creep("seasoned_creep", 1.5, "1.5");
  private static final Figure<Ratio> GREEN_OR_WET = creep("green_creep", 2.0, "2.0");

  private final Figure<Stress> modulus;
  private final Figure<SecondMoment> secondMoment;
  private final Figure<Ratio> passingLimit;
  private final Figure<Ratio> totalLimit;
  private final Figure<LineForce> passing;
  private final Figure<LineForce> total;

  /**
   * The sag of one rafter.
   *
   * @param rise of the roof
   * @param isSeasoned whether it was dry when it was loaded and has stayed so
   */
  RafterSag(
      Figure<Stress> modulus,
      Figure<SecondMoment> secondMoment,
      RafterLoads loads,
      Figure<Ratio> rise,
      Condition isSeasoned,
      SagLimits limits) {
    this.modulus = modulus;
    this.secondMoment = secondMoment;
    passingLimit = limits.passing(rise);
    totalLimit = limits.withCreep(passingLimit);
    passing = loads.passing;
    var creep =
        Figure.choose(isSeasoned, SEASONED, GREEN_OR_WET)
            .as("creep_factor", Units.RATIO, CREEP)
            .symbol("K_cr");
    total =
        passing
            .plus(creep.times(loads.dead.load()))
            .as("creeping_load_lb_per_in", Units.POUND_PER_INCH, CREEP);
  }

  Check underPassingLoad(Figure<Length> span) {
    return check("live-load deflection", "deflection", passing, passingLimit, span, PASSING);
  }

  Check underAllLoad(Figure<Length> span) {
    return check(
        "long-term deflection", "total_deflection", total, totalLimit, span, SagLimits.SOURCE);
  }

  /** The span at which the first of the two limits is reached. */
  Figure<Length> longest() {
    return SimpleSpan.spanBySag(modulus, secondMoment, passingLimit, passing)
        .as("deflection_span_in", Units.INCH, SimpleSpan.STATICS)
        .min(
            SimpleSpan.spanBySag(modulus, secondMoment, totalLimit, total)
                .as("total_deflection_span_in", Units.INCH, SimpleSpan.STATICS));
  }

  private Check check(
      String what,
      String name,
      Figure<LineForce> load,
      Figure<Ratio> limit,
      Figure<Length> span,
      Source rule) {
    return Check.of(
        what,
        name + "_ratio",
        SimpleSpan.sag(load, span, modulus, secondMoment)
            .as(name + "_in", Units.INCH, SimpleSpan.STATICS),
        span.dividedBy(limit).as(name + "_allowed_in", Units.INCH, rule));
  }

  private static Figure<Ratio> creep(String name, double number, String print) {
    return Figure.constant(name, number, Units.RATIO, CREEP).symbol(print);
  }
}
