package sheathwright.loads.wind;

import sheathwright.catalog.Assumed;
import sheathwright.catalog.Column;
import sheathwright.catalog.LibraryFunction;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.AllowableShare;
import sheathwright.figure.Quantity.Pressure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.StrengthPressure;
import sheathwright.figure.RefusedException;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/** How hard the wind pulls at a roof. */
public final class WindPressures {

  private static final Figure<Pressure> CODE_LEAST =
      Figure.constant(
              "code_least_psf",
              10,
              Units.PSF,
              Source.secondHand("IRC 2015, Table R301.2(2), the least that is printed"))
          .symbol("10 psf");

  private static final Figure<AllowableShare> ALLOWABLE_SHARE =
      Figure.constant(
              "allowable_share",
              0.6,
              Units.ALLOWABLE_PER_STRENGTH,
              Source.secondHand("ASCE 7-10, section 2.4, 0.6 W"))
          .symbol("0.6");

  private WindPressures() {}

  /**
   * The pressure of the wind at a height above the ground, before any part of the roof shapes it,
   * at strength level.
   *
   * <pre>
   * q = 0.00256 K_z K_zt K_d V²
   * </pre>
   *
   * <p>Does not cover heights over 60 ft, ground elevation (taken as 1, which is the cautious
   * side), tornadoes. The directionality factor stands inside in every edition, also in ASCE 7-22,
   * which applies it later: apply it once. In Exposure B under 30 ft ASCE 7-10 takes no less than
   * 0.70 for cladding, later editions do. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * velocityPressure(WindSite.of(ASCE7_16, mph(105), EXPOSURE_B).height(ft("12-0")), LEVEL_GROUND, number(0.85)) // 13.67 psf strength
   * allowablePressure(velocityPressure(WindSite.of(ASCE7_10, mph(150), EXPOSURE_B).height(ft(30)), LEVEL_GROUND, number(0.85))) // 20.56 psf
   * }</pre>
   *
   * @param site the house in the wind
   * @param topography what hills do to the wind
   * @param directionality 0.85 for roofs of buildings, 0.8 to 1
   * @return pounds per square foot at strength level, which is not an allowable pressure
   * @throws RefusedException if a number lies outside its range
   * @see "ASCE 7-16, equation 26.10-1, secondary source; Kz of ASCE 7-10, 7-16 and 7-22 from
   *     memory, held against the height factors of IRC 2015, 2021 and 2024"
   */
  @LibraryFunction(words = {"wind load"})
  @Column(value = "velocity_pressure_psf", unit = "psf strength")
  public static Figure<StrengthPressure> velocityPressure(
      WindSite site,
      Topography topography,
      @Column(value = "kd", preset = "0.85") Figure<Ratio> directionality) {
    var kz = site.velocityExposure().symbol("K_z");
    var kd =
        directionality
            .within("kd", Units.RATIO, Limits.between(0.8, 1, "0.85 is right for a roof"))
            .symbol("K_d");
    return site.stagnation()
        .times(kz)
        .times(topography.factor())
        .times(kd)
        .as("velocity_pressure_psf", Units.STRENGTH_PSF, WindSite.EQUATION);
  }

  /**
   * A wind pressure at strength level, as it is held against allowable strengths of nails and
   * screws.
   *
   * <pre>
   * allowable = 0.6 × strength
   * </pre>
   *
   * <p>Does not cover pressures of codes before 2012, which are at ASD level already. Screening
   * only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * allowablePressure(strengthPsf(50)) // 30 psf
   * }</pre>
   *
   * @param strength at strength level, 0 psf strength to 1000 psf strength
   * @return pounds per square foot at ASD level
   * @throws RefusedException if the pressure lies outside its range
   * @see "ASCE 7-10, section 2.4, 0.6 W, secondary source"
   */
  @LibraryFunction
  @Column("allowable_psf")
  public static Figure<Pressure> allowablePressure(
      @Column(value = "strength_psf", unit = "psf strength") Figure<StrengthPressure> strength) {
    var given =
        strength.within(
            "strength_psf", Units.STRENGTH_PSF, Limits.between(0, 1000, "an ultimate pressure"));
    return allowable("allowable_psf", given);
  }

