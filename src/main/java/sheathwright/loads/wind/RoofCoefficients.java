package sheathwright.loads.wind;

import java.util.ArrayList;
import java.util.List;
import sheathwright.figure.Source;
import sheathwright.figure.Table;
import sheathwright.published.LoadEdition;
import sheathwright.published.Published;

/**
 * Roof pressure coefficients of all editions in one table. The code prints one row for several
 * zones, shapes or slopes; here each combination has a row of its own, so that four words find it.
 */
final class RoofCoefficients {

  private static final List<String> PRINTED_KEYS = List.of("roof", "slope", "zones");

  /** By edition, roof shape, slope and zone; by direction and effective area. */
  static final Table TABLE = table();

  private RoofCoefficients() {}

  private static Table table() {
    List<List<String>> rows = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<String> columns = new ArrayList<>();
    for (LoadEdition edition : LoadEdition.values()) {
      Table printed =
          Published.table(
              file(edition),
              "roof_coefficients",
              "wind coefficients of roofs",
              PRINTED_KEYS.size());
      columns.addAll(columns.isEmpty() ? printed.columns() : List.of());
      notes.addAll(printed.notes());
      printed.rows().forEach(row -> rows.addAll(oneByOne(edition, row)));
    }
    return new Table(
        "roof_coefficients",
        "wind coefficients of roofs",
        List.of("edition", "roof", "slope", "zone"),
        List.copyOf(columns),
        List.copyOf(rows),
        Source.secondHand(
            "ASCE 7 coefficients solved from pressures in IRC 2015, IRC 2021, FBC Residential 2023"),
        List.copyOf(notes));
  }

  private static String file(LoadEdition edition) {
    return switch (edition) {
      case ASCE7_10 -> "irc/2015/roof-coefficients.csv";
      case ASCE7_16 -> "irc/2021/roof-coefficients.csv";
      case ASCE7_22 -> "fbc/2023/roof-coefficients.csv";
    };
  }

  private static List<List<String>> oneByOne(LoadEdition edition, List<String> printed) {
    List<List<String>> rows = new ArrayList<>();
    for (RoofShape shape : shapes(printed.get(0))) {
      for (RoofSlope slope : slopes(printed.get(1))) {
        for (String zone : printed.get(2).split(", ")) {
          List<String> row =
              new ArrayList<>(List.of(edition.word(), shape.word(), slope.word(), zone));
          row.addAll(printed.subList(PRINTED_KEYS.size(), printed.size()));
          rows.add(List.copyOf(row));
        }
      }
    }
    return rows;
  }

  private static List<RoofShape> shapes(String printed) {
    return switch (printed) {
      case "any" -> List.of(RoofShape.GABLE, RoofShape.HIP);
      case "gable", "flat and gable" -> List.of(RoofShape.GABLE);
      case "hip" -> List.of(RoofShape.HIP);
      default -> throw new IllegalStateException("no roof is called " + printed);
    };
  }

  private static List<RoofSlope> slopes(String printed) {
    return switch (printed) {
      case "0-7", "<7" -> List.of(RoofSlope.TO_7);
      case ">7-27" -> List.of(RoofSlope.FROM_7, RoofSlope.FROM_20);
      case ">7-20" -> List.of(RoofSlope.FROM_7);
      case ">20-27" -> List.of(RoofSlope.FROM_20);
      case ">27-45" -> List.of(RoofSlope.FROM_27, RoofSlope.AT_45);
      case ">27-<45" -> List.of(RoofSlope.FROM_27);
      case "45" -> List.of(RoofSlope.AT_45);
      default -> throw new IllegalStateException("no slope is printed as " + printed);
    };
  }
}
