package sheathwright.fastening.strength;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Limits;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;
import sheathwright.wood.Shank;
import sheathwright.wood.WoodMoisture;
import sheathwright.wood.WoodWarmth;

/** What a fastener's reference value is multiplied by, and the wood that it passes through. */
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

  /** Load duration factor, 0.9 to 1.6. */
  static Figure<Ratio> loadDuration(Figure<Ratio> factor) {
    return factor
        .within(
            "load_duration",
            Units.RATIO,
            Limits.between(0.9, 1.6, "1.6 for wind, 1.15 for snow, 1 for ten years"))
        .symbol("C_D");
  }

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

  /** Length of a nail or screw, 0.5 in to 16 in. */
  static Figure<Length> length(Figure<Length> length) {
    return length
        .within("length_in", Units.INCH, Limits.between(0.5, 16, "an 8d common has 2-1/2"))
        .symbol("L");
  }

  /** Thickness of what is held down, 0.05 in to 3 in. */
  static Figure<Length> heldThickness(Figure<Length> thickness) {
    return thickness
        .within("thickness_in", Units.INCH, Limits.between(0.05, 3, "7/16 and 15/32 are usual"))
        .symbol("t");
  }

  /** Thickness of a shim that holds nothing, 0 in to 3 in. */
  static Figure<Length> shim(Figure<Length> shim) {
    return shim.within("shim_in", Units.INCH, Limits.between(0, 3, "0 if there is none"));
  }
}
