package sheathwright.loads;

import sheathwright.catalog.Column;
import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Pressure;

/**
 * Each combination's load on the horizontal projection, the same divided by its own duration
 * factor, and which one governs bending. Below zero a load pulls up.
 *
 * @param deadAlone D
 * @param deadAndRoofLive D + Lr
 * @param deadAndSnow D + S
 * @param deadAndUplift 0.6 D + 0.6 W, upward
 * @param deadAloneByDuration D by its duration factor
 * @param deadAndRoofLiveByDuration D + Lr by its duration factor
 * @param deadAndSnowByDuration D + S by its duration factor
 * @param deadAndUpliftByDuration 0.6 D + 0.6 W by its duration factor
 * @param governsBending the combination with the greatest load by its duration factor
 */
public record CombinedLoads(
    @Column("dead_alone_psf") Figure<Pressure> deadAlone,
    @Column("dead_and_roof_live_psf") Figure<Pressure> deadAndRoofLive,
    @Column("dead_and_snow_psf") Figure<Pressure> deadAndSnow,
    @Column("dead_and_uplift_psf") Figure<Pressure> deadAndUplift,
    @Column("dead_alone_by_duration_psf") Figure<Pressure> deadAloneByDuration,
    @Column("dead_and_roof_live_by_duration_psf") Figure<Pressure> deadAndRoofLiveByDuration,
    @Column("dead_and_snow_by_duration_psf") Figure<Pressure> deadAndSnowByDuration,
    @Column("dead_and_uplift_by_duration_psf") Figure<Pressure> deadAndUpliftByDuration,
    @Column("governs_bending") Choice<LoadCombination.Name> governsBending) {}
