package sheathwright.loads.wind;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.AllowableShare;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Speed;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** What every wind function is told, held to its range, and the equation that all begin with. */
public final class WindArguments {

  /** Where the velocity pressure equation stands. */
  static final Source EQUATION = Source.secondHand("ASCE 7-16, equation 26.10-1");

  private static final Figure<Speed> ONE_MPH = Figure.of(1, Units.MPH);
  private static final Figure<StrengthPressure> AT_ONE_MPH =
      Figure.constant("pressure_at_one_mph_psf", 0.00256, Units.STRENGTH_PSF, EQUATION)
          .symbol("0.00256 psf");
  private static final Figure<AllowableShare> ALLOWABLE_SHARE =
      Figure.constant(
              "allowable_share",
              0.6,
              Units.ALLOWABLE_PER_STRENGTH,
              Source.secondHand("ASCE 7-10, section 2.4, 0.6 W"))
          .symbol("0.6");

  private WindArguments() {}

  /** Pressure of moving air before any coefficient, at strength level. */
  static Figure<?> stagnation(Figure<Speed> wind) {
    return AT_ONE_MPH.times(speed(wind).dividedBy(ONE_MPH).squared());
  }

  private static Figure<Speed> speed(Figure<Speed> wind) {
    return wind.within(
            "wind_mph",
            Units.MPH,
            Limits.between(50, 250, "the ultimate speed of the code's map; 115 is the least there"))
        .symbol("V");
  }

  static Figure<Length> height(Figure<Length> height) {
    return height.within(
        "height_ft", Units.FOOT, Limits.between(1, 60, "mean roof height; a story is about 10"));
  }

  static Figure<Ratio> topography(Figure<Ratio> factor) {
    return factor
        .within("kzt", Units.RATIO, Limits.between(1, 3, "1 on level ground, more on hills"))
        .symbol("K_zt");
  }

  public static Figure<Length> cover(Figure<Length> cover) {
    return cover.within(
        "panel_cover_in", Units.INCH, Limits.between(4, 48, "seam to seam; 16 is usual"));
  }

  public static Figure<Pressure> uplift(Figure<Pressure> uplift) {
    return uplift
        .within(
            "uplift_psf",
            Units.PSF,
            Limits.between(1, 500, "at ASD level; the code takes no less than 10"))
        .symbol("p");
  }

  static <E> Choice<E> word(String name, OneOf<E> word) {
    return word.choice().argument(name);
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

  public static Figure<Force> clipStrength(Figure<Force> strength) {
    return strength.within(
        "clip_lb", Units.POUND, Limits.between(1, 5000, "of the maker's test, with safety factor"));
  }

  public static Figure<Pressure> seam(Figure<Pressure> seam) {
    return seam.within(
        "seam_psf", Units.PSF, Limits.between(1, 500, "of the maker's test, with safety factor"));
  }

  public static Figure<Length> supports(Figure<Length> spacing) {
    return spacing.within(
        "support_spacing_in", Units.INCH, Limits.between(6, 96, "16, 19.2 and 24 are usual"));
  }
}
