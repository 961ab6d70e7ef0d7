package sheathwright.loads.snow;

import static sheathwright.loads.LoadArguments.constant;

import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;
import sheathwright.loads.LoadArguments;

/** Snow that lies evenly on a roof. */
public final class RoofSnows {

  private static final Source FLAT = Source.secondHand("ASCE 7-16, equation 7.3-1");
  private static final Source SLOPED = Source.secondHand("ASCE 7-16, equation 7.4-1");
  private static final Figure<Ratio> ROOF_SHARE =
      constant("share_on_a_roof", 0.7, Units.RATIO, "0.7", FLAT);

  private RoofSnows() {}

  /**
   * The snow that lies evenly on a roof, from the snow on the ground: flat, and on its slope.
   *
   * <pre>
   * p_f = 0.7 C_e C_t I_s p_g
   * p_s = C_s p_f
   * C_s = 1 to s_0, (70° − θ) ÷ (70° − s_0) to 70°, 0 above
   * s_0 = 30° to C_t 1.0, 37.5° to C_t 1.1, 45° above; slippery 5°, 10°, 15°
   * </pre>
   *
   * <p>Does not cover the least load on low slopes (see {@code minimum_snow}), unbalanced snow,
   * which governs most houses (see {@code unbalanced_snow}), rain on snow, drifts against walls,
   * snow that slides from a higher roof, ice at eaves, valleys, curved and saw-tooth roofs. A
   * thermal factor between two curves takes the colder. Screening only: local code and a licensed
   * engineer decide.
   *
   * <p>Under ASCE 7-22 ground snow comes from maps at strength level, one for each risk category,
   * and so do these answers: take 0.7 of them for allowable stress, and importance 1. Two copies of
   * its curves disagree; the colder, with more snow, is taken. Asphalt, wood and other rough
   * shingles are never slippery; metal is, where nothing stops the slide, over a cold roof or an
   * insulated one.
   *
   * <pre>{@code
   * roofSnow(GroundSnow.of(psf(30), ASCE7_10), number(1), SnowRoof.exposureFactor(number(1)).thermalFactor(number(1.2)).slippery(NO), pitch(0.5)).sloped() // 25.2 psf
   * roofSnow(GroundSnow.of(psf(40), ASCE7_16), number(1), SnowRoof.exposureFactor(number(1)).thermalFactor(number(1.1)).slippery(NO), pitch(6)).sloped() // 30.8 psf
   * }</pre>
   *
   * @param groundSnow of the edition's own map
   * @param importance I_s, 0.8 to 1.2; under ASCE 7-22 nothing but 1
   * @param roof as snow finds it
   * @param rise rise in 12 of run, 0 in 12 to 48 in 12
   * @return pounds per square foot of horizontal projection, flat and sloped; at strength level
   *     under ASCE 7-22
   * @throws RefusedException if a number lies outside its range, or the importance is not 1 under
   *     ASCE 7-22
   * @see "ASCE 7-16, equations 7.3-1 and 7.4-1 and Figure 7.4-1, secondary source; the curves of
   *     7-10 from memory"
   */
  @LibraryFunction(words = {"snow load"})
  public static RoofSnow roofSnow(
      GroundSnow groundSnow,
      @Column("importance") Figure<Ratio> importance,
      SnowRoof roof,
      @Column("rise_in_12") Figure<Ratio> rise) {
    var printed = groundSnow.edition().choice();
    var is = LoadArguments.importance(importance, printed);
    var slope = LoadArguments.degrees(LoadArguments.rise(rise));

    var flat =
        ROOF_SHARE
            .times(roof.exposureFactor())
            .times(roof.thermalFactor())
            .times(is)
            .times(groundSnow.load())
            .as("flat_psf", Units.PSF, FLAT)
            .symbol("p_f");
    var cs = SnowCurves.slopeFactor(roof, slope, printed);
    return new RoofSnow(flat, cs.times(flat).as("sloped_psf", Units.PSF, SLOPED));
  }
}
