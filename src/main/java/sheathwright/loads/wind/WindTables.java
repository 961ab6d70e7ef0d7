package sheathwright.loads.wind;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Figure;
import sheathwright.figure.OneOf;
import sheathwright.figure.Quantity;
import sheathwright.figure.Quantity.Area;
import sheathwright.figure.Quantity.Length;
import sheathwright.figure.Quantity.Ratio;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.figure.Unit;
import sheathwright.figure.Units;
import sheathwright.published.EditionTables;
import sheathwright.published.LoadEdition;
import sheathwright.published.Published;

/**
 * The printed wind tables of all editions, each kind as one table that the edition's word opens.
 */
final class WindTables {

  private static final Source COLUMNS = Source.derived("printed columns");
  private static final Map<Integer, Figure<Length>> HEIGHT =
      constants("printed_height_%s_ft", Units.FOOT, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60);
  private static final Map<Integer, Figure<Area>> AREA =
      constants("printed_area_%s_sf", Units.SQUARE_FOOT, 10, 20, 50, 100);
  private static final List<Integer> VELOCITY_HEIGHTS = List.of(15, 20, 25, 30, 40, 50, 60);

  private static final Table VELOCITY =
      EditionTables.table(
          "velocity_exposure",
          "velocity pressure exposure coefficients",
          1,
          Source.fromMemory("ASCE 7-10 Table 30.3-1, ASCE 7-16 and 7-22 Table 26.10-1"),
          Map.of(
              LoadEdition.ASCE7_10, "asce7/2010/velocity-exposure.csv",
              LoadEdition.ASCE7_16, "asce7/2016/velocity-exposure.csv",
              LoadEdition.ASCE7_22, "asce7/2022/velocity-exposure.csv"));
  private static final Table HEIGHTS =
      EditionTables.table(
          "height_exposure",
          "height and exposure factors",
          1,
          Source.read("IRC 2015 Table R301.2(3), IRC 2021 and 2024 Table R301.2.1(2)"),
          Map.of(
              LoadEdition.ASCE7_10, "irc/2015/height-exposure.csv",
              LoadEdition.ASCE7_16, "irc/2021/height-exposure.csv",
              LoadEdition.ASCE7_22, "irc/2024/height-exposure.csv"));

  private static final Table OVERHANGS =
      Published.table(
          "asce7/2010/overhang-coefficients.csv",
          "overhang_coefficients",
          "wind coefficients of overhangs",
          2);

  private WindTables() {}

  /** Kz of the standard for cladding, straight between printed heights. */
  static Figure<Ratio> velocityExposure(
      OneOf<LoadEdition> edition, OneOf<Exposure> exposure, Figure<Length> height) {
    return BetweenPrinted.straight(height, VELOCITY_HEIGHTS.stream().map(HEIGHT::get).toList())
        .value(
            "velocity_exposure_coefficient",
            VELOCITY_HEIGHTS.stream()
                .map(feet -> VELOCITY.number(Units.RATIO, "at_" + feet, edition, exposure))
                .toList(),
            VELOCITY.source());
  }

  /** The code's factor on pressures printed for 30 ft in Exposure B, straight between heights. */
  static Figure<Ratio> heightExposure(
      OneOf<LoadEdition> edition, OneOf<Exposure> exposure, Figure<Length> height) {
    return BetweenPrinted.straight(height, List.copyOf(HEIGHT.values()))
        .value(
            "height_exposure_factor",
            HEIGHT.keySet().stream()
                .map(feet -> HEIGHTS.number(Units.RATIO, "at_" + feet, edition, exposure))
                .toList(),
            HEIGHTS.source());
  }

  /** Where an effective area stands between the printed ones. */
  static BetweenPrinted between(Figure<Area> area) {
    return BetweenPrinted.logarithmic(area, List.copyOf(AREA.values()));
  }

  /** The coefficient of one direction, {@code outward} or {@code inward}, at an effective area. */
  static Figure<Ratio> coefficient(String direction, BetweenPrinted area, OneOf<?>... rowKeys) {
    return area.value(
        direction + "_coefficient",
        AREA.keySet().stream()
            .map(
                feet -> RoofCoefficients.TABLE.number(Units.RATIO, direction + "_" + feet, rowKeys))
            .toList(),
        RoofCoefficients.TABLE.source());
  }

  /** The coefficient of an overhang by the figures of ASCE 7-10, above and below together. */
  static Figure<Ratio> overhangCoefficient(BetweenPrinted area, OneOf<?>... rowKeys) {
    return area.value(
        "overhang_figure_coefficient",
        AREA.keySet().stream()
            .map(feet -> OVERHANGS.number(Units.RATIO, "outward_" + feet, rowKeys))
            .toList(),
        OVERHANGS.source());
  }

  private static <Q extends Quantity> Map<Integer, Figure<Q>> constants(
      String name, Unit<Q> unit, int... numbers) {
    Map<Integer, Figure<Q>> constants = new LinkedHashMap<>();
    for (int number : numbers) {
      constants.put(
          number,
          Figure.constant(name.formatted(number), number, unit, COLUMNS)
              .symbol(number + " " + unit.symbol()));
    }
    return constants;
  }
}
