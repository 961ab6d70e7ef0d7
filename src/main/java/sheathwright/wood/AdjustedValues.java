package sheathwright.wood;

import sheathwright.catalog.Column;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;

/**
 * The design values of a stick where it serves, and every factor that made them.
 *
 * @param bending F_b'
 * @param shear F_v'
 * @param bearing F_c⊥'
 * @param modulus E'
 * @param minModulus E_min'
 * @param loadDuration C_D, on bending and shear
 * @param wetBending C_M on bending
 * @param wetShear C_M on shear
 * @param wetBearing C_M on bearing
 * @param wetModulus C_M on both moduli
 * @param warmStress C_t on bending, shear and bearing
 * @param warmModulus C_t on both moduli
 * @param stability C_L on bending
 * @param size C_F on bending
 * @param flatUse C_fu on bending
 * @param incisedStress C_i on bending and shear
 * @param incisedModulus C_i on both moduli
 * @param repetitive C_r on bending
 * @param bearingLength C_b on bearing
 */
public record AdjustedValues(
    @Column("bending_psi") Figure<Stress> bending,
    @Column("shear_psi") Figure<Stress> shear,
    @Column("bearing_psi") Figure<Stress> bearing,
    @Column("modulus_psi") Figure<Stress> modulus,
    @Column("min_modulus_psi") Figure<Stress> minModulus,
    @Column("load_duration_factor") Figure<Ratio> loadDuration,
    @Column("wet_bending_factor") Figure<Ratio> wetBending,
    @Column("wet_shear_factor") Figure<Ratio> wetShear,
    @Column("wet_bearing_factor") Figure<Ratio> wetBearing,
    @Column("wet_modulus_factor") Figure<Ratio> wetModulus,
    @Column("temperature_stress_factor") Figure<Ratio> warmStress,
    @Column("temperature_modulus_factor") Figure<Ratio> warmModulus,
    @Column("stability_factor") Figure<Ratio> stability,
    @Column("size_factor") Figure<Ratio> size,
    @Column("flat_use_factor") Figure<Ratio> flatUse,
    @Column("incising_stress_factor") Figure<Ratio> incisedStress,
    @Column("incising_modulus_factor") Figure<Ratio> incisedModulus,
    @Column("repetitive_factor") Figure<Ratio> repetitive,
    @Column("bearing_area_factor") Figure<Ratio> bearingLength) {}
