package sheathwright.leveling.target;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** One line of {@code plane-cases.csv}, whose head says where its optima come from. */
record TargetCase(CSVRecord line) {

  static Stream<TargetCase> all() throws IOException {
    try (Reader reader =
        new InputStreamReader(
            TargetCase.class.getResourceAsStream("plane-cases.csv"), StandardCharsets.UTF_8)) {
      CSVFormat format =
          CSVFormat.DEFAULT
              .builder()
              .setCommentMarker('#')
              .setHeader()
              .setSkipHeaderRecord(true)
              .get();
      return format.parse(reader).getRecords().stream().map(TargetCase::new);
    }
  }

  private static double number(String text) {
    String[] parts = text.split("/");
    return Double.parseDouble(parts[0]) / (parts.length == 1 ? 1 : Double.parseDouble(parts[1]));
  }

  boolean has(String column) {
    return !line.get(column).isBlank();
  }

  double exact(String column) {
    return number(line.get(column));
  }

  double cap() {
    return has("tmax") ? exact("tmax") : TargetReading.UNLIMITED;
  }

  List<TargetReading> readings() {
    List<TargetReading> readings = new ArrayList<>();
    for (String point : line.get("points_x_y_z_in").split(";")) {
      String[] parts = point.split(" ");
      readings.add(TargetReading.of(point, number(parts[0]), number(parts[1]), number(parts[2])));
    }
    if (has("edge_bounds_x_y_lo_hi")) {
      for (String bound : line.get("edge_bounds_x_y_lo_hi").split(";")) {
        String[] parts = bound.split(" ");
        readings.replaceAll(
            reading ->
                reading.name().startsWith(parts[0] + " " + parts[1] + " ")
                    ? reading.within(
                        parts[2].equals("*") ? 0 : number(parts[2]),
                        parts[3].equals("*") ? TargetReading.UNLIMITED : number(parts[3]))
                    : reading);
      }
    }
    return readings;
  }

  @Override
  public String toString() {
    return line.get("case") + " " + line.get("description");
  }
}