  /**
   * How hard the wind pulls deck and covering off a house that it cannot get into, in one zone of
   * the roof, and how hard it pushes there.
   *
   * <pre>
   * p = 0.6 × 0.00256 × 0.70059 × 0.85 V² × (G C_p and 0.18 outward or inward) × height and exposure factor
   * uplift = p outward, inward = p inward, neither under 10 psf
   * </pre>
   *
   * <p>Does not cover overhangs, where the wind also pushes from below; hips of a roof no higher
   * than half its least width under ASCE 7-16; slopes over 12 in 12; hills; houses with openings
   * (see {@code cladding_pressure}); areas under 10 sq ft, where two curves of ASCE 7-16 go on
   * rising and the value at 10 is taken. From 27 to 45 degrees a hip roof under ASCE 7-22 takes the
   * more severe of the two ends. Zone 1' is the standard's own; IRC 2024 prints zone 1 there too,
   * so ask for zone 1 where it is your code. Screening only: local code and a licensed engineer
   * decide.
   *
   * <pre>{@code
   * sheathingUplift(WindSite.of(ASCE7_16, mph(130), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(4), ZONE_2E)).uplift() // 33.7 psf
   * sheathingUplift(WindSite.of(ASCE7_10, mph(130), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(4), ZONE_1)).uplift() // 16.69 psf
   * }</pre>
   *
   * @param site the house in the wind
   * @param place on its roof
   * @return outward and inward pressure at ASD level, both positive
   * @throws RefusedException if a number lies outside its range, or the edition prints nothing for
   *     the roof, slope and zone
   * @see "IRC 2015 (ASCE 7-10), IRC 2021 (ASCE 7-16) and FBC Residential 2023 (ASCE 7-22), roof
   *     pressures, secondary source and solved for coefficients"
   */
  @LibraryFunction(words = {"wind load", "blow off"})
  public static SheathingUplift sheathingUplift(WindSite site, RoofPlace place) {
    var here = new PlaceInWind(site, place);
    var velocity = here.velocity(here.atThirtyFeet());
    var outward = allowable("outward_psf", here.outward(velocity, PlaceInWind.ENCLOSED));
    var inward = allowable("push_psf", here.inward(velocity, PlaceInWind.ENCLOSED));
    return new SheathingUplift(
        outward.max(CODE_LEAST).as("uplift_psf", Units.PSF, CODE_LEAST.source()),
        inward.max(CODE_LEAST).as("inward_psf", Units.PSF, CODE_LEAST.source()));
  }

  /**
   * How hard the wind lifts an overhang, where it pulls from above and pushes from below: what the
   * nails along the eave have to hold.
   *
   * <pre>
   * p = 0.6 × 0.00256 × 0.70059 × 0.85 V² × height and exposure factor × G C_p, not under 10 psf
   * G C_p by ASCE 7-10: of its overhang figures
   * G C_p by ASCE 7-16 and 7-22: that of the roof's zone above, and 1.0 of the wall below
   * </pre>
   *
   * <p>Does not cover overhangs closed below by a soffit that lets the wind in, parapets, hills,
   * slopes over 12 in 12, hips of a roof no higher than half its least width under ASCE 7-16. The
   * wall's 1.0 holds to 10 sq ft and is taken for larger areas too, which is the cautious side. The
   * figures of ASCE 7-10 know zones 2 and 3 alone over 7 degrees. Screening only: local code and a
   * licensed engineer decide.
   *
   * <pre>{@code
   * overhangUplift(WindSite.of(ASCE7_22, mph(130), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(4), ZONE_1)) // 46.37 psf
   * overhangUplift(WindSite.of(ASCE7_10, mph(130), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(4), ZONE_3)) // 57.2 psf
   * }</pre>
   *
   * @param site the house in the wind
   * @param place on its roof, by the zone that the overhang belongs to
   * @return pounds per square foot at ASD level
   * @throws RefusedException if a number lies outside its range, or the edition prints nothing for
   *     the roof, slope and zone
   * @see "ASCE 7-10, Figures 30.4-2A to C, from memory; ASCE 7-22, equation 30.7-1, secondary
   *     source, which is said to keep what ASCE 7-16 asks; the wall's 1.0 from memory"
   */
  @LibraryFunction
  @Column("overhang_psf")
  public static Figure<Pressure> overhangUplift(WindSite site, RoofPlace place) {
    var here = new PlaceInWind(site, place);
    var lifted =
        allowable("overhang_lift_psf", here.atOverhang(here.velocity(here.atThirtyFeet())));
    return lifted.max(CODE_LEAST).as("overhang_psf", Units.PSF, CODE_LEAST.source());
  }

