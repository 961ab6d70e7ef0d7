package sheathwright.framing.sister;

import sheathwright.figure.Check;
import sheathwright.figure.Condition;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Moment;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * An old rafter and a full-length sister under one load: what each of them is asked, and how far
 * both sag together.
 */
final class SisteredSpan {

  static final Source LOCKED =
      Source.derived("load in the old rafter stays there, what comes after is shared");

  final Figure<Length> sag;
  final Check rafter;
  final Check sister;
  final Check deflection;
  final Condition ok;

  SisteredSpan(
      String beside,
      SpanLoad load,
      Figure<Moment> lockedMoment,
      Figure<Moment> addedMoment,
      Stiffnesses stiffnesses,
      SisterShare share,
      Figure<Moment> rafterCapacity,
      Figure<Moment> sisterCapacity,
      Figure<Length> sagAllowed) {
    var rafterMoment =
        lockedMoment
            .plus(share.rafter().times(addedMoment))
            .as("rafter_moment" + beside + "_in_lb", Units.INCH_POUND, LOCKED);
    var sisterMoment =
        share
            .sister()
            .times(addedMoment)
            .as("sister_moment" + beside + "_in_lb", Units.INCH_POUND, LOCKED);
    sag = load.sag(load.live, stiffnesses.both, "sag" + beside + "_in");
    rafter =
        Check.of(
            "bending of the old rafter", "rafter_ratio" + beside, rafterMoment, rafterCapacity);
    sister =
        Check.of("bending of the sister", "sister_ratio" + beside, sisterMoment, sisterCapacity);
    deflection = Check.of("live-load deflection of both", "sag_ratio" + beside, sag, sagAllowed);
    ok = Condition.all(rafter.ok(), sister.ok(), deflection.ok());
  }
}
