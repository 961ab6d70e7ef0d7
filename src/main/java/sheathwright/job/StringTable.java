package sheathwright.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sheathwright.figure.Traced;
import sheathwright.figure.Units;
import sheathwright.job.table.CsvFile;
import sheathwright.job.table.Field;
import sheathwright.job.table.ProblemsException;
import sheathwright.job.table.TableReader;
import sheathwright.leveling.string.StringReading;
import sheathwright.leveling.string.StringReadings;
import sheathwright.leveling.string.SuspicionRules;

/** The drops of one plane below a string, station by station, from a table of their own. */
public final class StringTable {

  private static final List<Field> FIELDS =
      List.of(
          Field.name("plane", "Plane").ifKnown(),
          Field.name("rafter", "Rafter"),
          Field.number("along_in", "From the left", -2_400, 6_000),
          Field.number("up_in", "From the eave", 0, 2_400),
          Field.number("drop_in", "Drop below the string", -6, 6));

  private StringTable() {}

  /**
   * The readings in a file with the columns rafter, along_in, up_in and drop_in.
   *
   * @param plane what the plane is called; where the file has a column plane, its lines alone
   * @throws ProblemsException with everything that is wrong with it
   */
  public static StringReadings read(Path file, String plane) {
    TableReader reader = new TableReader();
    List<Map<String, Traced>> rows = reader.rows(CsvFile.read(file), FIELDS);
    reader.raiseProblems();
    List<StringReading> readings = new ArrayList<>();
    for (Map<String, Traced> row : rows) {
      if (row.containsKey("plane") && !row.get("plane").plain().equals(plane)) {
        continue;
      }
      readings.add(
          StringReading.ofDrop(
              row.get("rafter").plain(),
              Job.figure(row, "along_in", Units.INCH),
              Job.figure(row, "up_in", Units.INCH),
              Job.figure(row, "drop_in", Units.INCH)));
    }
    return StringReadings.of(plane, readings, SuspicionRules.usual());
  }
}
