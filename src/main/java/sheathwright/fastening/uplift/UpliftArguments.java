package sheathwright.fastening.uplift;

import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What the functions about the wind's pull are told by itself, held to its range. */
final class UpliftArguments {

  /** What one nail or screw may be said to hold, under whatever name. */
  static final double LEAST_STRENGTH_LB = 1;

  static final double MOST_STRENGTH_LB = 2000;
  static final String STRENGTH_RULE = "allowable for wind; 60 to 100 is usual";

  private UpliftArguments() {}

  static Figure<Pressure> uplift(Figure<Pressure> uplift) {
    return uplift
        .within(
            "uplift_psf",
            Units.PSF,
            Limits.between(1, 500, "at ASD level; the code takes no less than 10"))
        .symbol("p");
  }

  /** What one nail or screw holds. */
  static Figure<Force> resistance(Figure<Force> strength) {
    return strength.within(
        "resistance_lb",
        Units.POUND,
        Limits.between(LEAST_STRENGTH_LB, MOST_STRENGTH_LB, STRENGTH_RULE));
  }

  /** How far apart fasteners of this strength may stand on lines this far apart. */
  static Figure<Length> spacing(
      String name, Figure<?> resistance, Figure<Pressure> uplift, Figure<Length> between) {
    return resistance
        .dividedBy(uplift.times(between))
        .as(name, Units.INCH, Source.derived("load of the area that one fastener holds"));
  }
}
