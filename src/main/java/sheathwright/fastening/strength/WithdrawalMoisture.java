package sheathwright.fastening.strength;

import sheathwright.figure.Choice;
import sheathwright.figure.Figure;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Table;
import sheathwright.figure.Units;
import sheathwright.published.Published;
import sheathwright.wood.Moisture;

/** What damp does to a fastener that is pulled straight out. */
final class WithdrawalMoisture {

  private static final Table MOISTURE =
      Published.table(
          "nds/2018/withdrawal-moisture.csv",
          "withdrawal_moisture",
          "wet service factors of withdrawal",
          1);

  private WithdrawalMoisture() {}

  /** Wet service factor of a nail. */
  static Figure<Ratio> ofNail(Choice<Moisture> moisture, Choice<Shank> shank) {
    return MOISTURE
        .numberAt(Units.RATIO, shank, moisture)
        .as("wet_service_factor", Units.RATIO, MOISTURE.source())
        .symbol("C_M");
  }

  /** Wet service factor of a screw. */
  static Figure<Ratio> ofScrew(Choice<Moisture> moisture) {
    return MOISTURE
        .number(Units.RATIO, "screw", moisture)
        .as("wet_service_factor", Units.RATIO, MOISTURE.source())
        .symbol("C_M");
  }
}