  /**
   * How hard the wind pulls and pushes at one zone of a roof, also on hills and where it can get
   * into the house, with nothing rounded up to the code's least.
   *
   * <pre>
   * p = 0.00256 × 0.70059 × 0.85 K_zt V² × height and exposure factor × (G C_p and G C_pi)
   * allowable = 0.6 p
   * </pre>
   *
   * <p>Does not cover overhangs; hips of a roof no higher than half its least width under ASCE
   * 7-16; slopes over 12 in 12; the code's least of 10 psf, which {@code sheathing_uplift} takes.
   * Screening only: local code and a licensed engineer decide.
   *
   * <pre>{@code
   * claddingPressure(WindSite.of(ASCE7_10, mph(150), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(5), ZONE_3), LEVEL_GROUND, ENCLOSED).outward() // 57.23 psf
   * claddingPressure(WindSite.of(ASCE7_10, mph(150), EXPOSURE_B).height(ft(30)), RoofPlace.of(GABLE, pitch(5), ZONE_3), LEVEL_GROUND, PARTIALLY_ENCLOSED).outward() // 64.85 psf
   * }</pre>
   *
   * @param site the house in the wind
   * @param place on its roof
   * @param topography what hills do to the wind
   * @param enclosure whether the wind can get into the house
   * @return outward and inward pressure, at strength level and at ASD level
   * @throws RefusedException if a number lies outside its range, or the edition prints nothing for
   *     the roof, slope and zone
   * @see "IRC 2015 (ASCE 7-10), IRC 2021 (ASCE 7-16) and FBC Residential 2023 (ASCE 7-22), roof
   *     pressures, secondary source and solved for coefficients; 0.55 of a partially enclosed house
   *     from memory"
   */
  @LibraryFunction(words = {"wind load"})
  public static CladdingPressure claddingPressure(
      WindSite site,
      RoofPlace place,
      Topography topography,
      @Column("enclosure") @Assumed("partially-enclosed") OneOf<Enclosure> enclosure) {
    var here = new PlaceInWind(site, place);
    var onHill =
        here.atThirtyFeet()
            .times(topography.factor())
            .as("pressure_on_hill_psf", Units.STRENGTH_PSF, WindSite.EQUATION);
    var velocity = here.velocity(onHill);
    var inside = PlaceInWind.inside(enclosure);
    var outward = here.outward(velocity, inside);
    var inward = here.inward(velocity, inside);
    return new CladdingPressure(
        outward, inward, allowable("outward_psf", outward), allowable("inward_psf", inward));
  }

  /** A pressure at strength level as it is at ASD level. */
  private static Figure<Pressure> allowable(String name, Figure<StrengthPressure> strength) {
    return ALLOWABLE_SHARE.times(strength).as(name, Units.PSF, ALLOWABLE_SHARE.source());
  }
}
