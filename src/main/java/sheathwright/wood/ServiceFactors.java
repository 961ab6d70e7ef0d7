package sheathwright.wood;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;
import sheathwright.wood.ServiceConditions.Heat;
import sheathwright.wood.ServiceConditions.InService;

/** What damp, heat and incising do to the values of a stick. */
final class ServiceFactors {

  private static final Table WET =
      Published.table("nds/2018/wet-service.csv", "wet_service", "wet service factors", 1);
  private static final Table WARMTH =
      Published.table(
          "nds/2018/member-temperature.csv",
          "member_temperature",
          "temperature factors of members",
          2);
  private static final Table INCISING =
      Published.table("nds/2018/incising.csv", "incising", "incising factors", 1);
  private static final Figure<Stress> WEAK_IN_BENDING =
      Figure.constant("wet_bending_border_psi", 1150, Units.PSI, WET.source()).symbol("1150 psi");
  private static final Figure<Ratio> NO_CHANGE = Figure.of(1, Units.RATIO);

  final Figure<Ratio> wetBending;
  final Figure<Ratio> wetShear;
  final Figure<Ratio> wetBearing;
  final Figure<Ratio> wetModulus;
  final Figure<Ratio> warmStress;
  final Figure<Ratio> warmModulus;
  final Figure<Ratio> incisedStress;
  final Figure<Ratio> incisedBearing;
  final Figure<Ratio> incisedModulus;

  /**
   * The factors of one place of service.
   *
   * @param slits whether it is incised
   * @param bending F_b C_F, which says whether damp weakens it in bending
   */
  ServiceFactors(ServiceConditions place, Choice<YesNo> slits, Figure<Stress> bending) {
    var damp = place.inService();
    var heat = place.heat();

    var wet = WET.number(Units.RATIO, "bending", damp).as("wet_bending_table", Units.RATIO);
    wetBending =
        Figure.choose(bending.isAtMost(WEAK_IN_BENDING), NO_CHANGE, wet)
            .as("wet_bending_factor", Units.RATIO, WET.source())
            .symbol("C_M");
    wetShear = wet("shear", damp);
    wetBearing = wet("bearing", damp);
    wetModulus = wet("modulus", damp);

    warmStress = warm("stress", damp, heat);
    warmModulus = warm("modulus", damp, heat);

    incisedStress = incised("stress", slits);
    incisedBearing = incised("bearing", slits);
    incisedModulus = incised("modulus", slits);
  }

  private static Figure<Ratio> wet(String of, Choice<InService> damp) {
    return WET.number(Units.RATIO, of, damp)
        .as("wet_" + of + "_factor", Units.RATIO, WET.source())
        .symbol("C_M");
  }

  private static Figure<Ratio> warm(String of, Choice<InService> damp, Choice<Heat> heat) {
    return WARMTH
        .number(Units.RATIO, of, damp, heat)
        .as("temperature_" + of + "_factor", Units.RATIO, WARMTH.source())
        .symbol("C_t");
  }

  private static Figure<Ratio> incised(String of, Choice<YesNo> slits) {
    return INCISING
        .number(Units.RATIO, of, slits)
        .as("incising_" + of + "_factor", Units.RATIO, INCISING.source())
        .symbol("C_i");
  }
}
