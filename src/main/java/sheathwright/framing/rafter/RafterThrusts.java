package sheathwright.framing.rafter;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.Quantity.Force;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Units;
import sheathwright.wood.RepetitiveMember;
import sheathwright.wood.SimpleSpan;

/** How hard a pair of rafters pushes the walls apart. */
public final class RafterThrusts {

  private RafterThrusts() {}

  /**
   * How hard a pair of like rafters pulls at the tie that keeps the walls from spreading.
   *
   * <pre>
   * H = w L ÷ (2 tan θ) ÷ (1 − H_C ÷ H_R)      H_R = L tan θ
   * </pre>
   *
   * <p>Does not cover the nails of the heel joint, a ridge beam, which leaves no thrust, unlike
   * loads on the two slopes, or what the tie itself carries. Walls that have spread are for a
   * licensed engineer before any work. Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * rafterThrust(ft(12), pitch(4), in(16), psf(30), in(0)) // 720 lb
   * }</pre>
   *
   * @param span L of one rafter on the horizontal projection, 1 ft to 40 ft
   * @param rise tan θ, 1 in 12 to 24 in 12
   * @param spacing center to center, 4 in to 48 in
   * @param load all load on the horizontal projection, 1 psf to 400 psf
   * @param tieHeight H_C of the tie above the plate, 0 in to 120 in
   * @return pull in pounds at each pair of rafters that is tied
   * @throws RefusedException if a number lies outside its range, or the tie stands above the lower
   *     third of the roof
   * @see "derived: statics of a three-hinged frame"
   */
  @LibraryFunction(words = {"collar tie", "rafter tie", "ceiling joist", "spreading walls"})
  @Column("thrust_lb")
  public static Figure<Force> rafterThrust(
      @Column("span_ft") Figure<Length> span,
      @Column("rise_in_12") Figure<Ratio> rise,
      @Column("spacing_in") Figure<Length> spacing,
      @Column("load_psf") Figure<Pressure> load,
      @Column(value = "tie_height_in", preset = "0") Figure<Length> tieHeight) {
    var triangle = new RoofTriangle(span, rise, tieHeight);
    var s = RepetitiveMember.spacing(spacing);
    var q =
        load.within("load_psf", Units.PSF, Limits.between(1, 400, "dead and roof live or snow"))
            .symbol("q");
    var w = q.times(s).as("load_lb_per_in", Units.POUND_PER_INCH, SimpleSpan.STATICS).symbol("w");
    return new RafterTie(triangle.span().symbol("L"), triangle).thrust(w);
  }
}
