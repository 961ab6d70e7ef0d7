package sheathwright.wood;

import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Units;

/**
 * The values of a stick where it serves: with its size, damp, heat and incising, but before load
 * duration, stability, flat use, repetition and bearing length.
 */
public final class AdjustedWood {

  private static final Source TABLE = RepetitiveMember.NDS_2018.at("Table 4.3.1");

  final Figure<Ratio> sizeFactor;
  final ServiceFactors service;

  /** F_b C_M C_t C_F C_i. */
  public final Figure<Stress> bending;

  /** F_v C_M C_t C_i. */
  public final Figure<Stress> shear;

  /** F_c⊥ C_M C_t C_i. */
  public final Figure<Stress> bearing;

  /** E' = E C_M C_t C_i. */
  public final Figure<Stress> modulus;

  /** E_min' = E_min C_M C_t C_i. */
  public final Figure<Stress> minModulus;

  public AdjustedWood(Member member) {
    var values = new LumberValues(member.lumber());
    sizeFactor = values.sizeFactor().as("size_factor", Units.RATIO).symbol("C_F");
    var fb = values.bending().as("bending_value_psi", Units.PSI).symbol("F_b");
    var fv = values.shear().as("shear_value_psi", Units.PSI).symbol("F_v");
    var fcPerp = values.bearing().as("bearing_value_psi", Units.PSI).symbol("F_c⊥");
    var e = values.modulus().as("modulus_value_psi", Units.PSI).symbol("E");
    var emin = values.minModulus().as("min_modulus_value_psi", Units.PSI).symbol("E_min");

    var sized = fb.times(sizeFactor).as("sized_bending_psi", Units.PSI, TABLE);
    service = new ServiceFactors(member.service(), member.incised().choice(), sized);
    bending =
        sized
            .times(service.wetBending)
            .times(service.warmStress)
            .times(service.incisedStress)
            .as("service_bending_psi", Units.PSI, TABLE);
    shear =
        fv.times(service.wetShear)
            .times(service.warmStress)
            .times(service.incisedStress)
            .as("service_shear_psi", Units.PSI, TABLE);
    bearing =
        fcPerp
            .times(service.wetBearing)
            .times(service.warmStress)
            .times(service.incisedBearing)
            .as("service_bearing_psi", Units.PSI, TABLE);
    modulus =
        e.times(service.wetModulus)
            .times(service.warmModulus)
            .times(service.incisedModulus)
            .as("modulus_psi", Units.PSI, TABLE)
            .symbol("E'");
    minModulus =
        emin.times(service.wetModulus)
            .times(service.warmModulus)
            .times(service.incisedModulus)
            .as("min_modulus_psi", Units.PSI, TABLE)
            .symbol("E_min'");
  }
}
