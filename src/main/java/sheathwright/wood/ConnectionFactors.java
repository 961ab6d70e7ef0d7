package sheathwright.wood;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;

/** What damp and heat do to every nail and screw, whichever way it is loaded. */
public final class ConnectionFactors {

  private static final Table TEMPERATURE =
      Published.table(
          "nds/2018/fastener-temperature.csv",
          "fastener_temperature",
          "temperature factors of fasteners",
          2);
  private static final Source WET = Nds.COPIED.at("Table 11.3.3");
  private static final Figure<Ratio> DRY_ALWAYS = Figure.of(1, Units.RATIO);
  private static final Figure<Ratio> WET_LATERAL =
      Figure.constant("wet_lateral_factor", 0.7, Units.RATIO, WET).symbol("0.7");

  private ConnectionFactors() {}

  /** C_t; wood that is wet in service loses more. */
  public static Figure<Ratio> temperature(ServiceConditions place) {
    return TEMPERATURE
        .number(Units.RATIO, "ct", place.inService(), place.heat())
        .as("temperature_factor", Units.RATIO, TEMPERATURE.source())
        .symbol("C_t");
  }

  /** C_M of a nail that carries across its length, in wood that is wet now or later. */
  public static Figure<Ratio> lateralMoisture(Choice<Moisture> moisture) {
    return Figure.choose(moisture.is(Moisture.STAYS_DRY), DRY_ALWAYS, WET_LATERAL)
        .as("wet_service_factor", Units.RATIO, WET)
        .symbol("C_M");
  }
}
