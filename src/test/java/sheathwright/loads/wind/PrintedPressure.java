package sheathwright.loads.wind;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import sheathwright.figure.Amounts;
import sheathwright.published.LoadEdition;

/**
 * One printed pair of roof pressures, allowable level, psf. Printed slips of a sign are read by
 * size.
 */
record PrintedPressure(
    String key,
    String code,
    LoadEdition edition,
    RoofShape roof,
    String slope,
    String zone,
    double area,
    double wind,
    double inward,
    double outward,
    boolean isSlip) {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  /** IRC 2015, 2018, 2021, 2024 and FBC Residential 2023, read on state code pages. */
  static List<PrintedPressure> all() {
    return rows("wind-pressures.csv").stream().map(PrintedPressure::of).toList();
  }

  static List<CSVRecord> rows(String file) {
    try (InputStream stream = PrintedPressure.class.getResourceAsStream(file);
        InputStreamReader reader = new InputStreamReader(stream, UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  static String keyOf(CSVRecord row) {
    return String.join(
        "|",
        row.get("code"),
        row.get("roof"),
        row.get("slope"),
        row.get("zones"),
        row.get("area_sf"),
        row.get("wind_mph"));
  }

  private static PrintedPressure of(CSVRecord row) {
    return new PrintedPressure(
        keyOf(row),
        row.get("code"),
        edition(row.get("asce7")),
        row.get("roof").equals("hip") ? RoofShape.HIP : RoofShape.GABLE,
        row.get("slope"),
        row.get("zones").split(", ")[0],
        number(row, "area_sf"),
        number(row, "wind_mph"),
        Math.abs(number(row, "inward_psf")),
        Math.abs(number(row, "outward_psf")),
        !row.get("slip").isEmpty());
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  static LoadEdition edition(String number) {
    return List.of(LoadEdition.values()).stream()
        .filter(edition -> edition.alsoWritten().equals(number))
        .findFirst()
        .orElseThrow();
  }

  /** A pitch within the printed slopes, in degrees. */
  double riseIn12() {
    double degrees =
        switch (slope) {
          case "0-7", "<7" -> 3;
          case ">7-27" -> 22;
          case ">7-20" -> 15;
          case ">20-27" -> 25;
          case ">27-45" -> 35;
          case "45" -> 45;
          default -> throw new AssertionError(slope);
        };
    return degrees == 45 ? 12 : 12 * Math.tan(Math.toRadians(degrees));
  }

  WindZone windZone() {
    return List.of(WindZone.values()).stream()
        .filter(each -> each.word().equals(zone))
        .findFirst()
        .orElseThrow();
  }

  /** With the code's least of 10 psf. */
  SheathingUplift uplift() {
    return WindPressures.sheathingUplift(site(), place());
  }

  /** Without it. */
  CladdingPressure pressure() {
    return WindPressures.claddingPressure(
        site(), place(), Topography.LEVEL_GROUND, Enclosure.ENCLOSED);
  }

  private WindSite site() {
    return WindSite.of(edition, Amounts.mph(wind), Exposure.EXPOSURE_B).height(Amounts.ft(30));
  }

  private RoofPlace place() {
    return RoofPlace.of(roof, Amounts.pitch(riseIn12()), windZone()).area(Amounts.sqft(area));
  }
}
