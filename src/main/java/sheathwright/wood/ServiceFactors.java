package sheathwright.wood;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Option;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Quantity.Stress;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.figure.YesNo;
import sheathwright.published.Published;

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
  private static final Figure<Ratio> WARM = border("warm_f", 100);
  private static final Figure<Ratio> HOT = border("hot_f", 125);

  final Figure<Ratio> wetBending;
  final Figure<Ratio> wetShear;
  final Figure<Ratio> wetBearing;
  final Figure<Ratio> wetModulus;
  final Figure<Ratio> warmStress;
  final Figure<Ratio> warmModulus;
  final Figure<Ratio> incisedStress;
  final Figure<Ratio> incisedBearing;
  final Figure<Ratio> incisedModulus;

  /** How warm the wood stays, in degrees Fahrenheit. */
  enum Heat implements Option<Heat> {
    TO_100_F,
    TO_125_F,
    TO_150_F
  }

  /**
   * The factors of one place of service.
   *
   * @param bending F_b C_F, which says whether damp weakens it in bending
   */
  ServiceFactors(ServiceConditions place, Figure<Stress> bending) {
    var damp = place.moisture().choice();
    var degrees = place.temperature();
    var slits = place.incised().choice();

    var wet = WET.number(Units.RATIO, "bending", damp).as("wet_bending_table", Units.RATIO);
    wetBending =
        Figure.choose(bending.isAtMost(WEAK_IN_BENDING), NO_CHANGE, wet)
            .as("wet_bending_factor", Units.RATIO, WET.source())
            .symbol("C_M");
    wetShear = wet("shear", damp);
    wetBearing = wet("bearing", damp);
    wetModulus = wet("modulus", damp);

    var above = Choice.choose(degrees.isAtMost(HOT), Heat.TO_125_F, Heat.TO_150_F).as("heat_above");
    var heat = Choice.choose(degrees.isAtMost(WARM), Heat.TO_100_F, above).as("heat");
    warmStress = warm("stress", damp, heat);
    warmModulus = warm("modulus", damp, heat);

    incisedStress = incised("stress", slits);
    incisedBearing = incised("bearing", slits);
    incisedModulus = incised("modulus", slits);
  }

  private static Figure<Ratio> wet(String of, Choice<ServiceMoisture> damp) {
    return WET.number(Units.RATIO, of, damp)
        .as("wet_" + of + "_factor", Units.RATIO, WET.source())
        .symbol("C_M");
  }

  private static Figure<Ratio> warm(String of, Choice<ServiceMoisture> damp, Choice<Heat> heat) {
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

  private static Figure<Ratio> border(String name, double degrees) {
    return Figure.constant(name, degrees, Units.RATIO, Source.fromMemory("NDS 2018, Table 2.3.3"))
        .symbol((int) degrees + " °F");
  }
}
