package sheathwright.loads.wind;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.AllowableShare;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What every function about the wind's pull is told, held to its range. */
public final class WindArguments {

  private static final Figure<AllowableShare> ALLOWABLE_SHARE =
      Figure.constant(
              "allowable_share",
              0.6,
              Units.ALLOWABLE_PER_STRENGTH,
              Source.secondHand("ASCE 7-10, section 2.4, 0.6 W"))
          .symbol("0.6");

  private WindArguments() {}

  public static Figure<Pressure> uplift(Figure<Pressure> uplift) {
    return uplift
        .within(
            "uplift_psf",
            Units.PSF,
            Limits.between(1, 500, "at ASD level; the code takes no less than 10"))
        .symbol("p");
  }

  /** A pressure at strength level as it is at ASD level. */
  static Figure<Pressure> allowable(String name, Figure<StrengthPressure> strength) {
    return ALLOWABLE_SHARE.times(strength).as(name, Units.PSF, ALLOWABLE_SHARE.source());
  }

  /** How far apart fasteners of this strength may stand on lines this far apart. */
  public static Figure<Length> spacing(
      String name, Figure<?> resistance, Figure<Pressure> uplift, Figure<Length> between) {
    return resistance
        .dividedBy(uplift.times(between))
        .as(name, Units.INCH, Source.derived("load of the area that one fastener holds"));
  }

  /** What one nail or screw holds. */
  public static Figure<Force> strength(String name, Figure<Force> strength) {
    return strength.within(
        name, Units.POUND, Limits.between(1, 2000, "allowable for wind; 60 to 100 is usual"));
  }

  public static Figure<Length> supports(Figure<Length> spacing) {
    return spacing.within(
        "support_spacing_in", Units.INCH, Limits.between(6, 96, "16, 19.2 and 24 are usual"));
  }
}
