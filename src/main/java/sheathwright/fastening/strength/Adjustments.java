package sheathwright.fastening.strength;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;
import sheathwright.wood.WoodMoisture;
import sheathwright.wood.WoodWarmth;

/** What a fastener's reference value is multiplied by. */
final class Adjustments {

  private static final Table MOISTURE =
      Published.table(
          "nds/2018/withdrawal-moisture.csv",
          "withdrawal_moisture",
          "wet service factors of withdrawal",
          1);
  private static final Table WARMTH =
      Published.table(
          "nds/2018/fastener-temperature.csv",
          "fastener_temperature",
          "temperature factors of fasteners",
          2);

  private Adjustments() {}

  /** Wet service factor of a nail. */
  static Figure<Ratio> nailMoisture(Choice<WoodMoisture> moisture, Choice<Shank> shank) {
    return MOISTURE
        .numberAt(Units.RATIO, shank, moisture)
        .as("wet_service_factor", Units.RATIO, MOISTURE.source())
        .symbol("C_M");
  }

  /** Wet service factor of a screw. */
  static Figure<Ratio> screwMoisture(Choice<WoodMoisture> moisture) {
    return MOISTURE
        .number(Units.RATIO, "screw", moisture)
        .as("wet_service_factor", Units.RATIO, MOISTURE.source())
        .symbol("C_M");
  }

  /** Temperature factor; wood that is damp in service loses more. */
  static Figure<Ratio> warmth(OneOf<WoodWarmth> warmth, Choice<WoodMoisture> moisture) {
    return WARMTH
        .number(Units.RATIO, "ct", moisture, warmth.choice().argument("warmth"))
        .as("temperature_factor", Units.RATIO, WARMTH.source())
        .symbol("C_t");
  }
}
